package org.fieldfold.typeset;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.fieldfold.source.Span;

/** The ways in which one block may be set, the preferred one first. */
record Choice(Span origin, List<Way> ways) {
    /**
     * One way.
     *
     * @param cost beyond the preferred way; see {@link Cost}
     * @param brief whether it is a shortened form
     */
    record Way(long cost, boolean brief, List<Strip> strips) {
        Way {
            strips = List.copyOf(strips);
            if (strips.isEmpty()) {
                throw new IllegalArgumentException("a way to set a block needs a strip");
            }
        }

        /** Half lines that it takes when it is not divided, with the white above it. */
        int height() {
            int height = 0;
            for (Strip strip : strips) {
                height += strip.gap() + strip.units();
            }
            return height;
        }

        /** The same at the head of a panel, where the white above it falls away. */
        int heightAtHead() {
            return height() - strips.get(0).gap();
        }

        /** The most half lines of what is set again where it goes on. */
        int head() {
            return strips.stream().mapToInt(strip -> strip.head().units()).max().orElse(0);
        }
    }

    Choice {
        ways = List.copyOf(ways);
        boolean keep = last(ways.get(0)).keep();
        for (Way way : ways) {
            if (last(way).keep() != keep) {
                throw new IllegalArgumentException("ways of one block differ in what they hold to the next");
            }
        }
    }

    static Choice only(Span origin, List<Strip> strips) {
        return new Choice(origin, List.of(new Way(0, false, strips)));
    }

    /** Half lines that it takes at least, undivided, with the white above it. */
    int least() {
        return ways.stream().mapToInt(Way::height).min().orElseThrow();
    }

    /** Whether the preferred way costs nothing and none is taller, so that it is the best where it fits. */
    boolean plain() {
        Way preferred = ways.get(0);
        return preferred.cost() == 0 && ways.stream().allMatch(way -> way.height() <= preferred.height()
                && way.heightAtHead() <= preferred.heightAtHead());
    }

    /** The same without white above, for what stands beneath its heading. */
    Choice closeUp() {
        return withFirst(first -> new Strip(0, false, first.breaking(), first.units(), first.keep(),
                first.draw()));
    }

    /** The first of its section, behind another section: a panel may begin with it at no cost. */
    Choice leading(int white) {
        return withFirst(first -> first.leading(white));
    }

    private Choice withFirst(UnaryOperator<Strip> change) {
        return new Choice(origin, ways.stream().map(way -> {
            List<Strip> strips = new ArrayList<>(way.strips());
            strips.set(0, change.apply(strips.get(0)));
            return new Way(way.cost(), way.brief(), strips);
        }).toList());
    }

    private static Strip last(Way way) {
        return way.strips().get(way.strips().size() - 1);
    }
}
