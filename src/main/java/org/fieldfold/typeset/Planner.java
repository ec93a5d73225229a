package org.fieldfold.typeset;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fieldfold.manuscript.Manuscript;
import org.fieldfold.manuscript.Section;

/** Fills all panels of a guide at one type size. */
final class Planner {
    /** Half lines of the running title where a section goes on. */
    private static final int RUNNING = 3;
    /** Half lines of white above a block, at the most: it is not set at the head of a panel. */
    private static final int MOST_WHITE_AT_HEAD = 4;
    /** Half lines of white above a section that begins below another. */
    private static final int BETWEEN = 4;

    private final Manuscript manuscript;
    private final Stick model;
    private final List<Section> flow = new ArrayList<>();
    private final List<Frame> inner = new ArrayList<>();
    private final Map<String, SetSection> set = new HashMap<>();
    private final Map<Allotment.Group, Spread> spreads = new HashMap<>();

    /** @param model a stick of the size to be tried; its measure is that of no panel */
    Planner(Manuscript manuscript, Stick model) {
        this.manuscript = manuscript;
        this.model = model;
    }

    /** One spread for each group of sections, in the order of the manuscript. */
    List<Spread> plan(List<Frame> frames) {
        Seats seats = Seats.of(manuscript.sections(), frames);
        flow.addAll(seats.flow());
        inner.addAll(seats.inner());
        List<Spread> plan = new ArrayList<>();
        seats.cover().ifPresent(section -> plan.add(single(section, seats.first().orElseThrow())));
        if (!flow.isEmpty() && !inner.isEmpty()) {
            for (Allotment.Group group : Allotment.best(flow.size(), inner.size(), this::price)) {
                plan.add(spread(group));
            }
        }
        seats.contact().ifPresent(section -> plan.add(single(section, seats.last().orElseThrow())));
        return plan;
    }

    /**
     * Whether a section is certain to be over whatever is chosen, so that this size need not be tried; the name of
     * the culprit, which is the first to be asked at the next size.
     *
     * @param suspect id of the section to ask first, or empty
     */
    Optional<String> hopeless(List<Frame> frames, String suspect) {
        Seats seats = Seats.of(manuscript.sections(), frames);
        int spare = seats.inner().size() - seats.flow().size();
        if (spare < 0) {
            return Optional.empty();
        }
        List<Section> order = new ArrayList<>(seats.flow());
        order.sort(Comparator.comparing(section -> !section.id().equals(suspect)));
        Frame widest = seats.inner().stream().max(Comparator.comparingDouble(Frame::width)).orElse(frames.get(0));
        for (Section section : order) {
            Stick stick = stick(widest.width());
            int room = stick.leading().capacity(widest.height()) - TabSetting.UNITS
                    - new FootSetting(manuscript, widest.reading(), stick, section.origin()).units();
            int least = set(section, stick).blocks().stream().mapToInt(Choice::least).sum()
                    - MOST_WHITE_AT_HEAD;
            // each panel more that a section needs is one less for the others
            while (least > room) {
                least -= room;
                if (--spare < 0) {
                    return Optional.of(section.id());
                }
            }
        }
        return Optional.empty();
    }

    private long price(Allotment.Group group) {
        if (group.panels() > 1 && group.to() == group.from() + 1) {
            // whatever is gained by another panel, going on to it costs this much
            Allotment.Group narrower =
                    new Allotment.Group(group.from(), group.to(), group.panel(), group.panels() - 1);
            if (price(narrower) <= Cost.DIVIDED * (group.panels() - 1)) {
                return price(narrower);
            }
        }
        return spread(group).filling().cost() + Cost.SHARED * (group.to() - group.from() - 1);
    }

    private Spread spread(Allotment.Group group) {
        Spread known = spreads.get(group);
        if (known == null) {
            known = spread(flow.subList(group.from(), group.to()),
                    inner.subList(group.panel(), group.panel() + group.panels()));
            spreads.put(group, known);
        }
        return known;
    }

    private Spread spread(List<Section> sections, List<Frame> frames) {
        Stick stick = stick(frames.stream().mapToDouble(Frame::width).min().orElseThrow());
        List<SetSection> chosen = sections.stream().map(section -> set(section, stick)).toList();
        List<Integer> heads = new ArrayList<>();
        for (int i = 0; i < frames.size(); i++) {
            heads.add(TabSetting.UNITS + (i > 0 && sections.size() == 1 ? RUNNING : 0));
        }
        return fill(chosen, frames, stick, heads);
    }

    private Spread single(Section section, Frame frame) {
        Stick stick = stick(frame.width());
        boolean cover = section.kind() == Section.Kind.COVER;
        SetSection chosen = cover ? CoverSetting.set(section, manuscript, stick, outline(section))
                : set(section, stick);
        return fill(List.of(chosen), List.of(frame), stick, List.of(cover ? 0 : TabSetting.UNITS));
    }

    private Spread fill(List<SetSection> sections, List<Frame> frames, Stick stick, List<Integer> heads) {
        List<Choice> blocks = new ArrayList<>();
        for (SetSection section : sections) {
            for (int i = 0; i < section.blocks().size(); i++) {
                Choice block = section.blocks().get(i);
                blocks.add(i == 0 && !blocks.isEmpty() ? block.leading(BETWEEN) : block);
            }
        }
        List<Integer> capacities = new ArrayList<>();
        for (int i = 0; i < frames.size(); i++) {
            Frame frame = frames.get(i);
            int foot = new FootSetting(manuscript, frame.reading(), stick(frame.width()),
                    sections.get(0).section().origin()).units();
            capacities.add(Math.max(0, stick.leading().capacity(frame.height()) - foot - heads.get(i)));
        }
        return new Spread(sections, frames, stick, heads, capacities,
                Fill.best(blocks, capacities.stream().mapToInt(Integer::intValue).toArray()));
    }

    private SetSection set(Section section, Stick stick) {
        String key = manuscript.sections().indexOf(section) + " " + stick.measure();
        SetSection known = set.get(key);
        if (known == null) {
            known = SetSection.of(section, stick, outline(section));
            set.put(key, known);
        }
        return known;
    }

    private Outline outline(Section section) {
        return Outline.of(section, section.equals(manuscript.sections().get(0)));
    }

    private Stick stick(double measure) {
        return model.narrower(model.measure() - measure);
    }
}
