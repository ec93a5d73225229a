package org.fieldfold.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.fieldfold.content.BaseLoader;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Edition;
import org.fieldfold.entry.Guide;
import org.fieldfold.entry.Placed;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.Paper;
import org.fieldfold.manuscript.GuideWriter;
import org.fieldfold.manuscript.Manuscript;
import org.fieldfold.manuscript.OfficePanel;
import org.fieldfold.manuscript.Phrases;
import org.fieldfold.typeset.SetGuide;
import org.fieldfold.typeset.Setter;

/** Every guide that ships, set and printed once on a paper for all tests that look at them. */
final class DemoGuides {
    /** One guide and its sheet. */
    record Printed(Manuscript manuscript, SetGuide set, Imposition imposition, byte[] pdf) {
        String id() {
            return manuscript.id();
        }
    }

    private static final class Held {
        static final ContentBase BASE = load();
    }

    private static final Map<Paper, List<Printed>> PRINTED = new EnumMap<>(Paper.class);

    private DemoGuides() {
    }

    static ContentBase base() {
        return Held.BASE;
    }

    /** On letter paper. */
    static List<Printed> all() {
        return on(Paper.LETTER);
    }

    static synchronized List<Printed> on(Paper paper) {
        return PRINTED.computeIfAbsent(paper, unprinted -> print(base(), paper));
    }

    private static ContentBase load() {
        try {
            return BaseLoader.load(Path.of("content")).base().orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Printed> print(ContentBase base, Paper paper) {
        Map<String, byte[]> figures = new HashMap<>();
        base.figures().forEach((id, figure) -> figures.put(id, figure.value().bytes()));
        Press press = Press.of(figures);
        GuideWriter writer = new GuideWriter(base, Phrases.in("en"));
        Setter setter = new Setter(press.metrics(), press.shapes());
        Edition edition = base.edition().value();
        List<PrintJob> jobs = new ArrayList<>();
        List<Manuscript> manuscripts = new ArrayList<>();
        for (Placed<Guide> guide : base.guides().values()) {
            Manuscript manuscript = writer.write(guide, OfficePanel.generic(base.edition()), false);
            Imposition imposition = Imposition.of(base.scheme(guide.value().scheme()).orElseThrow(),
                    paper, FlipEdge.SHORT);
            manuscripts.add(manuscript);
            jobs.add(new PrintJob(manuscript.title(), edition.title() + ", " + edition.year(), "en",
                    edition.year(), edition.publisher(), edition.issued(),
                    setter.set(manuscript, imposition.slots()), imposition, SheetWords.in("en"),
                    Optional.empty()));
        }
        Set<Integer> characters = new TreeSet<>();
        jobs.forEach(job -> characters.addAll(job.characters()));
        press.freeze(characters);
        List<Printed> printed = new ArrayList<>();
        for (int i = 0; i < jobs.size(); i++) {
            printed.add(new Printed(manuscripts.get(i), jobs.get(i).guide(), jobs.get(i).imposition(),
                    press.print(jobs.get(i))));
        }
        return List.copyOf(printed);
    }
}
