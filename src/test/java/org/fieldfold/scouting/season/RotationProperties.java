package org.fieldfold.scouting.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** Rotation by generation of the pest, not by number of uses: common practice, no source. */
class RotationProperties {
    private static final int ANY_NUMBER = 100;

    @Property
    void aSuggestedSeasonBreaksNothing(
            @ForAll @Size(min = 1, max = 6) List<@IntRange(min = 1, max = 34) Integer> groups,
            @ForAll @IntRange(min = 1, max = 8) int generations) {
        List<ModeOfAction> modes = groups.stream().map(group -> new ModeOfAction(group + "A")).toList();
        Optional<Rotation> season = Rotation.of(modes, generations);
        boolean enough = generations == 1 || groups.stream().distinct().count() > 1;
        assertEquals(enough, season.isPresent());
        assertTrue(season.stream().allMatch(rotation -> rotation.violations(ANY_NUMBER).isEmpty()
                && rotation.generations().size() == generations));
    }
}
