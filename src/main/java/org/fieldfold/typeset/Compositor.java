package org.fieldfold.typeset;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.fieldfold.manuscript.Figures;
import org.fieldfold.manuscript.Manuscript;
import org.fieldfold.manuscript.Section;
import org.fieldfold.prose.Run;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Span;

/** Draws what was planned, in reading order, and says what does not fit. */
final class Compositor {
    /** Distance of the lines on which a reader may write, 7 mm, where a panel is left empty. */
    private static final double WRITING = 7 * 72 / 25.4;
    private static final int LEAST_WRITING = 12;

    private final Manuscript manuscript;
    private final Stick model;
    private final Tag document = Tag.document();
    private final Map<Integer, SetPanel> panels = new TreeMap<>();
    private final Map<Integer, SetGuide.PanelFit> fits = new TreeMap<>();
    private final Map<TagSlot, Tag> made = new IdentityHashMap<>();
    private final int tabs;
    private boolean reads;

    /** @param reads whether the first panel that it draws is the first of the guide */
    Compositor(Manuscript manuscript, Stick model, boolean reads) {
        this.reads = reads;
        this.manuscript = manuscript;
        this.model = model;
        this.tabs = manuscript.sections().stream().mapToInt(Section::tab).max().orElse(0);
    }

    Tag document() {
        return document;
    }

    List<SetPanel> panels() {
        return List.copyOf(panels.values());
    }

    List<SetGuide.PanelFit> fits() {
        return List.copyOf(fits.values());
    }

    private Pen pen(List<Mark> marks, Tag tag, Frame frame) {
        return new Pen(marks, made, tag, frame.left());
    }

    void draw(Spread spread) {
        TreeMap<Integer, Tag> sections = new TreeMap<>();
        for (int panel = 0; panel < spread.frames().size(); panel++) {
            if (spread.filling().used(panel) > 0 || panel == 0) {
                draw(spread, panel, sections);
            }
        }
        over(spread).ifPresent(over -> model.remarks().add(finding(spread, over)));
    }

    private void draw(Spread spread, int panel, TreeMap<Integer, Tag> sections) {
        Frame frame = spread.frames().get(panel);
        List<Mark> marks = new ArrayList<>();
        List<Filling.Placed> here = spread.filling().strips().stream()
                .filter(placed -> placed.panel() == panel
                && placed.bottom() <= spread.capacities().get(panel)).toList();
        head(spread, panel, here, pen(marks, document, frame));
        List<Integer> springs = new ArrayList<>();
        for (int i = 0; i < here.size(); i++) {
            int block = here.get(i).block();
            boolean begins = i == 0 || here.get(i - 1).block() != block;
            if (begins && spread.sectionOf(block).springs().contains(spread.inSection(block))) {
                springs.add(i);
            }
        }
        int used = here.stream().mapToInt(Filling.Placed::bottom).max().orElse(0);
        int spare = spread.capacities().get(panel) - used;
        List<Integer> shifts =
                Whitening.shifts(here.stream().map(Filling.Placed::strip).toList(), springs, spare);
        double half = model.leading().half();
        double top = frame.top() + spread.heads().get(panel) * half;
        for (int i = 0; i < here.size(); i++) {
            Filling.Placed placed = here.get(i);
            Section section = spread.sectionOf(placed.block()).section();
            Tag tag = sections.computeIfAbsent(manuscript.sections().indexOf(section),
                    key -> document.addSection(section.name()));
            double at = top + (placed.top() + shifts.get(i)) * half;
            Strip.Head again = placed.strip().head();
            if (i == 0 && again.units() > 0 && placed.top() == again.units()) {
                again.draw().draw(pen(marks, tag, frame), at - again.units() * half);
            }
            placed.strip().draw().draw(pen(marks, tag, frame), at);
        }
        int end = here.isEmpty() ? 0 : here.get(here.size() - 1).bottom() + shifts.get(here.size() - 1);
        boolean inner = spread.sections().get(0).section().kind() != Section.Kind.COVER && springs.isEmpty();
        Section first = spread.sections().get(0).section();
        Tag tag = sections.isEmpty() ? document : sections.get(sections.lastKey());
        finish(frame, marks, tag, inner ? spread.heads().get(panel) + end : Integer.MAX_VALUE,
                first.origin());
        Optional<SetGuide.Over> over = panel == spread.frames().size() - 1 ? over(spread) : Optional.empty();
        int units = spread.heads().get(panel) + (over.isPresent() ? spread.capacities().get(panel)
                + spread.filling().over() : used) + foot(frame, first.origin()).units();
        fits.put(frame.reading(), new SetGuide.PanelFit(frame.reading(),
                here.isEmpty() ? first.id() : spread.sectionOf(here.get(0).block()).section().id(),
                over.isPresent() ? units * half / frame.height() : Math.min(1, units * half / frame.height()),
                model.size(), model.leading().line(), forms(spread, here), over));
    }

