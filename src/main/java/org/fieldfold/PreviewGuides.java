package org.fieldfold;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fieldfold.calendar.Calendars;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Edition;
import org.fieldfold.entry.Figure;
import org.fieldfold.entry.Guide;
import org.fieldfold.entry.Placed;
import org.fieldfold.fold.PanelSlot;
import org.fieldfold.manuscript.GuideWriter;
import org.fieldfold.manuscript.Manuscript;
import org.fieldfold.manuscript.News;
import org.fieldfold.manuscript.Phrases;
import org.fieldfold.pdf.Press;
import org.fieldfold.preview.PanelDrawing;
import org.fieldfold.source.Finding;
import org.fieldfold.typeset.SetGuide;

/**
 * The panels of an entry, in every guide that holds it, each on the first of its papers. A guide whose
 * manuscript is that of last time is not set again.
 */
final class PreviewGuides {
    private final Map<String, Done> done = new HashMap<>();
    private Map<String, byte[]> figures = Map.of();
    private Optional<Press> press = Optional.empty();

    /** A guide that was set, and of what. */
    private record Done(Manuscript manuscript, SetGuide set) {
    }

    /** Panels of one guide: what is said about them, and their drawings. */
    record Shown(String guide, String paper, List<String> drawings, List<Finding> findings) {
    }

    /**
     * What is shown of an entry.
     *
     * @param base in the language that is shown
     * @throws IllegalArgumentException when a figure cannot be printed
     */
    List<Shown> of(ContentBase base, String entry, News news, Calendars dates) {
        Press ready = press(base);
        Edition edition = base.edition().value();
        String language = edition.languages().get(0);
        GuideWriter writer = new GuideWriter(base, Phrases.in(language).with(edition.units()), news,
                dates.of(base));
        List<Shown> shown = new ArrayList<>();
        for (Placed<Guide> guide : base.guides().values()) {
            if (guide.value().entries().contains(entry)) {
                List<String> papers = guide.value().papers().isEmpty() ? edition.papers()
                        : guide.value().papers();
                papers.stream().findFirst().flatMap(paper ->
                        PrintRun.of(base, guide, language, paper, writer, false, ready)).ifPresent(run ->
                        shown.add(show(run, guide.value(), entry)));
            }
        }
        return shown;
    }

    /** Figures that did not change are the same arrays: they were kept with their files. */
    private Press press(ContentBase base) {
        Map<String, byte[]> now = new HashMap<>();
        for (Placed<Figure> figure : base.figures().values()) {
            now.put(figure.value().id(), figure.value().bytes());
        }
        if (press.isEmpty() || !now.equals(figures)) {
            press = Optional.of(Press.of(now));
            figures = now;
            done.clear();
        }
        return press.get();
    }

    private Shown show(PrintRun run, Guide guide, String entry) {
        Manuscript manuscript = run.manuscript(run.generic());
        Done last = done.get(guide.id());
        if (last == null || !last.manuscript().equals(manuscript)) {
            last = new Done(manuscript, run.set(run.generic()));
            done.put(guide.id(), last);
        }
        SetGuide set = last.set();
        List<String> drawings = new ArrayList<>();
        for (SetGuide.PanelFit fit : set.fit()) {
            if (fit.section().equals(entry)) {
                PanelSlot slot = run.slots().get(fit.reading() - 1);
                drawings.add(PanelDrawing.of(set.panels().get(fit.reading() - 1), guide.title() + ", panel "
                        + fit.reading(), slot.uprightWidth(), slot.uprightHeight(), id -> "/figures/" + id));
            }
        }
        return new Shown(guide.title(), run.paper(), drawings, set.findings());
    }
}
