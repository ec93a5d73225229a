package org.fieldfold.manuscript;

import java.util.List;
import org.fieldfold.source.Span;

/**
 * A part of a manuscript that begins on a panel (or a page) of its own.
 *
 * @param tab number on the thumb tab, counted from 1; 0 for a section without one
 * @param name for the outline and the bookmark
 * @param origin where it was written, for what is to be said about its fit
 */
public record Section(String id, Kind kind, int tab, String name, List<Block> blocks, Span origin) {
    /** What a section is for: it decides the panel it may stand on. */
    public enum Kind {
        /** The panel that is seen first; exactly one panel. */
        COVER,
        /** How to scout; follows the cover. */
        SCOUTING,
        /** One pest. */
        ENTRY,
        /** Whom to ask, cautions, sources; the last panel, exactly one. */
        CONTACT
    }

    public Section {
        blocks = List.copyOf(blocks);
    }
}
