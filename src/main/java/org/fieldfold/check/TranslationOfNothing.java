package org.fieldfold.check;

import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Translation;
import org.fieldfold.source.Finding;

/** A translation translates something that is in the base. */
final class TranslationOfNothing implements TranslationRule {
    @Override
    public String id() {
        return "translation-of-nothing";
    }

    @Override
    public void check(TranslatedFile file, ContentBase base, Consumer<Finding> found) {
        if (base.unread().containsKey(file.name().substring(file.name().lastIndexOf('/') + 1))) {
            return; // the base file cannot be read: that is to be mended, not this one
        }
        if (file.page().isPresent() && file.matching().pairs().isEmpty()) {
            found.accept(Finding.warning(file.page().get().start(), id(),
                    "expected a file of the base that has texts, found none named '" + file.name() + "'",
                    "rename the file as the base file is named, or delete it"));
            return;
        }
        for (Translation.Passage left : file.matching().left()) {
            found.accept(Finding.warning(left.hashPlace(), id(), "expected the path of a text in '"
                    + file.name() + "', found '" + left.path() + "'", "'fieldfold draft translation "
                    + file.translation().language() + " " + file.name()
                    + "' lists the paths; move the text or delete it"));
        }
    }
}
