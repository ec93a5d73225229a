package org.fieldfold.check;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Crop;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Season;
import org.fieldfold.entry.StageWindow;
import org.fieldfold.entry.Threshold;
import org.fieldfold.source.Finding;

/** Growth stages are those that the crop has, in BBCH codes. */
final class StageOutsideCrop implements PestRule {
    @Override
    public String id() {
        return "stage-outside-crop";
    }

    @Override
    public void check(Placed<PestEntry> pest, ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        PestEntry entry = pest.value();
        for (int i = 0; i < entry.thresholds().size(); i++) {
            Threshold threshold = entry.thresholds().get(i);
            List<String> crops = threshold.crop().map(List::of).orElse(entry.crops());
            int at = i;
            threshold.stages().ifPresent(window -> outside(window, crops, base).ifPresent(why -> found.accept(
                    Finding.error(pest.at("thresholds", at, "stages"), id(), why, HINT))));
        }
        for (int i = 0; i < entry.monitoring().size(); i++) {
            int at = i;
            entry.monitoring().get(i).season().flatMap(Season::stages).ifPresent(window ->
                    outside(window, entry.crops(), base).ifPresent(why -> found.accept(
                            Finding.error(pest.at("monitoring", at, "season", "stages"), id(), why, HINT))));
        }
        Controls.insecticides(entry).forEach((i, use) -> use.stages().ifPresent(window ->
                outside(window, entry.crops(), base).ifPresent(why -> found.accept(
                        Finding.error(pest.at("controls", i, "stages"), id(), why, HINT)))));
    }

    private static final String HINT = "the stages of each crop stand in crops.yaml";

    /**
     * Why a window is none of the crops', or empty when it meets a stage of one and leaves its season at
     * neither end.
     */
    private static Optional<String> outside(StageWindow window, List<String> crops, ContentBase base) {
        if (window.from() > window.to() || window.from() < 0 || window.to() > 99) {
            return Optional.of("expected BBCH codes from low to high within 0-99, found " + Words.of(window));
        }
        List<Crop> known = crops.stream().map(base.crops()::get).filter(Objects::nonNull).map(Placed::value)
                .toList();
        boolean fits = known.isEmpty() || known.stream().anyMatch(crop -> within(window, crop));
        return fits ? Optional.empty() : Optional.of("expected growth stages that " + String.join(" or ",
                crops)
                + " has, found BBCH " + Words.of(window));
    }

    /** Stages may have gaps between them, as no crop goes through all codes: a window may end in one. */
    private static boolean within(StageWindow window, Crop crop) {
        return crop.stages().stream().anyMatch(stage -> window.overlaps(new StageWindow(stage.from(),
                stage.to())))
                && crop.stages().stream().anyMatch(stage -> stage.from() <= window.from())
                && crop.stages().stream().anyMatch(stage -> window.to() <= stage.to());
    }
}
