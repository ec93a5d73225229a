package org.fieldfold.check;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import org.fieldfold.entry.BeeHazard;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Control;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.StageWindow;
import org.fieldfold.source.Finding;

/**
 * What is used while the crop flowers (BBCH 60 to 69) says how bees are kept safe; so does what harms bees
 * and may be used at any stage.
 */
final class BeesAtFlowering implements PestRule {
    @Override
    public String id() {
        return "bees-at-flowering";
    }

    @Override
    public void check(Placed<PestEntry> pest, ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        Controls.insecticides(pest.value()).forEach((i, use) -> {
            if (use.bees().isPresent()) {
                return;
            }
            if (use.stages().filter(StageWindow.FLOWERING::overlaps).isPresent()) {
                found.accept(Finding.error(pest.at("controls", i), id(), "expected a bee note for "
                        + use.material() + ", used at BBCH " + Words.of(use.stages().get())
                        + " over flowering (60-69), found none",
                        "add 'bees:', or end its 'stages:' before 60"));
            } else if (use.stages().isEmpty() && harmsBees(use, base) && flowers(pest.value(), base)) {
                found.accept(Finding.error(pest.at("controls", i), id(),
                        "expected growth stages or a bee note for "
                        + use.material() + ", which harms bees, found neither",
                        "add 'stages:' that end before 60, or 'bees:'"));
            }
        });
    }

    private static boolean harmsBees(Control.Insecticide use, ContentBase base) {
        return Optional.ofNullable(base.materials().get(use.material()))
                .flatMap(material -> material.value().bees())
                .filter(hazard -> hazard != BeeHazard.LOW).isPresent();
    }

    private static boolean flowers(PestEntry entry, ContentBase base) {
        return entry.crops().stream().map(base.crops()::get).filter(Objects::nonNull)
                .flatMap(crop -> crop.value().stages().stream())
                .anyMatch(stage -> StageWindow.FLOWERING.overlaps(new StageWindow(stage.from(), stage.to())));
    }
}
