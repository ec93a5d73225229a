package org.fieldfold.typeset;

import java.util.ArrayList;
import java.util.LinkedList;
import java.util.List;

/**
 * Finds the cheapest way to set a run of blocks on a run of panels: which form of each block, and where to go on to
 * the next panel. Dynamic programming over the blocks; a state is the panel and the half lines taken on it, because
 * what is still to come depends on nothing else. Every way of every block and every place to break is tried in
 * every state, so the result is the cheapest there is.
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
        List<State> states = List.of(new State(null, -1, 0, null, 0, 0, 0));
        for (int block = 0; block < blocks.size(); block++) {
            List<Choice.Way> ways = blocks.get(block).ways();
            Frontier reached = new Frontier();
            for (int way = 0; way < ways.size(); way++) {
                long cost = ways.get(way).cost();
                List<State> here = states.stream().map(state -> state.dearer(cost)).toList();
                for (Strip strip : ways.get(way).strips()) {
                    Frontier next = new Frontier();
                    for (State state : here) {
                        place(state, block, way, strip, next);
                    }
                    here = next.states();
                }
                here.forEach(reached::offer);
            }
            states = reached.states();
        }
        State best = null;
        for (State state : states) {
            if (best == null || total(state) < total(best)) {
                best = state;
            }
        }
        return trace(best);
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
        // what is too tall for one panel may leave it empty and begin on a later one
        long cost = state.cost + strip.breaking();
        for (int panel = state.panel + 1; panel < capacities.length; panel++) {
            int left = panel == state.panel + 1 ? state.used() : 0;
            cost += Cost.empty(capacities[panel - 1] - left);
            if (strip.units() <= capacities[panel] || panel == capacities.length - 1) {
                next.offer(new State(state, block, way, strip, panel, 0, cost));
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

    /** The cheapest state for each panel and height taken. */
    private static final class Frontier {
        private final java.util.TreeMap<Integer, State> cheapest = new java.util.TreeMap<>();

        void offer(State state) {
            cheapest.merge(state.panel * 10_000 + state.used(), state,
                    (old, fresh) -> fresh.cost < old.cost ? fresh : old);
        }

        List<State> states() {
            return new ArrayList<>(cheapest.values());
        }
    }
}
