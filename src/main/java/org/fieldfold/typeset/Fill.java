package org.fieldfold.typeset;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedList;
import java.util.List;

/**
 * Finds the cheapest way to set a run of blocks on a run of panels: which form of each block, and where to go
 * on to the next panel. Dynamic programming over the blocks; a state is the panel and the half lines taken on
 * it, because what is still to come depends on nothing else. Every way of every block and every place to
 * break is tried in every state, so the result is the cheapest there is.
 *
 * <p>Time: strips of all ways x panels x half lines of a panel.
 */
final class Fill {
    private final List<Choice> blocks;
    private final int[] capacities;

    private Fill(List<Choice> blocks, int[] capacities) {
        this.blocks = blocks;
        this.capacities = capacities;
    }

    /** @param capacities half lines of each panel; fewer panels are used if that is cheaper */
    static Filling best(List<Choice> blocks, int... capacities) {
        return new Fill(blocks, capacities).solve();
    }

    /** One state, and how it was reached. */
    private record State(State before, int block, int way, Strip strip, int panel, int top, long cost) {
        int used() {
            return strip == null ? 0 : top + strip.units();
        }

        State dearer(long by) {
            return new State(before, block, way, strip, panel, top, cost + by);
        }
    }

    private Filling solve() {
        Filling plain = preferred();
        return plain.over() == 0 && plain.cost() >= 0 ? plain : search();
    }

    /**
     * Every block in its preferred way on the first panel; its cost is -1 where something might be cheaper.
     */
    private Filling preferred() {
        List<Filling.Placed> placed = new ArrayList<>();
        int used = 0;
        boolean plain = true;
        for (int block = 0; block < blocks.size() && plain; block++) {
            plain = blocks.get(block).plain();
            for (Strip strip : blocks.get(block).ways().get(0).strips()) {
                int top = placed.isEmpty() ? 0 : used + strip.gap();
                placed.add(new Filling.Placed(block, strip, 0, top));
                used = top + strip.units();
            }
        }
        boolean best = plain && used <= capacities[0] && (capacities.length == 1
                || Cost.empty(capacities[0] - used) <= cheapestBreak());
        return new Filling(best ? Cost.empty(capacities[0] - used) : -1,
                Collections.nCopies(blocks.size(), 0), placed, 0);
    }

    /** What it costs at least to go on to another panel. */
    private long cheapestBreak() {
        long cheapest = Long.MAX_VALUE;
        for (Choice block : blocks) {
            for (Choice.Way way : block.ways()) {
                for (Strip strip : way.strips()) {
                    cheapest = Math.min(cheapest, strip.breaking());
                }
            }
        }
        return cheapest;
    }

    private Filling search() {
        int tallest = 0;
        for (Choice block : blocks) {
            tallest += block.ways().stream().mapToInt(way -> way.height() + way.head()).max().orElse(0);
        }
        List<State> states = List.of(new State(null, -1, 0, null, 0, 0, 0));
        for (int block = 0; block < blocks.size(); block++) {
            List<Choice.Way> ways = blocks.get(block).ways();
            Frontier reached = new Frontier(capacities.length, tallest);
            for (int way = 0; way < ways.size(); way++) {
                List<State> here = dearer(states, ways.get(way).cost());
                for (Strip strip : ways.get(way).strips()) {
                    Frontier next = new Frontier(capacities.length, tallest);
                    for (State state : here) {
                        place(state, block, way, strip, next);
                    }
                    here = next.states();
                }
                here.forEach(reached::offer);
            }
            states = reached.states();
        }
        State best = states.get(0);
        for (State state : states) {
            best = total(state) < total(best) ? state : best;
        }
        return trace(best);
    }

    private static List<State> dearer(List<State> states, long by) {
        if (by == 0) {
            return states;
        }
        List<State> dearer = new ArrayList<>(states.size());
        states.forEach(state -> dearer.add(state.dearer(by)));
        return dearer;
    }

    private void place(State state, int block, int way, Strip strip, Frontier next) {
        boolean last = state.panel == capacities.length - 1;
        int top = state.strip == null ? 0 : state.used() + strip.gap();
        if (last || top + strip.units() <= capacities[state.panel]) {
            next.offer(new State(state, block, way, strip, state.panel, top, state.cost));
        }
        if (state.strip != null && state.strip.keep()) {
            return;
        }
        int head = state.strip == null ? 0 : strip.head().units();
        // what is too tall for one panel may leave it empty and begin on a later one
        long cost = state.cost + strip.breaking();
        for (int panel = state.panel + 1; panel < capacities.length; panel++) {
            int left = panel == state.panel + 1 ? state.used() : 0;
            cost += Cost.empty(capacities[panel - 1] - left);
            if (head + strip.units() <= capacities[panel] || panel == capacities.length - 1) {
                next.offer(new State(state, block, way, strip, panel, head, cost));
            }
        }
    }

    private int over(State state) {
        return Math.max(0, state.used() - capacities[state.panel]);
    }

    private long total(State state) {
        return state.cost + Cost.OVER * over(state)
                + Cost.empty(Math.max(0, capacities[state.panel] - state.used()));
    }

    private Filling trace(State best) {
        LinkedList<Filling.Placed> placed = new LinkedList<>();
        Integer[] ways = new Integer[blocks.size()];
        for (State state = best; state.strip != null; state = state.before) {
            placed.addFirst(new Filling.Placed(state.block, state.strip, state.panel, state.top));
            ways[state.block] = state.way;
        }
        return new Filling(total(best), List.of(ways), placed, over(best));
    }

    /** The cheapest state for each panel and height taken; of two alike, the first that was found. */
    private static final class Frontier {
        private final State[] cheapest;
        private final int tallest;

        Frontier(int panels, int tallest) {
            this.cheapest = new State[panels * (tallest + 1)];
            this.tallest = tallest;
        }

        void offer(State state) {
            int at = state.panel * (tallest + 1) + state.used();
            if (cheapest[at] == null || state.cost < cheapest[at].cost) {
                cheapest[at] = state;
            }
        }

        List<State> states() {
            List<State> states = new ArrayList<>();
            for (State state : cheapest) {
                if (state != null) {
                    states.add(state);
                }
            }
            return states;
        }
    }
}
