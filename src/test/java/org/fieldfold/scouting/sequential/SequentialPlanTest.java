package org.fieldfold.scouting.sequential;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalInt;
import org.fieldfold.scouting.sequential.CountModel.Presence;
import org.junit.jupiter.api.Test;

class SequentialPlanTest {
    private static SequentialPlan upTo(int max) {
        return new SequentialPlan(new Presence(), 0.10, 0.25, 0.10, 0.10, 10, max, 5, AtMaximum.NEARER_LINE);
    }

    @Test
    void aPlanThatIsCutTooShortIsRefusedWithItsTrueChances() {
        SequentialPlan tooShort = upTo(15);
        assertTrue(tooShort.trueAlpha() > 0.105, "" + tooShort.trueAlpha());
        assertEquals(Optional.empty(), tooShort.table());
        assertTrue(tooShort.refusal().orElseThrow()
                .startsWith("the chance of acting at the low density is declared as 0.100 and is 0.1"));
    }

    @Test
    void aLongEnoughPlanIsPrinted() {
        SequentialPlan plan = upTo(60);
        assertTrue(plan.trueAlpha() <= 0.105 && plan.trueBeta() <= 0.105);
        assertEquals(Optional.empty(), plan.refusal());
        assertEquals(11, plan.table().orElseThrow().rows().size());
    }

    @Test
    void theLeastMaximumIsTheFirstThatHolds() {
        int least = upTo(60).leastMaximum(100).orElseThrow();
        assertTrue(least > 15 && least <= 60, "" + least);
        assertEquals(Optional.empty(), upTo(least).refusal());
        assertTrue(upTo(least - 5).refusal().isPresent());
        assertEquals(OptionalInt.empty(), upTo(15).leastMaximum(15));
    }

    @Test
    void countingAgainAtTheMaximumSparesSpraysAndActingSparesTheCrop() {
        SequentialPlan again = new SequentialPlan(new Presence(), 0.10, 0.25, 0.10, 0.10, 10, 30, 5,
                AtMaximum.COUNT_AGAIN);
        SequentialPlan act = new SequentialPlan(new Presence(), 0.10, 0.25, 0.10, 0.10, 10, 30, 5,
                AtMaximum.ACT);
        assertTrue(again.trueAlpha() < upTo(30).trueAlpha() && upTo(30).trueAlpha() < act.trueAlpha());
        assertTrue(again.trueBeta() > upTo(30).trueBeta() && upTo(30).trueBeta() > act.trueBeta());
    }
}
