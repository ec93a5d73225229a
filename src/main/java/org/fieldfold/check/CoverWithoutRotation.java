package org.fieldfold.check;

import java.time.LocalDate;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.PracticeKind;
import org.fieldfold.entry.WinterPlace;
import org.fieldfold.source.Finding;

/**
 * A pest that winters in the soil of the bed comes up under the cover: cover and rotation go together (common
 * practice, no source).
 */
final class CoverWithoutRotation implements PestRule {
    @Override
    public String id() {
        return "cover-without-rotation";
    }

    @Override
    public void check(Placed<PestEntry> pest, ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        boolean inTheBed = pest.value().overwinters().filter(WinterPlace.BED_SOIL::equals).isPresent();
        boolean rotated = Controls.practices(pest.value(), base, 1).contains(PracticeKind.ROTATION);
        Controls.covers(pest.value(), base).forEach((i, cover) -> {
            if (inTheBed && !rotated) {
                found.accept(Finding.error(pest.at("controls", i), id(),
                        "expected rotation in tier 1 beside a cover against "
                        + "a pest that winters in the bed's soil, found none",
                        "add a tier 1 measure with 'practice: rotation'"));
            }
        });
    }
}
