package org.fieldfold.scouting.degreeday;

/** The assumed course of a day from its minimum {@code a} to its maximum {@code b}, {@code a <= b}. */
enum DayCurve {
    /**
     * Baskerville and Emin 1969, Ecology 50:514-517; the six cases of Zalom et al. 1983, Table 5, in one
     * form.
     */
    SINE {
        @Override
        double between(double c, double a, double b) {
            double middle = (a + b) / 2;
            double swing = (b - a) / 2;
            double t = StrictMath.asin((c - middle) / swing);
            return ((middle - c) * (Math.PI / 2 - t) + swing * StrictMath.cos(t)) / Math.PI;
        }

        @Override
        double shareBetween(double c, double a, double b) {
            return 0.5 - StrictMath.asin((c - (a + b) / 2) / ((b - a) / 2)) / Math.PI;
        }
    },
    /** Sevacherian, Stern and Mueller 1977, J. Econ. Entomol. 70:399-402. */
    TRIANGLE {
        @Override
        double between(double c, double a, double b) {
            return (b - c) * (b - c) / (2 * (b - a));
        }

        @Override
        double shareBetween(double c, double a, double b) {
            return (b - c) / (b - a);
        }
    };

    /** Mean of what the curve stands above {@code c}, for {@code a < c < b}. */
    abstract double between(double c, double a, double b);

    /** Share of the day above {@code c}, for {@code a < c < b}. */
    abstract double shareBetween(double c, double a, double b);

    /** Mean over the day of {@code max(0, T - c)}. */
    final double heatAbove(double c, double a, double b) {
        return c >= b ? 0 : c <= a ? (a + b) / 2 - c : between(c, a, b);
    }

    /** Share of the day, 0 to 1, in which the temperature is above {@code c}. */
    final double shareAbove(double c, double a, double b) {
        return c >= b ? 0 : c <= a ? 1 : shareBetween(c, a, b);
    }
}
