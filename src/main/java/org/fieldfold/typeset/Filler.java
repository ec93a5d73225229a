package org.fieldfold.typeset;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.fieldfold.manuscript.Manuscript;
import org.fieldfold.manuscript.Section;

/** Sets sections of one guide at one size, and fills panels with them. */
final class Filler {
    /** Half lines of white above a section that begins below another. */
    private static final int BETWEEN = 4;

    private record Key(Section section, double measure) {}

    private final Manuscript manuscript;
    private final Stick model;
    private final Map<Key, SetSection> set = new HashMap<>();

    Filler(Manuscript manuscript, Stick model) {
        this.manuscript = manuscript;
        this.model = model;
    }

    SetSection set(Section section, Stick stick) {
        Key key = new Key(section, stick.measure());
        SetSection known = set.get(key);
        if (known == null) {
            known = SetSection.of(section, stick, outline(section));
            set.put(key, known);
        }
        return known;
    }

    Outline outline(Section section) {
        return Outline.of(section, section.equals(manuscript.sections().get(0)));
    }

    Stick stick(double measure) {
        return model.narrower(model.measure() - measure);
    }

    /** Half lines of a panel above its foot. */
    int room(Frame frame) {
        Stick stick = stick(frame.width());
        int foot = new FootSetting(manuscript, frame.reading(), stick,
                manuscript.sections().get(0).origin()).units();
        return Math.max(0, stick.leading().capacity(frame.height()) - foot);
    }

    /** @param heads half lines that are kept at the head of each panel */
    Spread fill(List<SetSection> sections, List<Frame> frames, Stick stick, List<Integer> heads) {
        List<Choice> blocks = new ArrayList<>();
        for (SetSection section : sections) {
            for (int i = 0; i < section.blocks().size(); i++) {
                Choice block = section.blocks().get(i);
                blocks.add(i == 0 && !blocks.isEmpty() ? block.leading(BETWEEN) : block);
            }
        }
        List<Integer> capacities = new ArrayList<>();
        for (int i = 0; i < frames.size(); i++) {
            capacities.add(Math.max(0, room(frames.get(i)) - heads.get(i)));
        }
        return new Spread(sections, frames, stick, heads, capacities,
                Fill.best(blocks, capacities.stream().mapToInt(Integer::intValue).toArray()));
    }
}
