package org.fieldfold.check;

import java.time.LocalDate;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.source.Finding;

/** A pest is known by its looks: it has at least one drawing. */
final class PestWithoutFigure implements PestRule {
    @Override
    public String id() {
        return "pest-without-figure";
    }

    @Override
    public void check(Placed<PestEntry> pest, ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        if (base.figuresOf(pest.value().id(), pest.value().figures(), pest.value().stages()).isEmpty()) {
            found.accept(Finding.warning(pest.at("names", "common"), id(),
                    "expected a drawing of this pest, found none",
                    "add figures/" + pest.value().id() + "-adult.svg with a .yaml beside it"));
        }
    }
}
