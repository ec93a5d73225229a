package org.fieldfold.scouting.sequential;

/**
 * Probabilities of totals, from each to the next in logarithms, so that a small first one does not vanish.
 */
final class Totals {
    private Totals() {
    }

    /** Number of {@code n} units with the pest when each has it with probability {@code p}, 0 to 1. */
    static double[] binomial(int n, double p, int cap) {
        if (p <= 0 || p >= 1) {
            return certain(p <= 0 ? 0 : n, cap);
        }
        double odds = StrictMath.log(p) - StrictMath.log1p(-p);
        return run(cap, n * StrictMath.log1p(-p),
                x -> x >= n ? Double.NEGATIVE_INFINITY : odds + StrictMath.log((double) (n - x) / (x + 1)));
    }

    static double[] poisson(double mean, int cap) {
        if (mean <= 0) {
            return certain(0, cap);
        }
        double log = StrictMath.log(mean);
        return run(cap, -mean, x -> log - StrictMath.log(x + 1));
    }

    /** The total of n units is again negative binomial, with n times the mean and n times the k. */
    static double[] negativeBinomial(double mean, double k, int cap) {
        if (mean <= 0) {
            return certain(0, cap);
        }
        double log = StrictMath.log(mean) - StrictMath.log(mean + k);
        return run(cap, -k * StrictMath.log1p(mean / k), x -> log + StrictMath.log((k + x) / (x + 1)));
    }

    private interface Step {
        /** Logarithm of how much likelier a total of {@code x + 1} is than one of {@code x}. */
        double up(int x);
    }

    private static double[] run(int cap, double logOfZero, Step step) {
        double[] chance = new double[cap + 1];
        double log = logOfZero;
        double below = 0;
        for (int x = 0; x < cap; x++) {
            chance[x] = StrictMath.exp(log);
            below += chance[x];
            log += step.up(x);
        }
        chance[cap] = Math.max(0, 1 - below);
        return chance;
    }

    private static double[] certain(int total, int cap) {
        double[] chance = new double[cap + 1];
        chance[Math.min(total, cap)] = 1;
        return chance;
    }
}
