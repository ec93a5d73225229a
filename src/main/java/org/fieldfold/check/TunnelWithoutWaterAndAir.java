package org.fieldfold.check;

import java.time.LocalDate;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Practice;
import org.fieldfold.entry.PracticeKind;
import org.fieldfold.source.Finding;

/**
 * Under plastic it gets hot and no rain falls (common practice, no source): a tunnel says how it is watered
 * and aired.
 */
final class TunnelWithoutWaterAndAir implements Rule {
    @Override
    public String id() {
        return "tunnel-without-water-and-air";
    }

    @Override
    public void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        for (Placed<Practice> practice : base.practices().values()) {
            if (practice.value().kind() != PracticeKind.LOW_TUNNEL
                    && practice.value().kind() != PracticeKind.HIGH_TUNNEL_SCREEN) {
                continue;
            }
            if (practice.value().irrigation().isEmpty()) {
                found.accept(Finding.error(practice.at("kind"), id(), "expected how '" + practice.value()
                        .name()
                        + "' is watered, found nothing", "add 'irrigation:'"));
            }
            if (practice.value().ventilation().isEmpty()) {
                found.accept(Finding.error(practice.at("kind"), id(), "expected how '" + practice.value()
                        .name()
                        + "' is aired, found nothing", "add 'ventilation:'"));
            }
        }
    }
}
