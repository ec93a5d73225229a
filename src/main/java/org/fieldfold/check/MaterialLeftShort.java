package org.fieldfold.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.fieldfold.entry.ActiveIngredient;
import org.fieldfold.entry.Audience;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Control;
import org.fieldfold.entry.OrganicStatus;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.StageWindow;
import org.fieldfold.source.Finding;

/** What a material that is gone leaves behind: no organic choice, one mode of action, a stage without any. */
final class MaterialLeftShort implements PestRule {
    private static final int CODES = 100;

    @Override
    public String id() {
        return "material-left-short";
    }

    @Override
    public void check(Placed<PestEntry> pest, ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        Set<String> lacks = new LinkedHashSet<>();
        Set<String> gone = new LinkedHashSet<>();
        for (Audience reader : Audience.values()) {
            List<Control.Insecticide> all = uses(pest.value(), reader, base);
            List<Control.Insecticide> left = all.stream().filter(use -> !isGone(use, pest.value(), base))
                    .toList();
            all.stream().filter(use -> !left.contains(use)).forEach(use ->
                    gone.add(material(use, base).name()));
            lacks(all, left, base).forEach(lack -> lacks.add(lack + " for " + Words.of(reader)));
        }
        if (!lacks.isEmpty()) {
            found.accept(Finding.warning(pest.at("controls"), id(), "expected tier 3 whole without "
                    + String.join(", ", gone) + ", found " + String.join("; ", lacks) + guides(pest, base),
                    "put another material in its place, or say in a caution what is missing"));
        }
    }

    private static List<Control.Insecticide> uses(PestEntry entry, Audience reader, ContentBase base) {
        return entry.controlsFor(reader, 3).stream().map(control -> (Control.Insecticide) control)
                .filter(use -> base.materials().containsKey(use.material())).toList();
    }

    private static ActiveIngredient material(Control.Insecticide use, ContentBase base) {
        return base.materials().get(use.material()).value();
    }

    private static boolean isGone(Control.Insecticide use, PestEntry entry, ContentBase base) {
        return material(use, base).isGoneFor(base.edition().value().year(), entry.crops());
    }

    /** What was there and is no longer. */
    private static List<String> lacks(List<Control.Insecticide> all, List<Control.Insecticide> left,
            ContentBase base) {
        List<String> lacks = new ArrayList<>();
        if (left.size() == all.size()) {
            return lacks;
        }
        if (left.isEmpty()) {
            lacks.add("no material at all");
            return lacks;
        }
        if (hasOrganic(all, base) && !hasOrganic(left, base)) {
            lacks.add("no organic material");
        }
        if (groups(all, base).size() > 1 && groups(left, base).size() == 1) {
            lacks.add("only mode-of-action group " + groups(left, base).iterator().next());
        }
        BitSet uncovered = stages(all);
        uncovered.andNot(stages(left));
        if (!uncovered.isEmpty()) {
            lacks.add("no material at BBCH " + runs(uncovered));
        }
        return lacks;
    }

    private static boolean hasOrganic(List<Control.Insecticide> uses, ContentBase base) {
        return uses.stream().anyMatch(use -> material(use, base).organic() != OrganicStatus.PROHIBITED);
    }

    private static Set<String> groups(List<Control.Insecticide> uses, ContentBase base) {
        return uses.stream().map(use -> material(use, base).group().flatMap(GroupCode::mainGroup))
                .flatMap(Optional::stream).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** A material without stages is for all of them. */
    private static BitSet stages(List<Control.Insecticide> uses) {
        BitSet stages = new BitSet(CODES);
        for (Control.Insecticide use : uses) {
            StageWindow window = use.stages().orElse(new StageWindow(0, CODES - 1));
            stages.set(Math.max(0, window.from()), Math.min(CODES, Math.max(window.from(), window.to()) + 1));
        }
        return stages;
    }

    private static String runs(BitSet codes) {
        List<String> runs = new ArrayList<>();
        for (int from = codes.nextSetBit(0); from >= 0; from = codes.nextSetBit(codes.nextClearBit(from))) {
            int to = codes.nextClearBit(from) - 1;
            runs.add(from == to ? String.valueOf(from) : from + " to " + to);
        }
        return String.join(", ", runs);
    }

    private static String guides(Placed<PestEntry> pest, ContentBase base) {
        List<String> guides = base.guides().values().stream()
                .filter(guide -> guide.value().entries().contains(pest.value().id()))
                .map(guide -> guide.value().id()).toList();
        return guides.isEmpty() ? "" : ", in the guide" + (guides.size() == 1 ? " " : "s ")
                + String.join(", ", guides);
    }
}
