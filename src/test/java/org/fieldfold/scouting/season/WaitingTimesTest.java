package org.fieldfold.scouting.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDateTime;
import org.fieldfold.scouting.season.WaitingTimes.Fit;
import org.junit.jupiter.api.Test;

/** Calendar arithmetic; what the two intervals are is set by 40 CFR 156.208 and the label. */
class WaitingTimesTest {
    private static final LocalDateTime EVENING = LocalDateTime.of(2027, 6, 10, 19, 0);

    @Test
    void theLaterOfTheTwoDecides() {
        WaitingTimes shortHarvest = new WaitingTimes(new LabelRange(4, 12), new LabelRange(0, 0));
        assertEquals(LocalDateTime.of(2027, 6, 10, 23, 0), shortHarvest.harvestAfter(EVENING).soonest());
        assertEquals(LocalDateTime.of(2027, 6, 11, 7, 0), shortHarvest.harvestAfter(EVENING).surely());
        WaitingTimes longHarvest = new WaitingTimes(LabelRange.of(24), new LabelRange(3, 14));
        assertEquals(LocalDateTime.of(2027, 6, 11, 19, 0), longHarvest.entryAfter(EVENING).surely());
        assertEquals(LocalDateTime.of(2027, 6, 13, 19, 0), longHarvest.harvestAfter(EVENING).soonest());
        assertEquals(LocalDateTime.of(2027, 6, 24, 19, 0), longHarvest.harvestAfter(EVENING).surely());
    }

    @Test
    void whatStillFitsBeforeHarvest() {
        WaitingTimes times = new WaitingTimes(LabelRange.of(12), new LabelRange(1, 7));
        assertEquals(Fit.BY_ANY_LABEL, times.before(EVENING.plusDays(7), EVENING));
        assertEquals(Fit.READ_THE_LABEL, times.before(EVENING.plusDays(7).minusMinutes(1), EVENING));
        assertEquals(Fit.READ_THE_LABEL, times.before(EVENING.plusDays(1), EVENING));
        assertEquals(Fit.TOO_LATE, times.before(EVENING.plusHours(23), EVENING));
    }

    @Test
    void nonsenseIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new LabelRange(3, 2));
        assertThrows(IllegalArgumentException.class, () -> new LabelRange(-1, 2));
    }
}
