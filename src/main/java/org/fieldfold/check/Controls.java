package org.fieldfold.check;

import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Control;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Practice;
import org.fieldfold.entry.PracticeKind;

/** Looks at the measures of an entry, each with its position in the file's list. */
final class Controls {
    /** Practices that put something between a flying insect and the crop. */
    private static final Set<PracticeKind> COVERS = EnumSet.of(PracticeKind.ROW_COVER,
            PracticeKind.INSECT_NET, PracticeKind.LOW_TUNNEL, PracticeKind.HIGH_TUNNEL_SCREEN);

    private Controls() {
    }

    static Map<Integer, Control.Insecticide> insecticides(PestEntry entry) {
        Map<Integer, Control.Insecticide> uses = new TreeMap<>();
        for (int i = 0; i < entry.controls().size(); i++) {
            if (entry.controls().get(i) instanceof Control.Insecticide use) {
                uses.put(i, use);
            }
        }
        return uses;
    }

    static Map<Integer, Control.Exclusion> covers(PestEntry entry, ContentBase base) {
        Map<Integer, Control.Exclusion> covers = new TreeMap<>();
        for (int i = 0; i < entry.controls().size(); i++) {
            if (entry.controls().get(i) instanceof Control.Exclusion measure
                    && practice(measure, base).map(Practice::kind).filter(COVERS::contains).isPresent()) {
                covers.put(i, measure);
            }
        }
        return covers;
    }

    /** The kinds of practice that an entry's measures of one tier refer to. */
    static Set<PracticeKind> practices(PestEntry entry, ContentBase base, int tier) {
        Set<PracticeKind> kinds = EnumSet.noneOf(PracticeKind.class);
        entry.controls().stream().filter(control -> control.tier() == tier)
                .forEach(control -> practice(control, base).map(Practice::kind).ifPresent(kinds::add));
        return kinds;
    }

    static Optional<Practice> practice(Control control, ContentBase base) {
        Optional<String> id = control instanceof Control.Cultural cultural ? cultural.practice()
                : control instanceof Control.Exclusion exclusion ? exclusion.practice() : Optional.empty();
        return id.map(base.practices()::get).map(Placed::value);
    }
}
