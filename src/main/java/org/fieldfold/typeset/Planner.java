package org.fieldfold.typeset;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.fieldfold.manuscript.Manuscript;
import org.fieldfold.manuscript.Section;

/** Plans all panels of a guide at one type size. */
final class Planner {
    private final Manuscript manuscript;
    private final Stick model;
    private final Filler filler;

    /** @param model a stick of the size to be tried; its measure is that of no panel */
    Planner(Manuscript manuscript, Stick model) {
        this.manuscript = manuscript;
        this.model = model;
        this.filler = new Filler(manuscript, model);
    }

    /**
     * The panels between cover and contact, a spread for each group of sections, in the order of the
     * manuscript; empty when it is certain before any filling that something would be over.
     *
     * @param last whether there is no smaller size, so that what is over is filled all the same
     * @param suspect id of the section that is the likeliest to be over
     * @param known inner panels planned before, for another office
     */
    Attempt inner(Seats seats, boolean last, String suspect, Map<InnerPlan.Key, InnerPlan> known,
            Trials trials) {
        InnerPlan.Key key = InnerPlan.key(manuscript, model, seats, last);
        InnerPlan inner = known.get(key);
        if (inner == null) {
            inner = InnerPlan.of(manuscript, model.remarking(new Remarks()), seats, last, suspect, trials);
            known.put(key, inner);
        }
        if (inner.culprit().isEmpty()) {
            inner.remarks().findings().forEach(model.remarks()::add);
        }
        return new Attempt(inner.spreads(), inner.over());
    }

    /** The cover and the last panel, which differ between offices. */
    Attempt own(Seats seats) {
        List<Spread> plan = new ArrayList<>();
        seats.cover().ifPresent(section -> plan.add(single(section, seats.first().orElseThrow())));
        seats.contact().ifPresent(section -> plan.add(single(section, seats.last().orElseThrow())));
        return new Attempt(() -> plan, over(plan.stream().map(spread -> new Taken(spread.sections().get(0).section(),
                spread.frames(), spread.filling().over() > 0)).toList()));
    }

    /**
     * Panels that were taken together.
     *
     * @param first of the sections on them
     * @param over whether something does not fit
     */
    record Taken(Section first, List<Frame> frames, boolean over) {}

    /** Id of a section that does not fit, or not in its place. */
    static Optional<String> over(List<Taken> plan) {
        return plan.stream().filter(Taken::over).map(taken -> taken.first().id()).findFirst()
                .or(() -> misplaced(plan));
    }

    /**
     * Panels at one size.
     *
     * @param spreads set when they are asked for
     * @param over id of a section that does not fit, or not in its place
     */
    record Attempt(Supplier<List<Spread>> spreads, Optional<String> over) {}

    /** An entry that begins on the back of a sheet, where each is to be taken along alone. */
    private static Optional<String> misplaced(List<Taken> plan) {
        if (plan.stream().flatMap(taken -> taken.frames().stream()).noneMatch(Frame::opens)) {
            return Optional.empty();
        }
        Set<Integer> tabs = new HashSet<>();
        return plan.stream().filter(taken -> taken.first().tab() > 0)
                .filter(taken -> tabs.add(taken.first().tab()))
                .filter(taken -> !taken.frames().get(0).opens())
                .map(taken -> taken.first().id()).findFirst();
    }

    private Spread single(Section section, Frame frame) {
        Stick stick = filler.stick(frame.width());
        boolean cover = section.kind() == Section.Kind.COVER;
        SetSection chosen = cover ? CoverSetting.set(section, manuscript, stick, filler.outline(section))
                : filler.set(section, frame.width()).section();
        List<Integer> heads = List.of(cover ? 0 : TabSetting.UNITS);
        List<Integer> capacities = filler.capacities(List.of(frame), heads);
        return new Spread(List.of(chosen), List.of(frame), stick, heads, capacities,
                Filler.fill(List.of(chosen), capacities));
    }
}
