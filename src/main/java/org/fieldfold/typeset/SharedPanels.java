package org.fieldfold.typeset;

import java.util.List;

/**
 * Panels that are the same on the copies of a guide for all offices: on every copy the very same objects, so
 * that what is made of them once may be used again.
 *
 * @param sections their sections in the logical tree, in reading order
 */
public record SharedPanels(List<SetPanel> panels, List<Tag> sections) {
    /** Of a guide that has no other copies. */
    public static final SharedPanels NONE = new SharedPanels(List.of(), List.of());

    public SharedPanels {
        panels = List.copyOf(panels);
        sections = List.copyOf(sections);
    }
}
