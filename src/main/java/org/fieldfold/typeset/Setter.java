package org.fieldfold.typeset;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import org.fieldfold.fold.Gathering;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.PanelSlot;
import org.fieldfold.manuscript.Manuscript;
import org.fieldfold.manuscript.Phrases;
import org.fieldfold.source.Span;

/**
 * Sets a manuscript on panels: the largest type at which everything fits, the fullest forms that it leaves
 * room for. It remembers what it has set, so that the copies of a guide for many offices cost little more
 * than their own panels; several threads may use it.
 */
public final class Setter {
    private static final double STEP = 0.25;
    private static final double WIDE = 2;
    /** The first copies, whose own panels are remembered: most of their words are on all others too. */
    private static final int LEARNT_FROM = 4;
    /** In two languages, on two papers, for both edges. */
    private static final int LEARNT_FROM_FIRST = 16;

    private final TypeMetrics metrics;
    private final FigureShapes shapes;
    private final WordCase words;
    private final String folio;
    private final Trials trials;
    private final Map<InnerPlan.Key, InnerPlan> planned = new ConcurrentHashMap<>();
    private final Map<Stem.Key, Stem> stems = new ConcurrentHashMap<>();
    private final AtomicInteger copies = new AtomicInteger();

    public Setter(TypeMetrics metrics, FigureShapes shapes) {
        this(metrics, shapes, Learnt.nothing(metrics));
    }

    /** @param learnt from guides that may have something in common with those that are to be set */
    public Setter(TypeMetrics metrics, FigureShapes shapes, Learnt learnt) {
        this(metrics, shapes, Folio.NUMBER, learnt);
    }

    /**
     * Numbers panels in its own way.
     *
     * @param folio the number at the foot of a panel, as in <code>page {0} of {1}</code>
     */
    public Setter(TypeMetrics metrics, FigureShapes shapes, String folio, Learnt learnt) {
        this.trials = learnt.trials();
        this.metrics = metrics;
        this.shapes = shapes;
        this.words = learnt.words();
        this.folio = folio;
    }

    /**
     * Sets a manuscript on the panels of a fold scheme. What does not fit is a finding with the rule
     * {@code does-not-fit}; it is left out, and everything that is drawn stays inside the live areas.
     *
     * @param panelsInReadingOrder at least one
     */
    public SetGuide set(Manuscript manuscript, List<PanelSlot> panelsInReadingOrder) {
        return setOn(manuscript, panelsInReadingOrder.stream().map(Frame::of).toList());
    }

    /**
     * Sets a manuscript on as few sheets as hold it at its smallest size, and there in the largest at which
     * they still do. Every section begins on a panel of its own.
     *
     * @param most sheets that may be taken; what they do not hold is a finding
     */
    public GatheredGuide setOnFewest(Manuscript manuscript, Imposition sheet, int most) {
        int perSheet = sheet.slots().size();
        int sheets = Math.min(most, (manuscript.sections().size() + perSheet - 1) / perSheet);
        Gathering gathering = new Gathering(sheet, sheets);
        while (gathering.sheets() < most && !holds(manuscript, gathering)) {
            gathering = new Gathering(sheet, gathering.sheets() + 1);
        }
        return new GatheredGuide(setOn(manuscript, Frame.of(gathering)), gathering);
    }

    /** Whether all fits in the smallest type, every entry beginning a sheet. */
    private boolean holds(Manuscript manuscript, Gathering gathering) {
        List<Frame> frames = Frame.of(gathering);
        Seats seats = Seats.of(manuscript.sections(), frames);
        Planner planner = new Planner(manuscript, stick(manuscript, frames, manuscript.type().smallest()));
        return planner.inner(seats, false, "", planned, trials).over().isEmpty()
                && planner.own(seats).over().isEmpty();
    }

    /** The sheet that is printed before all others; see {@link PrintMeFirst#set}. */
    public SetGuide first(Manuscript manuscript, Phrases phrases, Imposition sheet, String office, boolean own,
            Span origin) {
        WordCase known = copies.getAndIncrement() < LEARNT_FROM_FIRST ? words : words.apart();
        return PrintMeFirst.set(manuscript, phrases, sheet, office, own, origin, metrics, shapes, known);
    }

