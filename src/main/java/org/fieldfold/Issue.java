package org.fieldfold;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.fieldfold.edition.Due;
import org.fieldfold.edition.Ledger;
import org.fieldfold.edition.SignedFacts;
import org.fieldfold.edition.SignedWith;
import org.fieldfold.edition.Snapshot;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Edition;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Reviewed;

/** Freezes an edition: builds it once more and writes its ledger. */
public final class Issue {
    private Issue() {
    }

    /**
     * What came of it.
     *
     * @param ledger the file that was written; empty when errors stood
     * @param seal of the ledger
     * @param byHand how many entries were signed without a hash, so that an edit after it was not found
     */
    public record Issued(Compiler.Built built, Optional<Path> ledger, String seal, int byHand) {
    }

    /** Where it was signed and is due all the same. */
    private static String why(Reviewed entry, ContentBase base) {
        return SignedFacts.changed(entry) ? " (changed since it was signed)" : SignedWith.changed(entry, base)
                ? " (" + String.join("; ", SignedWith.changes(entry, base, Optional.empty()))
                        + " changed since it was signed)" : "";
    }

    /**
     * Builds the edition and writes {@code issued/<year>.json}.
     *
     * @param year that is meant; empty for the one of {@code edition.yaml}, whichever it is
     * @param today stands in the ledger as the day of issue
     * @throws Editions.Refused when it was issued already, its time is over, or entries are due and unsigned
     */
    public static Issued edition(Compiler.Request request, Optional<Integer> year, LocalDate today,
            Consumer<String> progress) throws IOException, Editions.Refused {
        progress.accept("reading " + request.content());
        Compiler.Checked checked = Compiler.check(request.content(), request.asOf());
        ContentBase base = Editions.base(checked);
        Edition edition = base.edition().value();
        if (year.filter(meant -> meant != edition.year()).isPresent()) {
            throw new Editions.Refused("expected " + edition.year() + ", the year of edition.yaml, found " + year.get()
                    + (year.get() > edition.year() ? "; 'fieldfold edition open " + year.get() + "' opens it" : ""));
        }
        Optional<Ledger> before = checked.ledgers().of(edition.year());
        if (before.isPresent() || Files.exists(checked.ledgers().file(edition.year()))) {
            throw new Editions.Refused("edition " + edition.year() + " was issued already"
                    + before.map(ledger -> " on " + ledger.issuedOn()).orElse("")
                    + "; an issued edition is never rewritten. 'fieldfold edition open "
                    + (edition.year() + 1) + "' begins the next");
        }
        if (today.isAfter(edition.validUntil())) {
            throw new Editions.Refused("expected to issue edition " + edition.year() + " while it holds, "
                    + "found that it ended on " + edition.validUntil());
        }
        List<? extends Placed<? extends Reviewed>> due = Due.in(base);
        if (!due.isEmpty()) {
            throw new Editions.Refused("expected every entry re-read and signed, found " + due.size()
                    + " due: " + due.stream().map(entry -> entry.value().id()
                            + why(entry.value(), base))
                            .collect(Collectors.joining(", "))
                    + ". 'fieldfold worklist' says why, 'fieldfold sign ID --by REVIEWER' signs");
        }
        // what is frozen is made, not taken from an earlier build
        Compiler.Built built = Compiler.compile(new Compiler.Request(request.content(), request.out(),
                request.asOf(), request.proof()), checked, progress);
        if (built.folder().isEmpty()) {
            return new Issued(built, Optional.empty(), "", 0);
        }
        Ledger ledger = new Ledger(edition.year(), today, Compiler.VERSION,
                checked.ledgers().before(edition.year()).map(last ->
                        new Ledger.Follows(last.year(), last.seal())),
                Snapshot.of(base), Reissue.hashes(built.outputs()));
        Path file = checked.ledgers().file(edition.year());
        WholeFile.write(file, ledger.text().getBytes(StandardCharsets.UTF_8));
        return new Issued(built, Optional.of(file), ledger.seal(), Due.byHand(base));
    }
}
