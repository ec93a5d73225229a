package org.fieldfold.pdf;

import java.util.Optional;

/** Where drawings lie that an earlier press has turned into paths, each found by its figure as it is now. */
public interface ArtStore {
    /** One that knows nothing and keeps nothing. */
    ArtStore NONE = new ArtStore() {
        @Override
        public Optional<byte[]> known(String figure) {
            return Optional.empty();
        }

        @Override
        public void keep(String figure, byte[] drawn) {
            // it is drawn again
        }
    };

    /** What was kept of a figure of this id and these bytes. */
    Optional<byte[]> known(String figure);

    void keep(String figure, byte[] drawn);
}
