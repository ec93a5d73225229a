package org.fieldfold.typeset;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fieldfold.manuscript.Manuscript;
import org.fieldfold.manuscript.Section;
import org.fieldfold.prose.Run;

/**
 * The panels between cover and contact, planned at one size. They are the same on the copies of all offices.
 *
 * @param culprit id of a section that is certain to be over, whatever is chosen; then nothing was filled
 * @param remarks what is to be said about them
 */
record InnerPlan(List<Spread> spreads, Optional<String> culprit, Remarks remarks) {
    /** Half lines of the running title where a section goes on. */
    private static final int RUNNING = 3;
    /** Half lines of white above a block, at the most: it is not set at the head of a panel. */
    private static final int MOST_WHITE_AT_HEAD = 4;

    /** All that the plan depends on. */
    record Key(List<Section> flow, List<Frame> frames, Leading leading, Mark.Ink ink, int year,
            List<Run> foot, Optional<String> proof, boolean first, boolean last) {}

    static Key key(Manuscript manuscript, Stick model, Seats seats, boolean last) {
        boolean first = !seats.flow().isEmpty() && seats.flow().get(0).equals(manuscript.sections().get(0));
        return new Key(seats.flow(), seats.inner(), model.leading(), model.ink(), manuscript.year(),
                manuscript.foot(), manuscript.proof(), first, last);
    }

    static InnerPlan of(Manuscript manuscript, Stick model, Seats seats, boolean last, String suspect) {
        if (seats.flow().isEmpty() || seats.inner().isEmpty()) {
            return new InnerPlan(List.of(), Optional.empty(), model.remarks());
        }
        Work work = new Work(seats.flow(), seats.inner(), new Filler(manuscript, model));
        Optional<String> culprit = last ? Optional.empty() : work.culprit(suspect);
        return new InnerPlan(culprit.isPresent() ? List.of() : work.plan(), culprit, model.remarks());
    }

    /** The planning, with what was filled before. */
    private record Work(List<Section> flow, List<Frame> frames, Filler filler,
            Map<Allotment.Group, Spread> spreads) {
        Work(List<Section> flow, List<Frame> frames, Filler filler) {
            this(flow, frames, filler, new HashMap<>());
        }

        List<Spread> plan() {
            List<Spread> plan = new ArrayList<>();
            for (Allotment.Group group : Allotment.best(flow.size(), frames.size(), this::cost)) {
                plan.add(spread(group));
            }
            return plan;
        }

        /** A section that even the least of every block does not bring onto the panels that there are. */
        Optional<String> culprit(String suspect) {
            int spare = frames.size() - flow.size();
            if (spare < 0) {
                return Optional.empty();
            }
            List<Section> order = new ArrayList<>(flow);
            order.sort(Comparator.comparing(section -> !section.id().equals(suspect)));
            Frame widest = frames.stream().max(Comparator.comparingDouble(Frame::width)).orElseThrow();
            int room = filler.room(widest) - TabSetting.UNITS + MOST_WHITE_AT_HEAD;
            for (Section section : order) {
                int least = filler.set(section, filler.stick(widest.width())).blocks().stream()
                        .mapToInt(Choice::least).sum();
                // each panel more that a section needs is one less for the others
                for (; least > room; least -= room) {
                    if (--spare < 0) {
                        return Optional.of(section.id());
                    }
                }
            }
            return Optional.empty();
        }

        private long cost(Allotment.Group group) {
            boolean alone = frames.stream().anyMatch(Frame::opens);
            boolean misplaced = alone && beginsEntry(group.from()) && !frames.get(group.panel()).opens();
            return price(group) + (misplaced ? Cost.ON_A_BACK : 0);
        }

        /** Whether a section is the first of its entry: those of one entry have one number on their tabs. */
        private boolean beginsEntry(int section) {
            int tab = flow.get(section).tab();
            return tab > 0 && (section == 0 || flow.get(section - 1).tab() != tab);
        }

        private long price(Allotment.Group group) {
            if (group.panels() > 1 && group.to() == group.from() + 1) {
                // whatever is gained by another panel, going on to it costs this much
                Allotment.Group narrower =
                        new Allotment.Group(group.from(), group.to(), group.panel(), group.panels() - 1);
                long price = price(narrower);
                if (price <= Cost.DIVIDED * (group.panels() - 1)) {
                    return price;
                }
            }
            return spread(group).filling().cost() + Cost.SHARED * (group.to() - group.from() - 1);
        }

        private Spread spread(Allotment.Group group) {
            Spread known = spreads.get(group);
            if (known == null) {
                known = fill(flow.subList(group.from(), group.to()),
                        frames.subList(group.panel(), group.panel() + group.panels()));
                spreads.put(group, known);
            }
            return known;
        }

        private Spread fill(List<Section> sections, List<Frame> panels) {
            Stick stick = filler.stick(panels.stream().mapToDouble(Frame::width).min().orElseThrow());
            List<SetSection> chosen = sections.stream().map(section -> filler.set(section, stick)).toList();
            List<Integer> heads = new ArrayList<>();
            for (int i = 0; i < panels.size(); i++) {
                heads.add(TabSetting.UNITS + (i > 0 && sections.size() == 1 ? RUNNING : 0));
            }
            return filler.fill(chosen, panels, stick, heads);
        }
    }
}
