package org.fieldfold.check;

import java.util.function.Consumer;
import org.fieldfold.entry.Translation;
import org.fieldfold.source.Finding;
import org.fieldfold.translation.Matching;

/** A translation translates something that is in the base. */
final class TranslationOfNothing implements TranslationRule {
    @Override
    public String id() {
        return "translation-of-nothing";
    }

    @Override
    public void check(Translation translation, String file, Translation.Page page, Matching matching,
            Consumer<Finding> found) {
        if (matching.pairs().isEmpty()) {
            found.accept(Finding.warning(page.start(), id(), "expected a file of the base that has texts, "
                    + "found none named '" + file + "'", "rename the file as the base file is named, or "
                    + "delete it"));
            return;
        }
        for (Translation.Passage left : matching.left()) {
            found.accept(Finding.warning(left.hashPlace(), id(), "expected the path of a text in '" + file
                    + "', found '" + left.path() + "'", "'fieldfold draft translation "
                    + translation.language() + " " + file + "' lists the paths; move the text or delete it"));
        }
    }
}
