package org.fieldfold.entry;

import java.util.List;
import java.util.Optional;

/** When to look. */
public record Season(
        @Describe("growth stages of the crop, BBCH") Optional<StageWindow> stages,
        @Describe("dates, where no stage decides") Optional<DateWindow> dates,
        @Describe("degree-day events") List<DegreeDayEvent> events) {
}
