package org.fieldfold.typeset;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * A tag that will be needed once something is drawn in it. Blocks are set several times before one setting is
 * drawn; only what is drawn gets a tag, and in the order of drawing, which is the reading order.
 */
final class TagSlot {
    private final List<TagSlot> parent;
    private final UnaryOperator<Tag> make;
    private final List<Tag> made = new ArrayList<>(1);

    private TagSlot(List<TagSlot> parent, UnaryOperator<Tag> make) {
        this.parent = parent;
        this.make = make;
    }

    /** A child of the section that the pen is in. */
    static TagSlot inSection(Tag.Role role) {
        return new TagSlot(List.of(), section -> section.add(role));
    }

    static TagSlot figure(String alternative) {
        return new TagSlot(List.of(), section -> section.addFigure(alternative));
    }

    TagSlot in(Tag.Role role) {
        return new TagSlot(List.of(this), tag -> tag.add(role));
    }

    TagSlot inLatin() {
        return new TagSlot(List.of(this), tag -> tag.addSpan("la"));
    }

    TagSlot inLink(String address) {
        return new TagSlot(List.of(this), tag -> tag.addLink(address));
    }

    Tag get(Tag section) {
        if (made.isEmpty()) {
            made.add(make.apply(parent.isEmpty() ? section : parent.get(0).get(section)));
        }
        return made.get(0);
    }
}
