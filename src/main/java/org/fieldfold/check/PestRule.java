package org.fieldfold.check;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.source.Finding;

/** A question that is put to one pest entry after the other. */
interface PestRule extends Rule {
    void check(Placed<PestEntry> pest, ContentBase base, LocalDate asOf, Consumer<Finding> found);

    @Override
    default void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        base.pests().values().forEach(pest -> check(pest, base, asOf, found));
    }

    /** One question a pest. */
    default Stream<Question> questions(ContentBase base) {
        return base.pests().keySet().stream().map(pest -> new Question(id() + " pests/" + pest, List.of(this),
                (read, asOf, found) -> check(read.pests().get(pest), read, asOf, found)));
    }
}
