package org.fieldfold.check;

import java.time.LocalDate;
import java.util.function.Consumer;
import org.fieldfold.entry.BorderSize;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Practice;
import org.fieldfold.entry.TunnelSizes;
import org.fieldfold.scouting.geometry.Field;
import org.fieldfold.scouting.geometry.Hoop;
import org.fieldfold.scouting.geometry.LowTunnel;
import org.fieldfold.source.Finding;

/** The measures of a practice can be built: hoops, sheets, a border of trap crop, traps for an area. */
final class MeasuresUnfit implements Rule {
    /** Shares of a trap crop that make sense, percent (common practice, no source). */
    private static final double LEAST_SHARE = 2;
    private static final double MOST_SHARE = 25;

    @Override
    public String id() {
        return "measures-unfit";
    }

    @Override
    public void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        for (Placed<Practice> practice : base.practices().values()) {
            Practice known = practice.value();
            known.tunnel().ifPresent(sizes -> tunnel(practice, sizes, found));
            known.border().ifPresent(border -> border(practice, border, found));
            known.perArea().filter(area -> area.density().isEmpty()).ifPresent(area ->
                    found.accept(Finding.error(practice.at("per-area"), id(),
                            "expected at least 1 and an area above 0 for one more, found " + area.atLeast()
                            + " and " + Words.of(area.oneMoreEach()),
                            "as in 'at-least: 1, one-more-each: 2.5'")));
        }
    }

    private void tunnel(Placed<Practice> practice, TunnelSizes sizes, Consumer<Finding> found) {
        try {
            for (double span : sizes.spans()) {
                for (Hoop hoop : sizes.hoops(span)) {
                    new LowTunnel(hoop, sizes.bedLength(), sizes.spacing(), sizes.depth(), sizes.allowance())
                            .hoops();
                }
            }
        } catch (IllegalArgumentException | ArithmeticException impossible) {
            found.accept(Finding.error(practice.at("tunnel"), id(), "expected hoops that can be bent and set, "
                    + "found that " + impossible.getMessage(), "all lengths are in the one unit given"));
        }
    }

    private void border(Placed<Practice> practice, BorderSize border, Consumer<Finding> found) {
        if (!(border.share() >= LEAST_SHARE && border.share() <= MOST_SHARE)) {
            found.accept(Finding.warning(practice.at("border", "share"), id(), "expected a trap crop of "
                    + Words.of(LEAST_SHARE) + " to " + Words.of(MOST_SHARE) + " % of the field, found "
                    + Words.of(border.share()), "too little stops nothing, too much costs the crop"));
        }
        for (int i = 0; i < border.fields().size(); i++) {
            try {
                new Field(border.fields().get(i), border.fields().get(i));
            } catch (IllegalArgumentException impossible) {
                found.accept(Finding.error(practice.at("border", "fields", i), id(),
                        "expected a field with sides, found that " + impossible.getMessage(),
                        "the side of a square field, in the unit given"));
            }
        }
    }
}
