package org.fieldfold.check;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Figure;
import org.fieldfold.entry.LifeStage;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.SizeRange;
import org.fieldfold.entry.StageDescription;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Span;

/**
 * Sizes are true body lengths: the smallest is not larger than the largest, an egg is smaller than the adult,
 * and a figure shows a stage at a size that the stage has.
 */
final class SizesContradict implements Rule {
    @Override
    public String id() {
        return "sizes-contradict";
    }

    @Override
    public void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        base.pests().values().forEach(pest -> stages(pest, pest.value().stages(), found));
        base.enemies().values().forEach(enemy -> stages(enemy, enemy.value().stages(), found));
        base.figures().values().forEach(figure -> figure(figure, base, found));
    }

    private void stages(Placed<?> placed, List<StageDescription> stages, Consumer<Finding> found) {
        double adult = stages.stream().filter(stage -> stage.stage() == LifeStage.ADULT)
                .mapToDouble(stage -> stage.size().to()).max().orElse(Double.MAX_VALUE);
        for (int i = 0; i < stages.size(); i++) {
            SizeRange size = stages.get(i).size();
            Span at = placed.at("stages", i, "size");
            if (backwards(size, at, found)) {
                continue;
            }
            if (stages.get(i).stage() == LifeStage.EGG && size.to() > adult) {
                found.accept(Finding.error(at, id(), "expected an egg smaller than the adult ("
                        + Words.of(adult)
                        + " mm), found " + Words.of(size.to()) + " mm", "one of the two is wrong"));
            }
        }
    }

    /**
     * Eggs are often drawn as the mass in which they are laid, so that a figure of them may be larger than
     * one egg.
     */
    private void figure(Placed<Figure> figure, ContentBase base, Consumer<Finding> found) {
        figure.value().note().trueSize().ifPresent(size -> {
            Span at = figure.at("true-size");
            if (backwards(size, at, found)) {
                return;
            }
            figure.value().note().shows().stage().ifPresent(stage -> described(figure, base).stream()
                    .filter(known -> known.stage() == stage && (size.to() < known.size().from()
                            || size.from() > known.size().to() && stage != LifeStage.EGG)).findFirst()
                    .ifPresent(known -> found.accept(Finding.error(at, id(),
                            "expected a size within that of the stage it "
                            + "shows (" + Words.of(known.size()) + "), found " + Words.of(size),
                            "the bar beside a drawing is drawn from 'true-size'"))));
        });
    }

    private static List<StageDescription> described(Placed<Figure> figure, ContentBase base) {
        String entry = figure.value().note().shows().entry();
        return base.pests().containsKey(entry) ? base.pests().get(entry).value().stages()
                : base.enemies().containsKey(entry) ? base.enemies().get(entry).value().stages() : List.of();
    }

    private boolean backwards(SizeRange size, Span at, Consumer<Finding> found) {
        if (size.from() > 0 && size.from() <= size.to()) {
            return false;
        }
        found.accept(Finding.error(at, id(), "expected a size from small to large, found " + Words.of(size),
                "sizes are body lengths in mm"));
        return true;
    }
}
