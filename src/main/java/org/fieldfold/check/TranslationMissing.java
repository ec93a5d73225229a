package org.fieldfold.check;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Edition;
import org.fieldfold.entry.Translation;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Span;
import org.fieldfold.translation.BaseText;
import org.fieldfold.translation.BaseTexts;
import org.fieldfold.translation.Matching;

/** A language of the edition has every text; of a language that is only being prepared nothing is asked. */
final class TranslationMissing implements Rule {
    @Override
    public String id() {
        return "translation-missing";
    }

    @Override
    public void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        Edition edition = base.edition().value();
        for (int i = 1; i < edition.languages().size(); i++) {
            String language = edition.languages().get(i);
            Translation translation = base.translations().get(language);
            if (translation == null || translation.files().isEmpty()) {
                found.accept(Finding.warning(base.edition().at("languages", i), id(),
                        "expected a folder '" + language + "' with the texts in this language, found none",
                        "'fieldfold draft translation " + language + "' writes it"));
            } else {
                BaseTexts.of(base).forEach((file, texts) -> check(translation, file, texts, found));
            }
        }
    }

    /** One finding a file, at its first text without translation. */
    private void check(Translation translation, String file, List<BaseText> texts, Consumer<Finding> found) {
        Translation.Page page = translation.files().get(file);
        List<Matching.Pair> missing = Matching.of(texts, page == null ? List.of() : page.passages()).pairs()
                .stream().filter(pair -> pair.state() == Matching.State.MISSING && !pair.text().optional())
                .toList();
        if (missing.isEmpty()) {
            return;
        }
        Matching.Pair first = missing.get(0);
        Span place = first.passage().map(Translation.Passage::place)
                .orElse(page == null ? first.text().span() : page.start());
        found.accept(Finding.warning(place, id(), "expected every text in language " + translation.language()
                + ", found " + missing.size() + " of " + texts.size() + " missing, the first '"
                + first.text().path() + "' “" + Words.cut(first.text().words()) + "”",
                "'fieldfold draft translation " + translation.language() + " " + file
                        + "' lists them; until then readers see the base language"));
    }
}
