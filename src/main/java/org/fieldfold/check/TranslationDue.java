package org.fieldfold.check;

import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Translation;
import org.fieldfold.source.Finding;
import org.fieldfold.translation.Matching;

/** A translation says what the base says now. */
final class TranslationDue implements TranslationRule {
    @Override
    public String id() {
        return "translation-due";
    }

    @Override
    public void check(TranslatedFile file, ContentBase base, Consumer<Finding> found) {
        for (Matching.Pair pair : file.matching().pairs()) {
            if (pair.state() == Matching.State.DUE) {
                Translation.Passage passage = pair.passage().orElseThrow();
                found.accept(Finding.warning(passage.hashPlace(), id(), "expected a translation of "
                        + pair.text().hash() + " “" + Words.cut(pair.text().words()) + "”, found one of "
                        + passage.of() + ", “" + Words.cut(passage.words().orElseThrow().markdown()) + "”",
                        "translate the text again and set 'of: " + pair.text().hash() + "'; until then "
                                + "readers see the base language"));
            }
        }
    }
}
