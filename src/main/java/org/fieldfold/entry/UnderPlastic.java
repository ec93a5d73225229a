package org.fieldfold.entry;

import java.time.MonthDay;

/** How much warmer it is under plastic than in the open: an assumption, said with every date made from it. */
public record UnderPlastic(
        @Describe("F or C; both gains are differences") DegreeDayEvent.TemperatureUnit unit,
        @Describe("degrees added to the day's maximum, 0 to 40") double byDay,
        @Describe("degrees added to the day's minimum, no more than by day") double byNight,
        @Describe("first day under cover, MM-DD") MonthDay from,
        @Describe("last day under cover, MM-DD, in the same year") MonthDay until) {
}
