package org.fieldfold.scouting.season;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDateTime;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.fieldfold.scouting.season.WaitingTimes.Fit;

/** Calendar arithmetic; what the two intervals are is set by 40 CFR 156.208 and the label. */
class WaitingTimesProperties {
    private static final LocalDateTime EVENING = LocalDateTime.of(2027, 6, 10, 19, 0);

    @Property
    void harvestNeverBeforeEntryNorSurelyBeforeSoonest(@ForAll @IntRange(max = 240) int hours,
            @ForAll @IntRange(max = 240) int moreHours, @ForAll @IntRange(max = 60) int days,
            @ForAll @IntRange(max = 60) int moreDays) {
        WaitingTimes times = new WaitingTimes(new LabelRange(hours, hours + moreHours),
                new LabelRange(days, days + moreDays));
        assertEquals(false, times.harvestAfter(EVENING).soonest()
                .isBefore(times.entryAfter(EVENING).soonest()));
        assertEquals(false, times.harvestAfter(EVENING).surely()
                .isBefore(times.harvestAfter(EVENING).soonest()));
        assertEquals(Fit.BY_ANY_LABEL, times.before(times.harvestAfter(EVENING).surely(), EVENING));
    }
}
