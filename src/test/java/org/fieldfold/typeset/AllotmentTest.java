package org.fieldfold.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class AllotmentTest {
    private static List<Allotment.Group> best(int sections, int panels, Allotment.Price price) {
        List<Allotment.Group> groups = Allotment.best(sections, panels, price);
        int section = 0;
        int panel = 0;
        for (Allotment.Group group : groups) {
            assertEquals(section, group.from());
            assertEquals(panel, group.panel());
            section = group.to();
            panel += group.panels();
        }
        assertEquals(sections, section);
        assertTrue(panel <= panels);
        return groups;
    }

    @Test
    void eachSectionHasItsPanel() {
        assertEquals(List.of(new Allotment.Group(0, 1, 0, 1), new Allotment.Group(1, 2, 1, 1)),
                best(2, 4, group -> 5 * group.panels()));
    }

    @Test
    void aLongSectionTakesTheSparePanel() {
        List<Allotment.Group> groups = best(3, 4, group -> group.from() == 1 && group.panels() == 1 ? 100
                : 1);
        assertEquals(2, groups.get(1).panels());
    }

    @Test
    void sectionsShareOnlyWhereThereAreMoreThanPanels() {
        assertTrue(best(3, 3, group -> group.to() - group.from() > 1 ? 0 : 9).stream()
                .allMatch(group -> group.to() == group.from() + 1));
        List<Allotment.Group> crowded = best(4, 3, group -> 10 * (group.to() - group.from() - 1) + 1);
        assertEquals(List.of(1, 1, 2),
                crowded.stream().map(group -> group.to() - group.from()).sorted().toList());
    }

    /** Prices are as good as random, but the same whenever a group is asked for. */
    @Property(tries = 300)
    void nothingIsCheaper(@ForAll @IntRange(min = 1, max = 6) int sections, @ForAll @IntRange(min = 1,
            max = 6) int panels,
            @ForAll @IntRange(min = 0, max = 1_000_000) int seed) {
        Allotment.Price price = group -> new java.util.Random(seed + 31L * group.hashCode()).nextInt(1000);
        long found = best(sections, panels, price).stream().mapToLong(price::of).sum();
        assertEquals(cheapest(0, 0, sections, panels, price), found);
    }

    private static long cheapest(int section, int panel, int sections, int panels, Allotment.Price price) {
        if (section == sections) {
            return 0;
        }
        long best = Long.MAX_VALUE;
        boolean crowded = sections > panels;
        for (int to = section + 1; to <= sections; to++) {
            for (int count = 1; count <= 4 && panel + count <= panels; count++) {
                boolean allowed = crowded ? count <= to - section : to == section + 1;
                if (allowed) {
                    long rest = cheapest(to, panel + count, sections, panels, price);
                    if (rest != Long.MAX_VALUE) {
                        best = Math.min(best, rest + price.of(new Allotment.Group(section, to, panel,
                                count)));
                    }
                }
            }
        }
        return best;
    }
}
