package org.fieldfold;

import java.util.Optional;
import java.util.Set;
import org.fieldfold.kept.Kept;
import org.fieldfold.kept.Key;
import org.fieldfold.pdf.ArtStore;

/** Drawings as an earlier build turned them into paths; each stays as long as the base has it. */
final class KeptArt implements ArtStore {
    private final Kept kept;

    /** @param kept in which a figure's id stands for its bytes */
    KeptArt(Kept kept, Set<String> figures) {
        this.kept = kept;
        figures.forEach(figure -> key(figure).ifPresent(kept::use));
    }

    private Optional<Key> key(String figure) {
        return kept.key("artwork", figure);
    }

    @Override
    public Optional<byte[]> known(String figure) {
        return kept.left(key(figure));
    }

    @Override
    public void keep(String figure, byte[] drawn) {
        kept.leave(key(figure), drawn);
    }
}
