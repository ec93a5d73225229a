package org.fieldfold.edition;

import java.util.Map;
import java.util.Optional;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.trace.KeptResults;
import org.fieldfold.trace.ResultReader;
import org.fieldfold.trace.ResultWriter;

/**
 * What there is to re-read from one state of a base to the next: an entry is looked at again when it, or anything
 * that was looked at with it, has changed.
 */
public final class KeptRereadings {
    private static final KeptResults.Form<Rereading> FORM = new KeptResults.Form<>() {
        @Override
        public void write(Rereading rereading, ResultWriter out) {
            rereading.write(out);
        }

        @Override
        public Optional<Rereading> read(ResultReader in) {
            return Optional.of(Rereading.read(in));
        }
    };

    private final KeptResults<Rereading> kept = new KeptResults<>();
    private boolean isAsWritten;

    /** None are known yet. */
    public KeptRereadings() {
    }

    /**
     * Those that an earlier process wrote down.
     *
     * @param bytes of {@link #bytes} by the very same program; of any others nothing is known
     */
    public KeptRereadings(byte[] bytes) {
        kept.goOn(bytes, FORM);
    }

    /** The last ones, to be known in a later process; empty when they are all as they were written down. */
    public Optional<byte[]> bytes() {
        return isAsWritten ? Optional.empty() : Optional.of(kept.bytes(FORM));
    }

    /**
     * The same as {@link Rereadings#of}, in less time.
     *
     * @param hashes of the files that the base was read from, by path
     */
    public Rereadings of(ContentBase base, Optional<Ledger> last, Map<String, String> hashes) {
        String seal = last.map(Ledger::seal).orElse("");
        KeptResults<Rereading>.Round round = kept.round(base, hashes);
        Rereadings all = Rereadings.of(base, (name, find) -> round.take(name, seal, read ->
                Rereading.of(find.apply(read), read, last)));
        isAsWritten = round.isAsBefore();
        round.end();
        return all;
    }
}
