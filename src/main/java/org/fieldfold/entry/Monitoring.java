package org.fieldfold.entry;

import java.util.List;
import java.util.Optional;
import org.fieldfold.scouting.Walk;

/** How one looks for a pest. */
public record Monitoring(
        @Describe("short id, so that a threshold can name this count") String id,
        @Describe("method, from the fixed vocabulary") MonitoringMethod method,
        @Describe("sampling unit: what one looks at, one by one") SamplingUnit unit,
        @Describe("how many units are looked at in all") int sample,
        @Describe("way through the field") Optional<Walk> walk,
        @Describe("at how many stops; the sample is divided evenly among them") Optional<Integer> stops,
        @Describe("days between two looks") Optional<Integer> everyDays,
        @Describe("when to look") Optional<Season> season,
        @Describe("how it is done, in a sentence or two") Text how,
        @Describe("for whom; leave out for everybody") List<Audience> audiences) {
}
