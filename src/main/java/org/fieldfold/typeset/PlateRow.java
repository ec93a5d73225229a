package org.fieldfold.typeset;

import java.util.Arrays;
import java.util.List;
import org.fieldfold.manuscript.Block;

/**
 * Drawings that stand side by side, and how large they may be. Each gets the same area, so that a long larva
 * does not look smaller than a round beetle: with aspect {@code a} (width by height) a drawing is
 * {@code c*sqrt(a)} wide and {@code c/sqrt(a)} high, and one {@code c} holds for the row.
 *
 * @param least the narrowest column of each, in points: its true-size bar, and the words beneath it
 * @param room for all columns, in points
 * @param widest the largest {@code c} that the room allows
 */
record PlateRow(List<Block.Plate> plates, double[] aspects, double[] least, double room, double gutter,
        double widest) {
    /** @param measure that the row may fill */
    static PlateRow of(List<Block.Plate> plates, double[] aspects, double[] least, double measure,
            double gutter) {
        double room = measure - gutter * (plates.size() - 1);
        return new PlateRow(List.copyOf(plates), aspects, least, room, gutter, widest(aspects, least, room));
    }

    /** Whether the drawings can be {@code height} high beside what their columns need for bars and words. */
    boolean fits(double height) {
        return tallest() >= height;
    }

    private static double widthAt(double c, double[] aspects, double[] least) {
        double sum = 0;
        for (int i = 0; i < aspects.length; i++) {
            sum += Math.max(c * Math.sqrt(aspects[i]), least[i]);
        }
        return sum;
    }

    /** The largest {@code c} that the measure leaves room for. */
    private static double widest(double[] aspects, double[] least, double room) {
        double low = 0;
        double high = room / widthAt(1, aspects, new double[aspects.length]);
        for (int step = 0; step < 40; step++) {
            double middle = (low + high) / 2;
            if (widthAt(middle, aspects, least) <= room) {
                low = middle;
            } else {
                high = middle;
            }
        }
        // always something to see, even where the words alone fill the row
        return Math.max(low, 1);
    }

    private double flattest() {
        return Math.sqrt(Arrays.stream(aspects).min().orElse(1));
    }

    /** The height of the tallest drawing when the row is as wide as it may be. */
    double tallest() {
        return widest / flattest();
    }

    /** Sizes and columns of the row when its tallest drawing is {@code height} high. */
    List<Placed> place(double height) {
        double c = Math.min(height * flattest(), widest);
        double spare = Math.max(0, room - widthAt(c, aspects, least)) / plates.size();
        List<Placed> placed = new java.util.ArrayList<>();
        double x = 0;
        for (int i = 0; i < plates.size(); i++) {
            double width = c * Math.sqrt(aspects[i]);
            double column = Math.max(width, least[i]) + spare;
            placed.add(new Placed(plates.get(i), x, column, width, c / Math.sqrt(aspects[i])));
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
