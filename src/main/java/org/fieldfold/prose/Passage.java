package org.fieldfold.prose;

import java.util.List;

/** One block of prose. */
public sealed interface Passage {
    /** A paragraph. */
    record Paragraph(List<Run> runs) implements Passage {
        public Paragraph {
            runs = List.copyOf(runs);
        }
    }

    /** A list; {@code numbered} where the order matters. */
    record Bullets(boolean numbered, List<List<Run>> items) implements Passage {
        public Bullets {
            items = items.stream().map(List::copyOf).toList();
        }
    }

    /** A heading inside prose; level 2 is the highest, as the title of the page is level 1. */
    record Heading(int level, List<Run> runs) implements Passage {
        public Heading {
            runs = List.copyOf(runs);
        }
    }
}
