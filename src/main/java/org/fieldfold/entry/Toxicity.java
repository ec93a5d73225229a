package org.fieldfold.entry;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The toxicity categories of the most toxic product of a material, by the five routes of 40 CFR 156.62: 1 is
 * the most toxic, 4 the least.
 */
public record Toxicity(
        @Describe("swallowed, category 1 to 4") int oral,
        @Describe("through the skin, category 1 to 4") int dermal,
        @Describe("breathed in, category 1 to 4") int inhalation,
        @Describe("on the eye, category 1 to 4") int eye,
        @Describe("on the skin, category 1 to 4") int skin) {
    private static final List<SignalWord> BY_CATEGORY =
            List.of(SignalWord.DANGER, SignalWord.WARNING, SignalWord.CAUTION);

    public Toxicity {
        if (Stream.of(oral, dermal, inhalation, eye, skin).anyMatch(category -> category < 1
                || category > 4)) {
            throw new IllegalArgumentException("expected toxicity categories 1 to 4, found oral " + oral
                    + ", dermal "
                    + dermal + ", inhalation " + inhalation + ", eye " + eye + ", skin " + skin);
        }
    }

    /**
     * The signal word that a label must have, 40 CFR 156.64 (a): the most toxic of the five routes decides;
     * category I is Danger, with 'Poison' beside it when it is reached by mouth, skin absorption or breath
     * and not by irritation alone; II is Warning; III is Caution.
     *
     * @return empty for category IV on every route, where no word is needed and only Caution may be used
     */
    public Optional<SignalWord> signalWord() {
        if (Math.min(oral, Math.min(dermal, inhalation)) == 1) {
            return Optional.of(SignalWord.DANGER_POISON);
        }
        int highest = Stream.of(oral, dermal, inhalation, eye, skin).mapToInt(Integer::intValue).min()
                .orElseThrow();
        return highest == 4 ? Optional.empty() : Optional.of(BY_CATEGORY.get(highest - 1));
    }
}
