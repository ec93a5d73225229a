package org.fieldfold.check;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.Set;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.source.Finding;

/** An entry that no guide lists reaches nobody on paper. */
final class EntryInNoGuide implements Rule {
    @Override
    public String id() {
        return "entry-in-no-guide";
    }

    @Override
    public void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        Set<String> listed = new HashSet<>();
        base.guides().values().forEach(guide -> listed.addAll(guide.value().entries()));
        base.pests().forEach((id, pest) -> {
            if (!listed.contains(id)) {
                found.accept(Finding.warning(pest.at("names", "common"), id(),
                        "expected a guide that lists '" + id
                        + "', found none", "add it to 'entries:' of a guide"));
            }
        });
    }
}
