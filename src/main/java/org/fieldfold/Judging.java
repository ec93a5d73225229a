package org.fieldfold;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.fieldfold.check.Rulebook;
import org.fieldfold.content.LoadedBase;
import org.fieldfold.edition.Comparison;
import org.fieldfold.edition.Ledger;
import org.fieldfold.edition.Snapshot;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.source.Finding;

/** What a base is held to: the rules, and the editions that were issued. */
interface Judging {
    /** As if nothing had been judged before. */
    Judging ANEW = new Judging() {
        @Override
        public List<Finding> rules(LoadedBase loaded, ContentBase base, LocalDate asOf) {
            return Rulebook.check(base, asOf);
        }

        @Override
        public Ledgers ledgers(Path content) throws IOException {
            return Ledgers.in(content);
        }

        @Override
        public Snapshot facts(LoadedBase loaded, ContentBase base) {
            return Snapshot.of(base);
        }

        @Override
        public Comparison changes(Ledger since, Snapshot now) {
            return Comparison.of("", since.facts(), "", now);
        }
    };

    /** Every finding of every rule. */
    List<Finding> rules(LoadedBase loaded, ContentBase base, LocalDate asOf);

    /** The ledgers of a content base. */
    Ledgers ledgers(Path content) throws IOException;

    /** The facts as they are now, which are held to those of ledgers. */
    Snapshot facts(LoadedBase loaded, ContentBase base);

    /** How facts differ from those of an edition. */
    Comparison changes(Ledger since, Snapshot now);
}
