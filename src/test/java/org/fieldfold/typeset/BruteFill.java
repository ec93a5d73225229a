package org.fieldfold.typeset;

import java.util.ArrayList;
import java.util.List;

/**
 * Tries every way of every block and every panel for every strip, with the costs of {@link Cost} added up
 * plainly.
 */
final class BruteFill {
    private final List<Choice> blocks;
    private final int[] rooms;
    private long cheapest = Long.MAX_VALUE;

    BruteFill(List<Choice> blocks, int... rooms) {
        this.blocks = blocks;
        this.rooms = rooms;
    }

    long cheapest() {
        chooseWay(0, 0, new ArrayList<>());
        return cheapest;
    }

    private void chooseWay(int block, long cost, List<Strip> strips) {
        if (block == blocks.size()) {
            choosePanels(strips, new ArrayList<>(), cost);
            return;
        }
        for (Choice.Way way : blocks.get(block).ways()) {
            List<Strip> more = new ArrayList<>(strips);
            more.addAll(way.strips());
            chooseWay(block + 1, cost + way.cost(), more);
        }
    }

    private void choosePanels(List<Strip> strips, List<Integer> panels, long cost) {
        if (panels.size() == strips.size()) {
            long total = price(strips, panels, rooms);
            if (total >= 0) {
                cheapest = Math.min(cheapest, cost + total);
            }
            return;
        }
        for (int panel = panels.isEmpty() ? 0
                : panels.get(panels.size() - 1); panel < rooms.length; panel++) {
            List<Integer> more = new ArrayList<>(panels);
            more.add(panel);
            choosePanels(strips, more, cost);
        }
    }

    static long cost(List<Choice> blocks, int[] rooms, Filling filling) {
        long ways = 0;
        for (int i = 0; i < blocks.size(); i++) {
            ways += blocks.get(i).ways().get(filling.ways().get(i)).cost();
        }
        return ways + price(filling.strips().stream().map(Filling.Placed::strip).toList(),
                filling.strips().stream().map(Filling.Placed::panel).toList(), rooms);
    }

    /** What it costs to stand there, or -1 where it is not allowed. */
    private static long price(List<Strip> strips, List<Integer> panels, int[] rooms) {
        long cost = 0;
        int[] used = new int[rooms.length];
        boolean[] taken = new boolean[rooms.length];
        for (int i = 0; i < strips.size(); i++) {
            int panel = panels.get(i);
            boolean goesOn = i > 0 && panels.get(i - 1) != panel;
            if (goesOn && strips.get(i - 1).keep()) {
                return -1;
            }
            boolean skipped = i == 0 && panel > 0;
            cost += goesOn || skipped ? strips.get(i).breaking() : 0;
            used[panel] += (taken[panel] ? strips.get(i).gap() : i > 0 ? strips.get(i).head().units() : 0)
                    + strips.get(i).units();
            taken[panel] = true;
        }
        int end = panels.get(panels.size() - 1);
        for (int panel = 0; panel <= end; panel++) {
            int over = used[panel] - rooms[panel];
            if (over > 0 && panel < rooms.length - 1) {
                return -1;
            }
            cost += over > 0 ? Cost.OVER * over : Cost.empty(-over);
        }
        return cost;
    }
}
