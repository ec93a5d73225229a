package org.fieldfold.check;

import java.time.LocalDate;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.StageWindow;
import org.fieldfold.source.Finding;

/** What is used while the crop flowers (BBCH 60 to 69) says how bees are kept safe. */
final class BeesAtFlowering implements PestRule {
    @Override
    public String id() {
        return "bees-at-flowering";
    }

    @Override
    public void check(Placed<PestEntry> pest, ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        Controls.insecticides(pest.value()).forEach((i, use) -> {
            if (use.stages().filter(StageWindow.FLOWERING::overlaps).isPresent() && use.bees().isEmpty()) {
                found.accept(Finding.error(pest.at("controls", i), id(), "expected a bee note for "
                        + use.material() + ", used at BBCH " + Words.of(use.stages().get())
                        + " over flowering (60-69), found none",
                        "add 'bees:', or end its 'stages:' before 60"));
            }
        });
    }
}
