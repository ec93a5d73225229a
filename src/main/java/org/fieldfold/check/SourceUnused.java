package org.fieldfold.check;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.Set;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.source.Finding;

/** A source that nothing leans on is left over from something that was cut. */
final class SourceUnused implements Rule {
    @Override
    public String id() {
        return "source-unused";
    }

    @Override
    public void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        if (!base.unread().isEmpty()) {
            return; // an entry that could not be read may lean on it
        }
        Set<String> used = new HashSet<>();
        base.reviewed().forEach(placed -> used.addAll(placed.value().sources()));
        base.materials().values().forEach(material -> used.addAll(material.value().sources()));
        base.pests().values().forEach(pest -> pest.value().monitoring().forEach(look ->
                look.season().ifPresent(season ->
                        season.events().forEach(event -> event.source().ifPresent(used::add)))));
        base.sources().forEach((id, source) -> {
            if (!used.contains(id)) {
                found.accept(Finding.warning(source.at("id"), id(),
                        "expected something that leans on source '" + id
                        + "', found nothing", "name it in an entry, or take it out"));
            }
        });
    }
}
