package org.fieldfold.fold;

import java.util.List;

/** The real widths of columns, or heights of rows, on one paper. */
final class PanelSizes {
    private PanelSizes() {
    }

    /**
     * Divides a length so that each panel is narrower than its share by the tuck for every fold around it.
     * The outer panels are rounded up to the paper's step, and the deepest ones have what is left. Without
     * tucks the shares are exact.
     *
     * <p>For the letter fold this is the printers' rule: a third of the sheet rounded up to the 32nd of an
     * inch for the two outer panels, a sixteenth less for the flap.
     */
    static double[] divide(double length, List<Integer> proportions, double[] depths, Paper paper) {
        int n = depths.length;
        double shares = 0;
        double tucks = 0;
        double deepest = 0;
        for (int k = 0; k < n; k++) {
            shares += proportions.get(k);
            tucks += depths[k];
            deepest = Math.max(deepest, depths[k]);
        }
        double share = (length + paper.tuck() * tucks) / shares;
        double left = length;
        double deepShares = 0;
        double[] sizes = new double[n];
        for (int k = 0; k < n; k++) {
            if (deepest > 0 && depths[k] < deepest) {
                sizes[k] = up(share * proportions.get(k), paper.step()) - depths[k] * paper.tuck();
                left -= sizes[k];
            } else {
                deepShares += proportions.get(k);
            }
        }
        for (int k = 0; k < n; k++) {
            if (sizes[k] == 0) {
                sizes[k] = left * proportions.get(k) / deepShares;
            }
        }
        return sizes;
    }

    private static double up(double value, double step) {
        return Math.ceil(value / step - 1e-6) * step;
    }
}
