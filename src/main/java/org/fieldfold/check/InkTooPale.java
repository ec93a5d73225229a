package org.fieldfold.check;

import java.time.LocalDate;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Crop;
import org.fieldfold.entry.Placed;
import org.fieldfold.source.Finding;

/** A crop's ink has at least 7:1 on white, computed as WCAG 2 does, so that a copier loses nothing. */
final class InkTooPale implements Rule {
    @Override
    public String id() {
        return "ink-too-pale";
    }

    @Override
    public void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        for (Placed<Crop> crop : base.crops().values()) {
            String ink = crop.value().ink();
            if (!Contrast.isColour(ink)) {
                found.accept(Finding.error(crop.at("ink"), id(), "expected an ink as #rrggbb, found '" + ink
                        + "'",
                        "six hexadecimal figures behind #, in quotes"));
            } else if (Contrast.ratio(ink, "#ffffff") < 7) {
                found.accept(Finding.error(crop.at("ink"), id(),
                        "expected an ink with at least 7:1 on white, found " + ink
                        + " with " + Words.of(StrictMath.floor(Contrast.ratio(ink, "#ffffff") * 100) / 100)
                        + ":1",
                        "take a darker one"));
            }
        }
    }
}
