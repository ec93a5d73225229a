package org.fieldfold.edition;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.trace.KeptResults;

/**
 * The facts of a base from one state of it to the next, and what changed in them since an edition: a record
 * from a file that stayed is taken as it was.
 */
public final class KeptFacts {
    private final KeptResults<Optional<Snapshot.Known>> kept = new KeptResults<>();
    private final Map<String, Same> same = new HashMap<>();

    /** A record of an edition and one of the base whose facts were found to be the same. */
    private record Same(Snapshot.Known before, Snapshot.Known after) {
        boolean are(Snapshot.Known one, Snapshot.Known other) {
            return before == one && after == other;
        }
    }

    /**
     * The same as {@link Snapshot#of}, in less time.
     *
     * @param hashes of the files that the base was read from, by path
     */
    public synchronized Snapshot of(ContentBase base, Map<String, String> hashes) {
        KeptResults<Optional<Snapshot.Known>>.Round round = kept.round(base, hashes);
        Snapshot facts = Snapshot.of(base, (kind, id, find) ->
                round.take(kind + "/" + id, "", read -> Snapshot.known(find.apply(read))));
        round.end();
        return facts;
    }

    /** The same as {@link Comparison#of}, in less time. */
    public synchronized Comparison between(String from, Snapshot before, String to, Snapshot after) {
        return Comparison.of(from, before, to, after, (name, was, is) -> {
            if (same.containsKey(name) && same.get(name).are(was, is)) {
                return true;
            }
            boolean equal = was.facts().equals(is.facts());
            if (equal) {
                same.put(name, new Same(was, is));
            } else {
                same.remove(name);
            }
            return equal;
        });
    }
}
