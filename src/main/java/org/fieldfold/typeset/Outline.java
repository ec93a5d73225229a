package org.fieldfold.typeset;

import org.fieldfold.manuscript.Block;
import org.fieldfold.manuscript.Section;

/** The levels of headings in one section, so that none is skipped. */
record Outline(Tag.Role title, Tag.Role heading) {
    /** @param first whether the section is the first of its guide, whose title is that of the whole */
    static Outline of(Section section, boolean first) {
        Tag.Role title = first ? Tag.Role.H1 : Tag.Role.H2;
        boolean titled = section.blocks().stream().anyMatch(Block.Title.class::isInstance);
        Tag.Role below = first ? Tag.Role.H2 : Tag.Role.H3;
        return new Outline(title, titled ? below : title);
    }
}