    /** Panels that no section needs: lines to write on. */
    void drawEmpty(List<Frame> frames) {
        frames.stream().filter(frame -> !panels.containsKey(frame.reading()))
                .forEach(frame -> drawEmpty(frame, manuscript.sections().get(0).origin()));
    }

    private void drawEmpty(Frame frame, Span origin) {
        finish(frame, new ArrayList<>(), document, 0, origin);
        double used = foot(frame, origin).units() * model.leading().half() / frame.height();
        fits.put(frame.reading(), new SetGuide.PanelFit(frame.reading(), "", used, model.size(),
                model.leading().line(), List.of(), Optional.empty()));
    }

    private static List<SetGuide.Form> forms(Spread spread, List<Filling.Placed> here) {
        return here.stream().map(Filling.Placed::block).distinct()
                .filter(block -> spread.block(block).ways().stream().anyMatch(Choice.Way::brief))
                .map(block -> new SetGuide.Form(spread.block(block).origin(), spread.block(block).ways()
                        .get(spread.filling().ways().get(block)).brief())).toList();
    }

    private void head(Spread spread, int panel, List<Filling.Placed> here, Pen pen) {
        Frame frame = spread.frames().get(panel);
        boolean running = panel > 0 && spread.sections().size() == 1;
        for (SetSection set : spread.sections()) {
            boolean begins = here.stream().anyMatch(placed -> spread.sectionOf(placed.block()) == set);
            if (begins && set.section().tab() > 0) {
                TabSetting.draw(set.section().tab(), tabs, spread.stick(), pen, frame.top(),
                        set.section().origin());
            }
        }
        if (running) {
            Section section = spread.sections().get(0).section();
            SetText name = spread.stick().text(List.of(Run.strong(section.name())), Voice.HEADING,
                    model.size(), spread.stick().measure(), section.origin());
            double baseline = model.leading().baseline(frame.top(), TabSetting.UNITS + 2);
            name.drawSilent(pen, 0, frame.left(), baseline, model.ink());
        }
    }

    private FootSetting foot(Frame frame, Span origin) {
        return new FootSetting(manuscript, frame.reading(), model.narrower(model.measure() - frame.width()),
                origin);
    }

    private void finish(Frame frame, List<Mark> marks, Tag section, int end, Span origin) {
        FootSetting foot = foot(frame, origin);
        Pen pen = pen(marks, section, frame);
        int rows = model.leading().capacity(frame.height()) - foot.units();
        int pitch = model.leading().units(WRITING);
        if (end < rows - LEAST_WRITING) {
            for (int row = rows - pitch; row >= end + pitch; row -= pitch) {
                double y = frame.top() + row * model.leading().half();
                pen.line(frame.left(), y, frame.left() + frame.width(), y, 0.35);
            }
        }
        foot.draw(pen, frame.bottom(), reads);
        reads = false;
        panels.put(frame.reading(), new SetPanel(frame.reading(), marks));
    }

    private static Optional<SetGuide.Over> over(Spread spread) {
        if (spread.filling().over() == 0) {
            return Optional.empty();
        }
        int last = spread.capacities().size() - 1;
        Filling.Placed first = spread.filling().strips().stream()
                .filter(placed -> placed.panel() == last && placed.bottom() > spread.capacities().get(last))
                .findFirst().orElseThrow();
        return Optional.of(new SetGuide.Over(spread.sectionOf(first.block()).section().id(),
                spread.block(first.block()).origin(), (spread.filling().over() + 1) / 2));
    }

    private Finding finding(Spread spread, SetGuide.Over over) {
        String section = spread.sections().stream().map(SetSection::section)
                .filter(one -> one.id().equals(over.section())).findFirst().orElseThrow().name();
        int lines = over.lines();
        int panel = spread.frames().get(spread.frames().size() - 1).reading();
        int characters = (int) (lines * spread.stick().measure() / (0.46 * model.size()));
        return Finding.error(over.origin(), SetGuide.OVER, "expected \"" + section + "\" to end on panel "
                + panel + " of guide '" + manuscript.id() + "', found "
                + lines + (lines == 1 ? " line" : " lines") + " over at "
                + number(model.size()) + " pt, with every text in its short form",
                "shorten the texts of this panel by about " + (characters + 9) / 10 * 10
                + " characters, list fewer entries in the guide, or take a fold scheme with more panels"
                + (lines == 1 && manuscript.proof().isPresent()
                        ? "; the mark of a proof takes a line, without it this may fit" : ""));
    }

    static String number(double size) {
        return Figures.plain(size);
    }
}
