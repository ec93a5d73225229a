package org.fieldfold.typeset;

import java.util.List;

/**
 * Widths of a table's columns by what stands in them: each as wide as its longest cell if the measure has
 * room for all, otherwise at least as wide as its longest word, and the rest shared out by what each column
 * still lacks.
 */
final class TableColumns {
    private TableColumns() {}

    /**
     * @param least width of the longest word of each column
     * @param most width of the longest cell of each column
     * @param room for all columns, without the gutters
     */
    static double[] widths(List<Double> least, List<Double> most, double room) {
        double sumLeast = sum(least);
        double sumMost = sum(most);
        double[] widths = new double[least.size()];
        for (int i = 0; i < widths.length; i++) {
            if (sumMost <= room) {
                widths[i] = most.get(i);
            } else if (sumLeast <= room) {
                widths[i] = least.get(i)
                        + (most.get(i) - least.get(i)) * (room - sumLeast) / (sumMost - sumLeast);
            } else {
                widths[i] = least.get(i) * room / sumLeast;
            }
        }
        return widths;
    }

    private static double sum(List<Double> widths) {
        return widths.stream().mapToDouble(Double::doubleValue).sum();
    }
}
