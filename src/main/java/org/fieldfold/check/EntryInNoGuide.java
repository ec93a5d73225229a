package org.fieldfold.check;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
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
                        + "', found none, so that it is on no foldout", "add it to 'entries:' of "
                        + (near(base, pest.value()).isEmpty() ? "a guide" : near(base, pest.value()))
                        + ", or begin a guide of its own with 'fieldfold draft guide ID'"));
            }
        });
    }

    /** The guides for its crops. */
    private static String near(ContentBase base, PestEntry pest) {
        return base.guides().values().stream().map(Placed::value)
                .filter(guide -> guide.crops().stream().anyMatch(pest.crops()::contains))
                .map(guide -> "guides/" + guide.id() + ".yaml").sorted().collect(Collectors.joining(" or "));
    }
}
