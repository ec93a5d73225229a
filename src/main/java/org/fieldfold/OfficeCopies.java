package org.fieldfold;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Office;
import org.fieldfold.entry.Units;
import org.fieldfold.fold.FlipEdge;

/** What the county offices print: each its guides, in its languages, on its paper, for its printer. */
final class OfficeCopies {
    private OfficeCopies() {
    }

    /** Those of {@code runs} that each office hands out; what an office cannot have is found by a rule. */
    static List<PrintedCopy> of(ContentBase base, List<PrintRun> runs) {
        return base.offices().values().stream().flatMap(office -> runs.stream()
                .filter(run -> run.isFor(office.value())).map(run -> copy(office.value(), run)))
                .toList();
    }

    /** The units in which some copy is printed, the edition's own first. */
    static Set<Optional<Units>> units(ContentBase base) {
        Set<Optional<Units>> units = new LinkedHashSet<>(Set.of(base.edition().value().units()));
        base.offices().values().forEach(office -> office.value().units().ifPresent(own ->
                units.add(Optional.of(own))));
        return units;
    }

    /** Whether a run is printed at all: for everybody, or for some office. */
    static boolean isPrinted(ContentBase base, PrintRun run) {
        return run.isForAll() || base.offices().values().stream().anyMatch(office -> run.isFor(office.value()));
    }

    private static PrintedCopy copy(Office office, PrintRun run) {
        return new PrintedCopy("offices/" + office.id() + "/" + run.name() + ".pdf", run,
                run.office(office.id()), office.flip().orElse(FlipEdge.SHORT));
    }
}
