package org.fieldfold.fold;

import java.util.List;

/** What the folder does in one movement, and what the reader undoes in one. */
public sealed interface FoldStep {
    /**
     * Folds made one after the other that a reader opens in one pull: the doors of a gate, a whole accordion.
     */
    record Folds(List<Fold> folds) implements FoldStep {
        public Folds {
            folds = List.copyOf(folds);
            if (folds.isEmpty()) {
                throw new IllegalArgumentException("a step needs at least one fold");
            }
        }
    }

    /**
     * All folds that are left, closed at once, as when the ends of a slit sheet are pushed together. The
     * order of the layers is found, not given.
     */
    record Gather(List<Bend> bends) implements FoldStep {
        public Gather {
            bends = List.copyOf(bends);
            if (bends.isEmpty()) {
                throw new IllegalArgumentException("gathering needs at least one line");
            }
        }
    }

    /**
     * Which way a line bends, seen from the face that lies up at the start.
     *
     * @param band the row (for an upright line) or column (for a level one) that is meant, from 1; 0 for all
     */
    record Bend(GridLine line, int band, boolean valley) {
        public Bend {
            if (band < 0) {
                throw new IllegalArgumentException("rows and columns are counted from 1: " + band);
            }
        }
    }
}
