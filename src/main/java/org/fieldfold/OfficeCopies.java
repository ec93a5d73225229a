package org.fieldfold;

import java.util.List;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Office;
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

    private static PrintedCopy copy(Office office, PrintRun run) {
        return new PrintedCopy("offices/" + office.id() + "/" + run.name() + ".pdf", run,
                run.office(office.id()), office.flip().orElse(FlipEdge.SHORT));
    }
}
