package org.fieldfold.typeset;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
    Attempt inner(Seats seats, boolean last, String suspect, Map<InnerPlan.Key, InnerPlan> known) {
        InnerPlan.Key key = InnerPlan.key(manuscript, model, seats, last);
        InnerPlan inner = known.get(key);
        if (inner == null) {
            inner = InnerPlan.of(manuscript, model.remarking(new Remarks()), seats, last, suspect);
            known.put(key, inner);
        }
        if (inner.culprit().isPresent()) {
            return new Attempt(List.of(), inner.culprit());
        }
        inner.remarks().findings().forEach(model.remarks()::add);
        return new Attempt(inner.spreads(), over(inner.spreads()));
    }

    /** The cover and the last panel, which differ between offices. */
    Attempt own(Seats seats) {
        List<Spread> plan = new ArrayList<>();
        seats.cover().ifPresent(section -> plan.add(single(section, seats.first().orElseThrow())));
        seats.contact().ifPresent(section -> plan.add(single(section, seats.last().orElseThrow())));
        return new Attempt(plan, over(plan));
    }

    private static Optional<String> over(List<Spread> plan) {
        return plan.stream().filter(spread -> spread.filling().over() > 0)
                .map(spread -> spread.sections().get(0).section().id()).findFirst()
                .or(() -> misplaced(plan));
    }

    /**
     * Panels at one size.
     *
     * @param over id of a section that does not fit, or not in its place
     */
    record Attempt(List<Spread> spreads, Optional<String> over) {}

    /** An entry that begins on the back of a sheet, where each is to be taken along alone. */
    private static Optional<String> misplaced(List<Spread> plan) {
        if (plan.stream().flatMap(spread -> spread.frames().stream()).noneMatch(Frame::opens)) {
            return Optional.empty();
        }
        Set<Integer> tabs = new HashSet<>();
        return plan.stream().filter(spread -> spread.sections().get(0).section().tab() > 0)
                .filter(spread -> tabs.add(spread.sections().get(0).section().tab()))
                .filter(spread -> !spread.frames().get(0).opens())
                .map(spread -> spread.sections().get(0).section().id()).findFirst();
    }

    private Spread single(Section section, Frame frame) {
        Stick stick = filler.stick(frame.width());
        boolean cover = section.kind() == Section.Kind.COVER;
        SetSection chosen = cover ? CoverSetting.set(section, manuscript, stick, filler.outline(section))
                : filler.set(section, stick);
        return filler.fill(List.of(chosen), List.of(frame), stick, List.of(cover ? 0 : TabSetting.UNITS));
    }
}
