package org.fieldfold;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.fieldfold.edition.Ledger;
import org.fieldfold.edition.Snapshot;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Reviewed;
import org.fieldfold.source.Finding;

/** Entries that say that they were carried over unchanged, held to the last edition. */
final class CarriedOver {
    private CarriedOver() {
    }

    /** @param facts of the base, for when they are needed */
    static List<Finding> findings(ContentBase base, Ledgers ledgers, Supplier<Snapshot> facts) {
        List<Finding> findings = new ArrayList<>();
        Optional<Ledger> last = ledgers.before(base.edition().value().year());
        List<Placed<? extends Reviewed>> carried = base.reviewed().stream()
                .filter(entry -> entry.value().carriedOver().orElse(false)).toList();
        boolean unread = last.isEmpty() && !ledgers.findings().isEmpty(); // an altered ledger is its own finding
        if (!carried.isEmpty() && !unread) {
            Snapshot now = facts.get();
            for (Placed<? extends Reviewed> entry : carried) {
                String id = entry.value().id();
                String found = last.isEmpty() ? "no edition before this one"
                        : String.join("; ", Signing.changed(now, last.get(), base, entry.value()));
                if (!found.isEmpty()) {
                    findings.add(Finding.error(entry.at("carried-over"), "carried-over-changed",
                            "expected '" + id + "' as the last edition has it, found " + found,
                            "re-read it, and sign it without --carried-over"));
                }
            }
        }
        return findings;
    }
}
