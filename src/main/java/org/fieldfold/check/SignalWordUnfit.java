package org.fieldfold.check;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Consumer;
import org.fieldfold.entry.ActiveIngredient;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.SignalWord;
import org.fieldfold.source.Finding;

/**
 * The strongest signal word of a material is the one that its toxicity categories ask for (40 CFR 156.64).
 */
final class SignalWordUnfit implements Rule {
    @Override
    public String id() {
        return "signal-word-unfit";
    }

    @Override
    public void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        for (Placed<ActiveIngredient> material : base.materials().values()) {
            material.value().toxicity().ifPresent(toxicity -> {
                Optional<SignalWord> strongest = material.value().signalWords().stream().sorted().findFirst();
                // category IV needs no word; where one is used it is the weakest, 156.64 (a)(1)(iv)
                SignalWord allowed = toxicity.signalWord().orElse(SignalWord.CAUTION);
                if (!strongest.map(allowed::equals).orElse(toxicity.signalWord().isEmpty())) {
                    found.accept(Finding.error(material.at("signal-words"), id(), "expected "
                            + Words.of(allowed)
                            + " as the strongest signal word of " + material.value().name() + ", found "
                            + strongest.map(Words::of).orElse("none"),
                            "the category of the most toxic route decides; read both on the label"));
                }
            });
        }
    }
}
