package org.fieldfold.typeset;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.fieldfold.manuscript.Manuscript;
import org.fieldfold.manuscript.Section;
import org.fieldfold.prose.Run;

/**
 * The panels between cover and contact, planned at one size. They are the same on the copies of all offices.
 *
 * @param culprit id of a section that is certain to be over, whatever is chosen; then nothing was filled
 * @param over id of a section that does not fit, or not in its place
 * @param spreads what the plan comes to; its sections are set only when that is asked for
 * @param remarks what is to be said about them
 */
record InnerPlan(Optional<String> culprit, Optional<String> over, Supplier<List<Spread>> spreads,
        Remarks remarks) {
    /** All that the plan depends on. */
    record Key(List<Section> flow, List<Frame> frames, Leading leading, Mark.Ink ink, int year,
            List<Run> foot, Optional<String> proof, boolean first, boolean last) {}

    static Key key(Manuscript manuscript, Stick model, Seats seats, boolean last) {
        boolean first = !seats.flow().isEmpty() && seats.flow().get(0).equals(manuscript.sections().get(0));
        return new Key(seats.flow(), seats.inner(), model.leading(), model.ink(), manuscript.year(),
                manuscript.foot(), manuscript.proof(), first, last);
    }

    static InnerPlan of(Manuscript manuscript, Stick model, Seats seats, boolean last, String suspect,
            Trials trials) {
        if (seats.flow().isEmpty() || seats.inner().isEmpty()) {
            return new InnerPlan(Optional.empty(), Optional.empty(), List::of, model.remarks());
        }
        Planning planning = new Planning(seats.flow(), seats.inner(), manuscript, model, trials);
        Optional<String> culprit = last ? Optional.empty() : planning.culprit(suspect);
        if (culprit.isPresent()) {
            return new InnerPlan(culprit, culprit, List::of, model.remarks());
        }
        List<Allotment.Group> groups = planning.groups();
        return new InnerPlan(culprit, planning.over(groups), () -> planning.spreads(groups), model.remarks());
    }
}
