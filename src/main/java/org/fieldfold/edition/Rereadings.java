package org.fieldfold.edition;

import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.function.Function;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Reviewed;

/** What there is to re-read in a base, found out once for everything that tells of it. */
public final class Rereadings {
    private final Map<Reviewed, Rereading> byEntry = new IdentityHashMap<>();

    private Rereadings() {
    }

    /** Finds out about one entry. */
    interface Asking {
        /** @param find the entry in a base */
        Rereading of(String name, Function<ContentBase, Reviewed> find);
    }

    /** @param last the last edition that was issued before this one */
    public static Rereadings of(ContentBase base, Optional<Ledger> last) {
        return of(base, (name, find) -> Rereading.of(find.apply(base), base, last));
    }

    /** @param asking is asked for every entry */
    static Rereadings of(ContentBase base, Asking asking) {
        Rereadings all = new Rereadings();
        all.add("pests", base, ContentBase::pests, asking);
        all.add("natural-enemies", base, ContentBase::enemies, asking);
        all.add("practices", base, ContentBase::practices, asking);
        return all;
    }

    private void add(String kind, ContentBase base,
            Function<ContentBase, SortedMap<String, ? extends Placed<? extends Reviewed>>> part, Asking asking) {
        part.apply(base).forEach((id, placed) -> byEntry.put(placed.value(),
                asking.of(kind + "/" + id, from -> part.apply(from).get(id).value())));
    }

    /** As in {@link Due#isDue}. */
    public boolean isDue(Reviewed entry) {
        return of(entry).isDue();
    }

    Rereading of(Reviewed entry) {
        return byEntry.get(entry);
    }

    /** How many are due. */
    public int due() {
        return (int) byEntry.values().stream().filter(Rereading::isDue).count();
    }

    int byHand() {
        return (int) byEntry.values().stream().filter(Rereading::isByHand).count();
    }
}
