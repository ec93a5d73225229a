package org.fieldfold.check;

import java.time.LocalDate;
import java.util.function.Consumer;
import org.fieldfold.entry.BodyWidth;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.SizeRange;
import org.fieldfold.entry.StageDescription;
import org.fieldfold.source.Finding;

/** A body is above 0 mm wide, not wider than long, and its narrowest is not its widest. */
final class BodyWidthUnfit implements PestRule {
    @Override
    public String id() {
        return "body-width-unfit";
    }

    @Override
    public void check(Placed<PestEntry> pest, ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        for (int i = 0; i < pest.value().stages().size(); i++) {
            StageDescription stage = pest.value().stages().get(i);
            if (stage.bodyWidth().filter(width -> !fits(width, stage.size())).isPresent()) {
                BodyWidth width = stage.bodyWidth().get();
                found.accept(Finding.error(pest.at("stages", i, "body-width"), id(),
                        "expected a width above 0, rising, within the length of " + Words.of(stage.size())
                        + ", found " + Words.of(new SizeRange(width.from(), width.to())) + ", hole "
                        + width.triedHole().map(Words::of).orElse("none"),
                        "the width of the thorax in mm, the narrowest first"));
            }
        }
    }

    private static boolean fits(BodyWidth width, SizeRange length) {
        return width.from() > 0 && width.from() <= width.to() && width.to() <= length.to()
                && width.triedHole().map(hole -> hole > 0).orElse(true);
    }
}
