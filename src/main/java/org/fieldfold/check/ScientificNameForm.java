package org.fieldfold.check;

import java.time.LocalDate;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Names;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.ScientificName;
import org.fieldfold.source.Finding;

/** Scientific names of animals are formed as the International Code of Zoological Nomenclature asks. */
final class ScientificNameForm implements Rule {
    @Override
    public String id() {
        return "scientific-name-form";
    }

    @Override
    public void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        base.pests().values().forEach(pest -> formed(pest, pest.value().names(), found));
        base.enemies().values().forEach(enemy -> formed(enemy, enemy.value().names(), found));
    }

    private void formed(Placed<?> placed, Names names, Consumer<Finding> found) {
        String written = names.scientific();
        if (ScientificName.read(written).isEmpty()) {
            found.accept(Finding.error(placed.at("names", "scientific"), id(), "expected a name such as "
                    + "'Thrips tabaci Lindeman, 1889' or 'Myzus persicae (Sulzer, 1776)', found '" + written
                    + "'",
                    "capital genus, lower-case species, no comma before the author; parentheses only when "
                    + "the genus " + "changed"));
        }
    }
}
