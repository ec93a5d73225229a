package org.fieldfold.check;

import java.time.LocalDate;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.LifeStage;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.SizeRange;
import org.fieldfold.source.Finding;

/** Sizes are true body lengths: the smallest is not larger than the largest, and an egg is smaller than the adult. */
final class SizesContradict implements PestRule {
    @Override
    public String id() {
        return "sizes-contradict";
    }

    @Override
    public void check(Placed<PestEntry> pest, ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        PestEntry entry = pest.value();
        double adult = entry.stages().stream().filter(stage -> stage.stage() == LifeStage.ADULT)
                .mapToDouble(stage -> stage.size().to()).max().orElse(Double.MAX_VALUE);
        for (int i = 0; i < entry.stages().size(); i++) {
            SizeRange size = entry.stages().get(i).size();
            if (!(size.from() > 0) || size.from() > size.to()) {
                found.accept(Finding.error(pest.at("stages", i, "size"), id(), "expected a size from small to large, found "
                        + Words.of(size.from()) + " to " + Words.of(size.to()) + " mm", "sizes are body lengths in mm"));
            } else if (entry.stages().get(i).stage() == LifeStage.EGG && size.to() > adult) {
                found.accept(Finding.error(pest.at("stages", i, "size"), id(), "expected an egg smaller than the adult ("
                        + Words.of(adult) + " mm), found " + Words.of(size.to()) + " mm", "one of the two is wrong"));
            }
        }
    }
}
