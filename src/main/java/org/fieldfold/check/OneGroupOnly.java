package org.fieldfold.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.fieldfold.entry.Audience;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Control;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.source.Finding;

/**
 * Repeating one mode of action breeds resistance: whoever reads finds something to change to, by the main
 * number of the group. Materials without a number, such as soap, bind no rotation.
 */
final class OneGroupOnly implements PestRule {
    @Override
    public String id() {
        return "one-group-only";
    }

    @Override
    public void check(Placed<PestEntry> pest, ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        List<String> stuck = new ArrayList<>();
        SortedSet<String> groups = new TreeSet<>();
        for (Audience reader : Audience.values()) {
            onlyGroup(pest.value(), reader, base).ifPresent(group -> {
                stuck.add(Words.of(reader));
                groups.add(group);
            });
        }
        if (!stuck.isEmpty()) {
            found.accept(Finding.warning(pest.at("controls"), id(),
                    "expected materials of at least two modes of action "
                    + "for " + String.join(" and ", stuck) + ", found only group "
                    + String.join(" or ", groups),
                    "add a material of another main number, or say in a caution that there is none"));
        }
    }

    /** The one main number of two or more materials, when all that these readers are given share it. */
    private static Optional<String> onlyGroup(PestEntry entry, Audience reader, ContentBase base) {
        List<Optional<String>> groups = entry.controlsFor(reader, 3).stream()
                .map(use -> Optional.ofNullable(base.materials().get(((Control.Insecticide) use).material()))
                        .flatMap(material -> material.value().group()).flatMap(GroupCode::mainGroup))
                                .toList();
        return groups.size() > 1 && groups.stream().distinct().count() == 1 ? groups.get(0)
                : Optional.empty();
    }
}
