package org.fieldfold.check;

import java.util.Comparator;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.prose.Ease;
import org.fieldfold.source.Finding;

/** A pocket text is read in the row: short sentences, short words. The longer form may be longer. */
final class HardToRead implements TextRule {
    /** Two grades above the target, and long enough that one name alone does not decide. */
    private static final double GRADE = Ease.TARGET_GRADE + 2;
    private static final int FEWEST_WORDS = 8;

    @Override
    public String id() {
        return "hard-to-read";
    }

    @Override
    public void check(Facts.Written text, ContentBase base, Consumer<Finding> found) {
        boolean pocket = text.length().equals("pocket") || text.length().equals("garden");
        // the formula knows English only; review/reading.html measures Spanish by its own
        if (!pocket || text.words().codePoints().noneMatch(Character::isLetterOrDigit)
                || !base.edition().value().languages().stream().findFirst().orElse("en").equals("en")) {
            return;
        }
        Ease ease = Ease.of(text.words(), "en");
        if (ease.words() >= FEWEST_WORDS && ease.grade() > GRADE) {
            found.accept(Finding.info(text.span(), id(), "expected a pocket text of school grade "
                    + Math.round(Ease.TARGET_GRADE) + " or lower, found grade " + Math.round(ease.grade())
                    + "; hardest is '" + hardest(text.words()) + "'",
                    "make two sentences of it, or take shorter words"));
        }
    }

    private static String hardest(String text) {
        return Ease.sentences(text).stream()
                .filter(sentence -> sentence.codePoints().anyMatch(Character::isLetterOrDigit))
                .max(Comparator.comparing(sentence -> Ease.of(sentence, "en").grade())).orElse("");
    }
}
