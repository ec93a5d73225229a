package org.fieldfold.check;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.LookAlike;
import org.fieldfold.entry.Placed;
import org.fieldfold.source.Finding;

/** When one animal is taken for another, both entries say so; nothing is taken for itself. */
final class LookAlikeOneWay implements Rule {
    @Override
    public String id() {
        return "look-alike-one-way";
    }

    @Override
    public void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        base.pests().values().forEach(pest ->
                answered(pest, pest.value().id(), pest.value().lookAlikes(), base, found));
        base.enemies().values().forEach(enemy ->
                answered(enemy, enemy.value().id(), enemy.value().lookAlikes(), base, found));
    }

    private void answered(Placed<?> placed, String self, List<LookAlike> others, ContentBase base,
            Consumer<Finding> found) {
        for (int i = 0; i < others.size(); i++) {
            String other = others.get(i).entry();
            if (other.equals(self)) {
                found.accept(Finding.error(placed.at("look-alikes", i, "entry"), id(),
                        "expected another animal than '"
                        + self + "' itself, found '" + other + "'", "name the one that it is mistaken for"));
                continue;
            }
            Optional<List<LookAlike>> back = Optional.ofNullable(base.pests().get(other))
                    .map(pest -> pest.value().lookAlikes())
                    .or(() -> Optional.ofNullable(base.enemies().get(other))
                            .map(enemy -> enemy.value().lookAlikes()));
            if (back.isPresent() && back.get().stream().noneMatch(mark -> mark.entry().equals(self))) {
                found.accept(Finding.warning(placed.at("look-alikes", i, "entry"), id(), "expected '" + other
                        + "' to name '" + self + "' as its look-alike too, found that it does not",
                        "add the mark that tells them apart to '" + other + "' as well"));
            }
        }
    }
}
