package org.fieldfold;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.stream.Stream;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Edition;
import org.fieldfold.entry.Figure;
import org.fieldfold.entry.Guide;
import org.fieldfold.entry.Placed;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.manuscript.GuideWriter;
import org.fieldfold.manuscript.News;
import org.fieldfold.manuscript.Phrases;
import org.fieldfold.output.OutputFolder;
import org.fieldfold.pdf.Press;
import org.fieldfold.pdf.PrintJob;
import org.fieldfold.report.FitRow;
import org.fieldfold.source.Finding;
import org.fieldfold.translation.TranslatedBase;
import org.fieldfold.typeset.PrintMeFirst;
import org.fieldfold.typeset.SetGuide;

/**
 * All copies of all guides, generic and for offices. Each is set first, for what is to be said about it and
 * for its characters, and set again when it is printed: nothing is kept that grows with the offices.
 */
final class SetGuides {
    private final Press press;
    private final List<PrintedCopy> copies;
    private final List<Forms.Form> forms;
    private final List<FitRow> fit;
    private final Set<Finding> findings = new ConcurrentSkipListSet<>();
    private final Set<Integer> characters = new ConcurrentSkipListSet<>();

    private SetGuides(Press press, List<PrintRun> runs, List<PrintedCopy> offices, List<Forms.Form> forms,
            Map<String, FitRows> rows) {
        this.press = press;
        this.forms = forms;
        List<PrintedCopy> all = new ArrayList<>();
        runs.forEach(run -> all.addAll(generic(run)));
        all.addAll(offices);
        this.copies = List.copyOf(all);
        Map<PrintRun, SetGuide> set = new HashMap<>();
        List<SetGuide> inOrder = runs.parallelStream().map(run -> run.set(run.generic())).toList();
        for (int i = 0; i < runs.size(); i++) {
            set.put(runs.get(i), inOrder.get(i));
        }
        this.fit = Stream.concat(runs.stream().flatMap(run -> rows.get(run.language()).of(run.heading(),
                run.paper(), set.get(run)).stream()), forms.stream().flatMap(form ->
                form.fit(rows.get(form.manuscript().language())).stream())).toList();
        set.values().forEach(guide -> findings.addAll(guide.findings()));
        for (Forms.Form form : forms) {
            findings.addAll(form.findings());
            characters.addAll(form.job().characters());
        }
        copies.parallelStream().forEach(copy -> look(copy, set.get(copy.run()).findings()));
    }

    /** Sets every copy of every guide. */
    static SetGuides of(ContentBase base, News news, boolean proof) {
        Map<String, byte[]> figures = new HashMap<>(PrintMeFirst.figures());
        for (Placed<Figure> figure : base.figures().values()) {
            figures.put(figure.value().id(), figure.value().bytes());
        }
        Press press = Press.of(figures);
        Edition edition = base.edition().value();
        List<PrintRun> runs = new ArrayList<>();
        Map<String, FitRows> rows = new HashMap<>();
        for (String language : edition.languages()) {
            ContentBase said = TranslatedBase.in(base, language);
            rows.put(language, new FitRows(said));
            GuideWriter writer = new GuideWriter(said, Phrases.in(language), news);
            for (Placed<Guide> guide : said.guides().values()) {
                papers(guide.value(), edition).forEach(paper ->
                        PrintRun.of(said, guide, language, paper, writer, proof, press).ifPresent(runs::add));
            }
        }
        return new SetGuides(press, runs, OfficeCopies.of(base, runs), Forms.all(base, press, proof),
                rows);
    }

    static List<String> papers(Guide guide, Edition edition) {
        return guide.papers().isEmpty() ? edition.papers() : guide.papers();
    }

    /** For printers that turn the sheet on its short edge, and for those that turn it on its long edge. */
    private static List<PrintedCopy> generic(PrintRun run) {
        String path = "foldouts/" + run.name();
        return List.of(new PrintedCopy(path + ".pdf", run, run.generic(), FlipEdge.SHORT),
                new PrintedCopy(path + ".long-edge.pdf", run, run.generic(), FlipEdge.LONG));
    }

    private void look(PrintedCopy copy, List<Finding> ofGeneric) {
        SetGuide set = copy.set();
        findings.addAll(copy.run().findings(copy.office(), set, ofGeneric));
        characters.addAll(copy.run().job(set, copy.flip()).characters());
    }

    /** What does not fit, where it was written; the same thing on two papers is said once for each. */
    List<Finding> findings() {
        return List.copyOf(findings);
    }

    /** How full every panel of the generic copies is; once for each paper, however the sheet is turned. */
    List<FitRow> fit() {
        return fit;
    }

    /** Prints every copy; the type is cut once to the characters of the whole publication. */
    void print(OutputFolder folder) throws IOException {
        press.freeze(new TreeSet<>(characters));
        try {
            Stream.<Runnable>concat(copies.stream().map(copy -> () -> print(copy.path(), copy.job(), folder)),
                    forms.stream().map(form -> () -> print(form.path(), form.job(), folder)))
                    .parallel().forEach(Runnable::run);
        } catch (UncheckedIOException failed) {
            throw failed.getCause();
        }
    }

    private void print(String path, PrintJob job, OutputFolder folder) {
        try {
            folder.write(path, press.print(job));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
