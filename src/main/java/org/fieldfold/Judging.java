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

/** What a base is held to: the rules, and the editions that were issued. As it stands here, all is judged anew. */
interface Judging {
    /** As if nothing had been judged before. */
    Judging ANEW = new Judging() { };

    /** Every finding of every rule. */
    default List<Finding> rules(LoadedBase loaded, ContentBase base, LocalDate asOf) {
        return Rulebook.check(base, asOf);
    }

    /** The ledgers of a content base. */
    default Ledgers ledgers(Path content) throws IOException {
        return Ledgers.in(content);
    }

    /** The facts as they are now, which are held to those of ledgers. */
    default Snapshot facts(LoadedBase loaded, ContentBase base) {
        return Snapshot.of(base);
    }

    /** How facts differ from those of an edition. */
    default Comparison changes(Ledger since, Snapshot now) {
        return Comparison.of("", since.facts(), "", now);
    }
}
