package org.fieldfold.typeset;

import java.util.List;
import org.fieldfold.manuscript.Block;

/**
 * Drawings that stand side by side, and how large they may be. Each gets the same area, so that a long larva does
 * not look smaller than a round beetle: with aspect {@code a} (width by height) a drawing is {@code c*sqrt(a)} wide
 * and {@code c/sqrt(a)} high, and one {@code c} holds for the row.
 *
 * @param least the narrowest column of each, in points: its true-size bar, and the words beneath it
 */
record PlateRow(List<Block.Plate> plates, List<Double> aspects, List<Double> least, double measure, double gutter) {
    PlateRow {
        plates = List.copyOf(plates);
        aspects = List.copyOf(aspects);
        least = List.copyOf(least);
    }

    private double room() {
        return measure - gutter * (plates.size() - 1);
    }

    /** Whether the bars and the words stand side by side at all. */
    boolean fits() {
        return least.stream().mapToDouble(Double::doubleValue).sum() <= room() + 1e-6;
    }

    private double widthAt(double c) {
        double sum = 0;
        for (int i = 0; i < plates.size(); i++) {
            sum += Math.max(c * Math.sqrt(aspects.get(i)), least.get(i));
        }
        return sum;
    }

    /** The largest {@code c} that the measure leaves room for. */
    private double widest() {
        double low = 0;
        double high = room() / aspects.stream().mapToDouble(Math::sqrt).sum();
        for (int step = 0; step < 40; step++) {
            double middle = (low + high) / 2;
            if (widthAt(middle) <= room()) {
                low = middle;
            } else {
                high = middle;
            }
        }
        // always something to see, even where the words alone fill the row
        return Math.max(low, 1);
    }

    private double flattest() {
        return Math.sqrt(aspects.stream().mapToDouble(Double::doubleValue).min().orElse(1));
    }

    /** The height of the tallest drawing when the row is as wide as it may be. */
    double tallest() {
        return widest() / flattest();
    }

    /** Sizes and columns of the row when its tallest drawing is {@code height} high. */
    List<Placed> place(double height) {
        double c = Math.min(height * flattest(), widest());
        double spare = Math.max(0, room() - widthAt(c)) / plates.size();
        List<Placed> placed = new java.util.ArrayList<>();
        double x = 0;
        for (int i = 0; i < plates.size(); i++) {
            double width = c * Math.sqrt(aspects.get(i));
            double column = Math.max(width, least.get(i)) + spare;
            placed.add(new Placed(plates.get(i), x, column, width, c / Math.sqrt(aspects.get(i))));
            x += column + gutter;
        }
        return placed;
    }

    /**
     * A drawing in its column.
     *
     * @param x left edge of the column, from the left of the measure
     */
    record Placed(Block.Plate plate, double x, double column, double width, double height) {
        double centre() {
            return x + column / 2;
        }
    }
}
