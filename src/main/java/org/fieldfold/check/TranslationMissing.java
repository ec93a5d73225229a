package org.fieldfold.check;

import java.util.List;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Translation;
import org.fieldfold.source.Finding;
import org.fieldfold.translation.Matching;

/** A language of the edition has every text; of a language that is only being prepared nothing is asked. */
final class TranslationMissing implements TranslationRule {
    @Override
    public String id() {
        return "translation-missing";
    }

    @Override
    public void check(TranslatedFile file, ContentBase base, Consumer<Finding> found) {
        String language = file.translation().language();
        int at = 1 + TranslatedFile.languages(base).indexOf(language);
        if (at > 0 && file.translation().files().isEmpty()) {
            found.accept(Finding.warning(base.edition().at("languages", at), id(),
                    "expected a folder '" + language + "' with the texts in this language, found none",
                    "'fieldfold draft translation " + language + "' writes it"));
        } else if (at > 0) {
            texts(file, found);
        }
    }

    /** One finding a file, at its first text without translation. */
    private void texts(TranslatedFile file, Consumer<Finding> found) {
        List<Matching.Pair> missing = file.matching().pairs().stream().filter(pair ->
                pair.state() == Matching.State.MISSING && !pair.text().optional()).toList();
        if (missing.isEmpty()) {
            return;
        }
        Matching.Pair first = missing.get(0);
        String language = file.translation().language();
        found.accept(Finding.warning(first.passage().map(Translation.Passage::place)
                .orElseGet(() -> file.start(first)), id(), "expected every text in language " + language
                + ", found " + missing.size() + " of " + file.matching().pairs().size()
                + " missing, the first '" + first.text().path() + "' “" + Words.cut(first.text().words()) + "”",
                "'fieldfold draft translation " + language + " " + file.name()
                        + "' lists them; until then readers see the base language"));
    }
}
