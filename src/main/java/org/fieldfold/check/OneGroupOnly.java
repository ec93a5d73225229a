package org.fieldfold.check;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.source.Finding;

/** Repeating one mode of action breeds resistance: there is something to change to, by the main number of the group. */
final class OneGroupOnly implements PestRule {
    @Override
    public String id() {
        return "one-group-only";
    }

    @Override
    public void check(Placed<PestEntry> pest, ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        Map<String, Integer> groups = new TreeMap<>();
        Controls.insecticides(pest.value()).forEach((i, use) -> Optional.ofNullable(base.materials().get(use.material()))
                .flatMap(material -> material.value().group()).map(ModeOfAction::mainGroup)
                .ifPresent(group -> groups.merge(group, 1, Integer::sum)));
        int uses = groups.values().stream().mapToInt(Integer::intValue).sum();
        if (groups.size() == 1 && uses > 1) {
            found.accept(Finding.warning(pest.at("controls"), id(), "expected materials of at least two modes of action, "
                    + "found " + uses + " of group " + groups.keySet().iterator().next(),
                    "add a material of another main group, or say in a caution that there is none"));
        }
    }
}
