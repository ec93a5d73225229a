package org.fieldfold.check;

import java.time.LocalDate;
import java.util.function.Consumer;
import org.fieldfold.entry.Clumping;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Monitoring;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.source.Finding;

/** How pests lie is given by a and b, or by k, all above 0; a wanted precision lies between 0 and 1. */
final class DispersionUnfit implements PestRule {
    @Override
    public String id() {
        return "dispersion-unfit";
    }

    @Override
    public void check(Placed<PestEntry> pest, ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        for (int i = 0; i < pest.value().monitoring().size(); i++) {
            Monitoring look = pest.value().monitoring().get(i);
            int at = i;
            look.dispersion().filter(clumping -> clumping.dispersion().isEmpty()).ifPresent(clumping ->
                    found.accept(Finding.error(pest.at("monitoring", at, "dispersion"), id(),
                            "expected a and b of the power law, or k alone, above 0, found "
                            + figures(clumping), "a and b as published for this unit, or k")));
            look.precision().filter(precision -> !(precision > 0 && precision < 1)).ifPresent(precision ->
                    found.accept(Finding.error(pest.at("monitoring", at, "precision"), id(),
                            "expected a precision between 0 and 1, found " + Words.of(precision),
                            "0.25 means a standard error of a quarter of the mean")));
            look.perArea().filter(area -> area.density().isEmpty()).ifPresent(area ->
                    found.accept(Finding.error(pest.at("monitoring", at, "per-area"), id(),
                            "expected at least 1 and an area above 0 for one more, found " + area.atLeast()
                            + " and " + Words.of(area.oneMoreEach()),
                            "as in 'at-least: 1, one-more-each: 2.5'")));
        }
    }

    private static String figures(Clumping clumping) {
        return "a " + clumping.a().map(Words::of).orElse("none") + ", b "
                + clumping.b().map(Words::of).orElse("none") + ", k "
                + clumping.k().map(Words::of).orElse("none");
    }
}
