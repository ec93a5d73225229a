package org.fieldfold.check;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.source.Finding;

/** A question that is put to the translation of one file after the other. */
interface TranslationRule extends Rule {
    void check(TranslatedFile file, ContentBase base, Consumer<Finding> found);

    @Override
    default void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        TranslatedFile.all(base).forEach(file -> check(file.in(base), base, found));
    }

    /** One question a file for all of these rules: texts and translations are laid side by side once. */
    static Stream<Question> questions(List<TranslationRule> rules, ContentBase base) {
        return TranslatedFile.all(base).map(file -> new Question(
                "translations " + file.language() + " " + file.file(), rules, (read, asOf, found) -> {
                    TranslatedFile beside = file.in(read);
                    rules.forEach(rule -> rule.check(beside, read, found));
                }));
    }
}
