package org.fieldfold.scouting.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.fieldfold.scouting.season.Rotation.Rule;
import org.fieldfold.scouting.season.Rotation.Violation;
import org.junit.jupiter.api.Test;

/** Rotation by generation of the pest, not by number of uses: common practice, no source. */
class RotationTest {
    private static List<ModeOfAction> modes(String... codes) {
        return Stream.of(codes).map(ModeOfAction::new).toList();
    }

    private static final int ANY_NUMBER = 100;

    @Test
    void theNextGenerationMeetsAnotherGroup() {
        assertEquals(List.of(), new Rotation(List.of(modes("5", "5"), modes("28"), modes("5")))
                .violations(ANY_NUMBER));
        assertEquals(List.of(new Violation(Rule.SAME_GROUP_IN_NEXT_GENERATION, 2, "5")),
                new Rotation(List.of(modes("5"), modes("11A", "5"))).violations(ANY_NUMBER));
        // a generation that was left alone breaks the chain
        assertEquals(List.of(), new Rotation(List.of(modes("5"), modes(), modes("5")))
        .violations(ANY_NUMBER));
    }

    @Test
    void aSubgroupIsNoRotationAndTheUnknownBindsNothing() {
        assertEquals(List.of(new Violation(Rule.SAME_GROUP_IN_NEXT_GENERATION, 2, "4")),
                new Rotation(List.of(modes("4A"), modes("4C"))).violations(ANY_NUMBER));
        assertEquals(List.of(), new Rotation(List.of(modes("UN"), modes("UN", "UNE")))
                .violations(ANY_NUMBER));
    }

    @Test
    void usesInASeasonAreCounted() {
        assertEquals(List.of(new Violation(Rule.MORE_USES_THAN_ALLOWED, 3, "5")),
                new Rotation(List.of(modes("5", "5"), modes("28"), modes("5"))).violations(2));
    }

    @Test
    void codesOfTheClassification() {
        assertEquals("11", new ModeOfAction(" 11a ").group());
        assertEquals("UNM", new ModeOfAction("UNM").group());
        assertThrows(IllegalArgumentException.class, () -> new ModeOfAction("A4"));
        assertThrows(IllegalArgumentException.class, () -> new ModeOfAction(""));
        assertEquals(Optional.empty(), Rotation.of(modes("4A", "4C"), 2));
        assertEquals(Optional.empty(), Rotation.of(modes(), 1));
    }
}
