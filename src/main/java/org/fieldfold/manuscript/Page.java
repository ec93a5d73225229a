package org.fieldfold.manuscript;

import java.util.List;
import org.fieldfold.source.Span;

/**
 * A page of the handbook: it has an address of its own, and links lead to it as {@code #id}.
 *
 * @param id of the entry that it shows, or, with a colon in it, of a page that the handbook makes itself
 * @param up the page one goes back to, as an id; empty for the first page
 * @param origin where it was written
 */
public record Page(String id, Kind kind, String name, String up, List<Part> parts, Span origin) {
    /** What a page is for. */
    public enum Kind {
        /** The first page: title, year, contents. */
        START,
        /** From the crop to its entries. */
        CROPS,
        /** From what is seen to the entries that do it. */
        LOOK,
        /** All count cards. */
        COUNT,
        /** When to look, near one station. */
        WEEKS,
        /** Whom to ask. */
        OFFICE,
        PEST,
        ENEMY,
        PRACTICE,
        CHAPTER,
        /** Lists and tables. */
        REFERENCE
    }

    /**
     * A stretch of a page that links lead to as {@code #id/key}.
     *
     * @param name its heading; empty for the first part, which stands below the page's title
     */
    public record Part(String key, String name, List<Block> blocks) {
        public Part {
            blocks = List.copyOf(blocks);
        }
    }

    /**
     * What others know of a page without reading it.
     *
     * @param parts the keys of those that links may lead to
     */
    public record Head(String id, Kind kind, String name, String up, List<String> parts) {
        public Head {
            parts = List.copyOf(parts);
        }
    }

    public Page {
        parts = List.copyOf(parts);
    }

    public Head head() {
        return new Head(id, kind, name, up, parts.stream().filter(part -> !part.name().isEmpty()).map(Part::key)
                .toList());
    }
}
