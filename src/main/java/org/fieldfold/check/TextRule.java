package org.fieldfold.check;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.source.Finding;

/** A question that is put to one text of the base after the other, wherever it stands. */
interface TextRule extends Rule {
    void check(Facts.Written text, ContentBase base, Consumer<Finding> found);

    @Override
    default void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        Facts.texts(base, text -> check(text, base, found));
    }

    /** One question a record for all of these rules: its texts are gone through once. */
    static Stream<Question> questions(List<TextRule> rules, ContentBase base) {
        return Facts.records(base).map(record -> new Question("texts " + record.name(), rules,
                (read, asOf, found) -> record.texts(read, text ->
                        rules.forEach(rule -> rule.check(text, read, found)))));
    }
}
