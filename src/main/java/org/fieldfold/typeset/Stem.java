package org.fieldfold.typeset;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fieldfold.manuscript.Manuscript;
import org.fieldfold.manuscript.Section;
import org.fieldfold.prose.Run;
import org.fieldfold.source.Finding;

/**
 * All of a guide but what differs between offices: the panels between cover and contact, at the size that is
 * right for them alone, drawn.
 */
record Stem(double size, SharedPanels shared, List<SetGuide.PanelFit> fit, List<Finding> findings) {
    /** All that it depends on. */
    record Key(List<Section> flow, List<Frame> frames, String ink, int year, List<Run> foot,
            Optional<String> proof, Manuscript.TypeRange type, String language, boolean first) {
        static Key of(Manuscript manuscript, Seats seats, List<Frame> frames) {
            return new Key(seats.flow(), frames, manuscript.ink(), manuscript.year(), manuscript.foot(),
                    manuscript.proof(), manuscript.type(), manuscript.language(), seats.cover().isEmpty());
        }
    }

    /** Draws what was planned, and panels that nothing needs. */
    static Stem draw(Manuscript manuscript, Seats seats, Stick model, List<Spread> spreads) {
        Compositor compositor = new Compositor(manuscript, model, seats.cover().isEmpty());
        spreads.forEach(compositor::draw);
        compositor.drawEmpty(seats.inner());
        for (Section section : seats.flow()) {
            if (spreads.stream().flatMap(spread -> spread.sections().stream())
                    .noneMatch(set -> set.section().equals(section))) {
                model.remarks().add(Finding.error(section.origin(), SetGuide.OVER, "expected a panel for \""
                        + section.name() + "\", found all panels taken",
                        "take a fold scheme with more panels"));
            }
        }
        return new Stem(model.size(), new SharedPanels(compositor.panels(), compositor.document().children()),
                compositor.fits(), model.remarks().findings());
    }

    /** The guide, with the panels of an office. */
    SetGuide with(Manuscript manuscript, Seats seats, Stick model, List<Spread> own) {
        Compositor compositor = new Compositor(manuscript, model, true);
        Tag document = Tag.document();
        own.stream().filter(spread -> isCover(spread, seats)).forEach(compositor::draw);
        compositor.document().children().forEach(document::adopt);
        shared.sections().forEach(document::adopt);
        int before = compositor.document().children().size();
        own.stream().filter(spread -> !isCover(spread, seats)).forEach(compositor::draw);
        List<Tag> made = compositor.document().children();
        made.subList(before, made.size()).forEach(document::adopt);
        findings.forEach(model.remarks()::add);
        List<SetPanel> panels = new ArrayList<>(shared.panels());
        panels.addAll(compositor.panels());
        panels.sort(Comparator.comparingInt(SetPanel::reading));
        List<SetGuide.PanelFit> fits = new ArrayList<>(fit);
        fits.addAll(compositor.fits());
        fits.sort(Comparator.comparingInt(SetGuide.PanelFit::reading));
        return new SetGuide(panels, document, size, fits, model.remarks().findings(), shared);
    }

    private static boolean isCover(Spread spread, Seats seats) {
        return seats.cover().isPresent() && spread.sections().get(0).section().equals(seats.cover().get());
    }
}
