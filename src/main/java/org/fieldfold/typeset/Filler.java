package org.fieldfold.typeset;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.fieldfold.manuscript.Manuscript;
import org.fieldfold.manuscript.Section;

/** Sets sections of one guide at one size, and fills panels with them. */
final class Filler {
    /** Half lines of white above a section that begins below another. */
    private static final int BETWEEN = 4;

    private final Manuscript manuscript;
    private final Stick model;
    private final Map<Section, Map<Double, Set>> set = new IdentityHashMap<>();
    private final Map<Frame, Integer> rooms = new HashMap<>();

    Filler(Manuscript manuscript, Stick model) {
        this.manuscript = manuscript;
        this.model = model;
    }

    /**
     * A section, set.
     *
     * @param silent whether nothing was to be said meanwhile
     */
    record Set(SetSection section, boolean silent) {}

    Set set(Section section, double measure) {
        return set.computeIfAbsent(section, unseen -> new HashMap<>()).computeIfAbsent(measure, unset -> {
            int said = model.remarks().said();
            SetSection fresh = SetSection.of(section, stick(measure).numbering(Folio.NONE), outline(section));
            return new Set(fresh, model.remarks().said() == said);
        });
    }

    Outline outline(Section section) {
        return Outline.of(section, section.equals(manuscript.sections().get(0)));
    }

    Stick stick(double measure) {
        return model.narrower(model.measure() - measure);
    }

    /** Half lines of a panel above its foot. */
    int room(Frame frame) {
        return rooms.computeIfAbsent(frame, unseen -> {
            Stick stick = stick(frame.width());
            int foot = new FootSetting(manuscript, frame.reading(), stick,
                    manuscript.sections().get(0).origin()).units();
            return Math.max(0, stick.leading().capacity(frame.height()) - foot);
        });
    }

    /** @param heads half lines that are kept at the head of each panel */
    List<Integer> capacities(List<Frame> frames, List<Integer> heads) {
        List<Integer> capacities = new ArrayList<>();
        for (int i = 0; i < frames.size(); i++) {
            capacities.add(Math.max(0, room(frames.get(i)) - heads.get(i)));
        }
        return capacities;
    }

    static Filling fill(List<SetSection> sections, List<Integer> capacities) {
        List<Choice> blocks = new ArrayList<>();
        for (SetSection section : sections) {
            for (int i = 0; i < section.blocks().size(); i++) {
                Choice block = section.blocks().get(i);
                blocks.add(i == 0 && !blocks.isEmpty() ? block.leading(BETWEEN) : block);
            }
        }
        return Fill.best(blocks, capacities.stream().mapToInt(Integer::intValue).toArray());
    }
}