    SetGuide setOn(Manuscript written, List<Frame> frames) {
        if (frames.isEmpty()) {
            throw new IllegalArgumentException("no panels to set " + written.id() + " on");
        }
        Seats seats = Seats.of(written.sections(), frames);
        WordCase known = copies.getAndIncrement() < LEARNT_FROM ? words : words.apart();
        double size = written.type().largest();
        while (true) {
            Stem stem = stem(written.in(new Manuscript.TypeRange(written.type().smallest(), size)), frames);
            Stick model = stick(written, frames, stem.size()).knowing(known);
            Planner.Attempt own = new Planner(written, model).own(seats);
            if (own.over().isEmpty() || stem.size() <= written.type().smallest()) {
                return stem.with(written, seats, model, own.spreads().get());
            }
            size = Math.max(written.type().smallest(), stem.size() - STEP);
        }
    }

    /** The panels between cover and contact, in the largest size at which they fit. */
    private Stem stem(Manuscript written, List<Frame> frames) {
        Stem.Key key = Stem.Key.of(written, Seats.of(written.sections(), frames), frames);
        Stem known = stems.get(key);
        if (known == null) {
            known = grow(written, frames);
            Stem earlier = stems.putIfAbsent(key, known);
            known = earlier == null ? known : earlier;
        }
        return known;
    }

    private Stem grow(Manuscript written, List<Frame> frames) {
        double smallest = written.type().smallest();
        SpareTables tables = new SpareTables(written);
        Trials named = tables.naming(trials);
        Manuscript manuscript = tables.kept(trial -> new Planner(trial, stick(trial, frames, smallest))
                .inner(Seats.of(trial.sections(), frames), false, "", planned, named).over());
        Seats seats = Seats.of(manuscript.sections(), frames);
        double size = start(manuscript, frames, seats, named);
        String suspect = "";
        while (true) {
            Stick model = stick(manuscript, frames, size);
            boolean last = size <= smallest;
            Planner.Attempt attempt = new Planner(manuscript, model).inner(seats, last, suspect, planned, named);
            if (last || attempt.over().isEmpty()) {
                return Stem.draw(manuscript, seats, model, attempt.spreads().get());
            }
            suspect = attempt.over().orElse(suspect);
            size = Math.max(smallest, size - STEP);
        }
    }

    /** Where to begin to look for the largest size that fits; over a wide range by whole points. */
    private double start(Manuscript manuscript, List<Frame> frames, Seats seats, Trials named) {
        double smallest = manuscript.type().smallest();
        double largest = Math.max(smallest, manuscript.type().largest());
        if (largest - smallest <= WIDE) {
            return largest;
        }
        double size = largest;
        String suspect = "";
        while (size > smallest) {
            Planner.Attempt attempt = new Planner(manuscript, stick(manuscript, frames, size)).inner(seats,
                    false, suspect, planned, named);
            if (attempt.over().isEmpty()) {
                break;
            }
            suspect = attempt.over().orElse(suspect);
            size = Math.max(smallest, size - 1);
        }
        return Math.min(largest, size + 1 - STEP);
    }

    private Stick stick(Manuscript manuscript, List<Frame> frames, double size) {
        double height = frames.stream().mapToDouble(Frame::height).min().orElseThrow();
        double width = frames.stream().mapToDouble(Frame::width).min().orElseThrow();
        Leading leading = leading(height, size, manuscript.type().smallest());
        return new Stick(metrics, shapes, words, leading, width, new Mark.Ink(manuscript.ink()),
                new Folio(folio, frames.size()),
                Abbreviations.in(manuscript.language()), new Remarks());
    }

    Leading leading(double liveHeight, double size, double smallest) {
        return Leading.of(size, smallest, liveHeight, metrics.capHeight(Face.REGULAR));
    }
}
