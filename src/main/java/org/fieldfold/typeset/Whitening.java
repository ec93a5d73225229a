package org.fieldfold.typeset;

import java.util.ArrayList;
import java.util.List;

/**
 * Shares out the room that is left on a panel once its blocks are chosen. Drawings have already grown; now
 * the white between groups grows, everywhere by the same, and what is left then stays at the foot. A panel
 * with springs gives all of it to them.
 */
final class Whitening {
    /** The most half lines by which the white between groups grows. */
    static final int MOST = 2;

    private Whitening() {}

    /**
     * @param strips of one panel
     * @param springs positions in {@code strips} above which all the room goes
     * @return half lines by which each strip moves down
     */
    static List<Integer> shifts(List<Strip> strips, List<Integer> springs, int spare) {
        int growing = 0;
        for (int i = 1; i < strips.size(); i++) {
            growing += grows(strips, i) ? 1 : 0;
        }
        int each = !springs.isEmpty() || growing == 0 ? 0 : Math.min(MOST, Math.max(0, spare) / growing);
        List<Integer> shifts = new ArrayList<>();
        int shift = 0;
        int left = Math.max(0, spare);
        int pending = springs.size();
        for (int i = 0; i < strips.size(); i++) {
            if (springs.contains(i)) {
                int share = pending == 1 ? left : springs.size() == 2 ? left * 3 / 5 : left / pending;
                shift += share;
                left -= share;
                pending--;
            } else if (i > 0 && grows(strips, i)) {
                shift += each;
            }
            shifts.add(shift);
        }
        return shifts;
    }

    private static boolean grows(List<Strip> strips, int at) {
        return strips.get(at).opens() && strips.get(at).gap() > 0 && !strips.get(at - 1).keep();
    }
}
