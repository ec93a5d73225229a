package org.fieldfold.typeset;

import java.util.List;

/**
 * Sections that stand together, filled into their panels.
 *
 * @param frames of the panels that they may use, in reading order
 * @param heads half lines at the head of each panel that are kept for the tab and the running title
 * @param capacities half lines of each panel between its head and its foot
 */
record Spread(List<SetSection> sections, List<Frame> frames, Stick stick, List<Integer> heads,
        List<Integer> capacities, Filling filling) {
    Spread {
        sections = List.copyOf(sections);
        frames = List.copyOf(frames);
        heads = List.copyOf(heads);
        capacities = List.copyOf(capacities);
    }

    /** The section that a block of the filling belongs to. */
    SetSection sectionOf(int block) {
        int at = block;
        for (SetSection section : sections) {
            if (at < section.blocks().size()) {
                return section;
            }
            at -= section.blocks().size();
        }
        throw new IllegalArgumentException("no block " + block);
    }

    /** Position of a block in its own section. */
    int inSection(int block) {
        int at = block;
        for (SetSection section : sections) {
            if (at < section.blocks().size()) {
                return at;
            }
            at -= section.blocks().size();
        }
        throw new IllegalArgumentException("no block " + block);
    }

    Choice block(int block) {
        return sectionOf(block).blocks().get(inSection(block));
    }
}
