package org.fieldfold.typeset;

import java.util.List;

/**
 * Blocks, placed on panels.
 *
 * @param cost by {@link Cost}
 * @param ways which way each block was set
 * @param strips in reading order
 * @param over half lines that do not fit on the last panel
 */
record Filling(long cost, List<Integer> ways, List<Placed> strips, int over) {
    /**
     * A strip in its place.
     *
     * @param block position of the block that it is of
     * @param panel from 0
     * @param top half lines from the head of the panel
     */
    record Placed(int block, Strip strip, int panel, int top) {
        int bottom() {
            return top + strip.units();
        }
    }

    Filling {
        ways = List.copyOf(ways);
        strips = List.copyOf(strips);
    }

    /** Half lines taken on a panel, or 0 for one that was not needed. */
    int used(int panel) {
        return strips.stream().filter(placed -> placed.panel() == panel).mapToInt(Placed::bottom).max()
                .orElse(0);
    }
}
