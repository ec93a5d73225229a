package org.fieldfold.scouting.geometry;

import org.fieldfold.scouting.Expect;

/** A bow over a bed, above ground. All lengths of one hoop are in one unit, whichever. */
public sealed interface Hoop {
    /**
     * Half a circle: as high as half the bed.
     *
     * @param width of the bed, above 0
     */
    record Semicircle(double width) implements Hoop {
        public Semicircle {
            Expect.above(0, width, "width under the hoop");
        }

        /** What a stick makes whose ends stand {@code buried} deep in the soil. */
        public static Semicircle ofStick(double stick, double buried) {
            Expect.above(2 * buried, stick, "length of the stick, which must show above ground,");
            return new Semicircle(2 * (stick - 2 * buried) / Math.PI);
        }

        @Override
        public double height() {
            return width / 2;
        }

        @Override
        public double arc() {
            return Math.PI * width / 2;
        }
    }

    /**
     * A part of a circle: flatter than a semicircle, or higher and bulging over the bed's edges.
     *
     * @param height above 0
     */
    record Segment(double width, double height) implements Hoop {
        public Segment {
            Expect.above(0, width, "width under the hoop");
            Expect.above(0, height, "height of the hoop");
        }

        public double radius() {
            return (width * width / 4 + height * height) / (2 * height);
        }

        @Override
        public double arc() {
            double radius = radius();
            double flat = 2 * radius * StrictMath.asin(Math.min(1, width / (2 * radius)));
            return height <= width / 2 ? flat : 2 * Math.PI * radius - flat;
        }
    }

    /** Half an ellipse, as a stick bends that is pushed in upright: steep at the edges, flat on top. */
    record HalfEllipse(double width, double height) implements Hoop {
        public HalfEllipse {
            Expect.above(0, width, "width under the hoop");
            Expect.above(0, height, "height of the hoop");
        }

        /** Ramanujan's second approximation of the perimeter (1914), halved; better than 1 in 10,000 here. */
        @Override
        public double arc() {
            double a = width / 2;
            double q = (a - height) * (a - height) / ((a + height) * (a + height));
            return Math.PI / 2 * (a + height) * (1 + 3 * q / (10 + Math.sqrt(4 - 3 * q)));
        }
    }

    /**
     * A semicircle on two straight legs.
     *
     * @param leg height of each leg, 0 or more
     */
    record Legged(double width, double leg) implements Hoop {
        public Legged {
            Expect.above(0, width, "width under the hoop");
            Expect.within(0, Double.MAX_VALUE, leg, "height of a leg");
        }

        /**
         * What a stick makes over a bed of {@code width} when its ends stand {@code buried} deep in the soil.
         */
        public static Legged ofStick(double stick, double width, double buried) {
            double legs = stick - 2 * buried - Math.PI * width / 2;
            Expect.within(0, Double.MAX_VALUE, legs, "stick left over for the legs");
            return new Legged(width, legs / 2);
        }

        @Override
        public double height() {
            return width / 2 + leg;
        }

        @Override
        public double arc() {
            return Math.PI * width / 2 + 2 * leg;
        }
    }

    double width();

    double height();

    /** Length along the bow from soil to soil. */
    double arc();
}
