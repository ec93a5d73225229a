package org.fieldfold.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** Holds the filling of panels against trying everything. */
class FillTest {
    private static final Strip.Ink NOTHING = (pen, top) -> {};

    private static Choice block(Choice.Way... ways) {
        return new Choice(Samples.span(), List.of(ways));
    }

    private static Choice.Way way(long cost, int... units) {
        List<Strip> strips = new ArrayList<>();
        for (int unit : units) {
            strips.add(strips.isEmpty() ? Strip.opening(1, unit, false, NOTHING) : Strip.following(unit,
                    NOTHING));
        }
        return new Choice.Way(cost, cost > 0, strips);
    }

    @Test
    void takesTheFullFormsWhileTheyFit() {
        Choice block = block(way(0, 6), way(Cost.BRIEF, 2));
        assertEquals(List.of(0, 0), Fill.best(List.of(block, block), 13).ways());
        assertEquals(1, Fill.best(List.of(block, block),
                12).ways().stream().mapToInt(Integer::intValue).sum());
        assertEquals(List.of(1, 1), Fill.best(List.of(block, block), 5).ways());
    }

    @Test
    void saysHowMuchIsOver() {
        Choice block = block(way(0, 6), way(Cost.BRIEF, 4));
        assertEquals(3, Fill.best(List.of(block, block), 6).over());
    }

    @Test
    void headingsGoWithWhatTheyHead() {
        Choice heading = Choice.only(Samples.span(), List.of(Strip.opening(0, 2, true, NOTHING)));
        Filling filling = Fill.best(List.of(block(way(0, 6)), heading, block(way(0, 4))), 9, 9);
        assertEquals(List.of(0, 1, 1), filling.strips().stream().map(Filling.Placed::panel).toList());
    }

    @Test
    void divisionBetweenBlocksIsCheaperThanInside() {
        Filling filling = Fill.best(List.of(block(way(0, 4, 2, 2)), block(way(0, 4, 2, 2))), 13, 13);
        assertEquals(List.of(0, 0, 0, 1, 1, 1),
                filling.strips().stream().map(Filling.Placed::panel).toList());
    }

    @Property(tries = 400)
    void nothingIsCheaper(@ForAll("problems") List<Choice> blocks,
            @ForAll("panels") List<Integer> capacities) {
        int[] rooms = capacities.stream().mapToInt(Integer::intValue).toArray();
        Filling filling = Fill.best(blocks, rooms);
        assertEquals(new BruteFill(blocks, rooms).cheapest(), filling.cost());
        assertEquals(BruteFill.cost(blocks, rooms, filling), filling.cost(), "the plan costs what it says");
    }

    @Property(tries = 200)
    void stripsStandInOrderAndApart(@ForAll("problems") List<Choice> blocks,
            @ForAll("panels") List<Integer> rooms) {
        Filling filling = Fill.best(blocks, rooms.stream().mapToInt(Integer::intValue).toArray());
        for (int i = 1; i < filling.strips().size(); i++) {
            Filling.Placed before = filling.strips().get(i - 1);
            Filling.Placed here = filling.strips().get(i);
            assertTrue(here.panel() > before.panel() && here.top() == here.strip().head().units()
                    || here.panel() == before.panel() && here.top() == before.bottom() + here.strip().gap());
        }
    }

    @Provide
    Arbitrary<List<Integer>> panels() {
        return Arbitraries.integers().between(4, 16).list().ofMinSize(1).ofMaxSize(3);
    }

    @Provide
    Arbitrary<List<Choice>> problems() {
        Arbitrary<Strip> strip = Combinators.combine(Arbitraries.integers().between(0, 2),
                Arbitraries.integers().between(1, 6), Arbitraries.of(true, false, false),
                Arbitraries.of(0L, Cost.DIVIDED, Cost.DIVIDED + Cost.INSIDE), Arbitraries.of(0, 0, 0, 1, 2))
                .as((gap, units, keep, breaking, head) -> new Strip(gap, true, breaking, units, keep, NOTHING)
                        .under(new Strip.Head(head, NOTHING)));
        Arbitrary<Choice.Way> way = Combinators.combine(Arbitraries.of(0L, Cost.PLATE, Cost.BRIEF,
                Cost.DROPPED),
                strip.list().ofMinSize(1).ofMaxSize(2)).as((cost, strips) -> new Choice.Way(cost, cost > 0,
                strips));
        Arbitrary<Choice> block = Combinators.combine(way.list().ofMinSize(1).ofMaxSize(3),
                Arbitraries.of(true, false, false)).as(FillTest::alike);
        return block.list().ofMinSize(1).ofMaxSize(4);
    }

    /** Ways of one block agree in whether the next block is held to it. */
    private static Choice alike(List<Choice.Way> ways, boolean keep) {
        return block(ways.stream().map(way -> {
            List<Strip> strips = new ArrayList<>(way.strips());
            Strip last = strips.remove(strips.size() - 1);
            strips.add(new Strip(last.gap(), true, last.breaking(), last.units(), keep, NOTHING,
                    last.head()));
            return new Choice.Way(way.cost(), way.brief(), strips);
        }).toArray(Choice.Way[]::new));
    }
}
