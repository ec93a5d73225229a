package org.fieldfold;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Edition;
import org.fieldfold.entry.Figure;
import org.fieldfold.entry.Guide;
import org.fieldfold.entry.Placed;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.fold.FoldException;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.Paper;
import org.fieldfold.handbook.FitRow;
import org.fieldfold.manuscript.GuideWriter;
import org.fieldfold.manuscript.Manuscript;
import org.fieldfold.manuscript.OfficePanel;
import org.fieldfold.manuscript.Phrases;
import org.fieldfold.output.OutputFolder;
import org.fieldfold.pdf.Press;
import org.fieldfold.pdf.PrintJob;
import org.fieldfold.pdf.SheetWords;
import org.fieldfold.source.Finding;
import org.fieldfold.translation.TranslatedBase;
import org.fieldfold.typeset.SetGuide;
import org.fieldfold.typeset.Setter;

/** All copies of all guides, set once each and ready to print. */
final class SetGuides {
    /**
     * One sheet that will be printed.
     *
     * @param path in the build
     * @param edition in the language of this copy
     * @param set shared by the copies that differ only in how the sheet is turned
     */
    private record Copy(String path, Edition edition, Manuscript manuscript, SetGuide set,
            Imposition imposition) {
    }

    /** A guide that will be set on a paper. */
    private record Plan(Placed<Guide> guide, String paper, GuideWriter writer, ContentBase base) {
    }

    private final ContentBase base;
    private final Press press;
    private final List<Copy> copies;
    private final List<Forms.Form> forms;

    private SetGuides(ContentBase base, Press press, List<Copy> copies, List<Forms.Form> forms) {
        this.base = base;
        this.press = press;
        this.copies = copies;
        this.forms = forms;
    }

    /** Sets every guide on every paper it is printed on. */
    static SetGuides of(ContentBase base, boolean proof) {
        Map<String, byte[]> figures = new HashMap<>();
        for (Placed<Figure> figure : base.figures().values()) {
            figures.put(figure.value().id(), figure.value().bytes());
        }
        Press press = Press.of(figures);
        Edition edition = base.edition().value();
        List<Plan> plans = new ArrayList<>();
        for (String language : edition.languages()) {
            ContentBase said = TranslatedBase.in(base, language);
            GuideWriter writer = new GuideWriter(said, Phrases.in(language));
            said.guides().values().forEach(guide -> papers(guide.value(), edition)
                    .filter(paper -> impose(base, guide.value(), paper, FlipEdge.SHORT).isPresent())
                    .forEach(paper -> plans.add(new Plan(guide, paper, writer, said))));
        }
        List<Copy> copies = plans.parallelStream().flatMap(plan -> copies(plan, proof, press)).toList();
        return new SetGuides(base, press, copies, Forms.all(base, press, proof));
    }

    private static Stream<String> papers(Guide guide, Edition edition) {
        return (guide.papers().isEmpty() ? edition.papers() : guide.papers()).stream();
    }

    /** Both copies of a guide on a paper: for printers that turn the sheet on its short or long edge. */
    private static Stream<Copy> copies(Plan plan, boolean proof, Press press) {
        Guide guide = plan.guide().value();
        Manuscript manuscript = plan.writer().write(plan.guide(),
                OfficePanel.generic(plan.base().edition()), proof);
        Imposition shortEdge = impose(plan.base(), guide, plan.paper(), FlipEdge.SHORT).orElseThrow();
        SetGuide set = new Setter(press.metrics(), press.shapes()).set(manuscript, shortEdge.slots());
        Edition edition = plan.base().edition().value();
        String path = "foldouts/" + manuscript.id() + "." + manuscript.language() + "." + plan.paper();
        return Stream.of(new Copy(path + ".pdf", edition, manuscript, set, shortEdge),
                new Copy(path + ".long-edge.pdf", edition, manuscript, set,
                        impose(plan.base(), guide, plan.paper(), FlipEdge.LONG).orElseThrow()));
    }

    /** A proof is built although a finding stands at a sheet: what cannot be folded is left out of it. */
    private static Optional<Imposition> impose(ContentBase base, Guide guide, String paper, FlipEdge flip) {
        try {
            return base.scheme(guide.scheme())
                    .map(scheme -> Imposition.of(scheme, Paper.named(paper), flip));
        } catch (FoldException | IllegalArgumentException unfit) {
            return Optional.empty();
        }
    }

    /** What does not fit, where it was written; the same thing on two papers is said once for each. */
    List<Finding> findings() {
        Set<Finding> findings = new TreeSet<>();
        copies.forEach(copy -> findings.addAll(copy.set().findings()));
        forms.forEach(form -> findings.addAll(form.findings()));
        return List.copyOf(findings);
    }

    /** How full every panel is; once for each paper, however the sheet is turned. */
    List<FitRow> fit() {
        Stream<FitRow> foldouts = copies.stream().filter(copy -> copy.imposition().flip() == FlipEdge.SHORT)
                .flatMap(copy -> copy.set().fit().stream().map(panel -> new FitRow(name(copy),
                        copy.imposition().paper().id(), panel.reading(), panel.section(), panel.used(),
                        panel.typeSize(), panel.brief())));
        return Stream.concat(foldouts, forms.stream().flatMap(form -> form.fit().stream())).toList();
    }

    /** A guide in another language than the base's says so. */
    private String name(Copy copy) {
        String language = copy.manuscript().language();
        return copy.manuscript().id()
                + (language.equals(base.edition().value().languages().get(0)) ? "" : "." + language);
    }

    /** Prints every copy; the type is cut once to the characters of the whole publication. */
    void print(OutputFolder folder) throws IOException {
        List<PrintJob> jobs = Stream.concat(copies.stream().map(this::job),
                forms.stream().map(Forms.Form::job)).toList();
        List<String> paths = Stream.concat(copies.stream().map(Copy::path),
                forms.stream().map(Forms.Form::path)).toList();
        Set<Integer> characters = new TreeSet<>();
        jobs.forEach(job -> characters.addAll(job.characters()));
        press.freeze(characters);
        List<byte[]> sheets = jobs.parallelStream().map(press::print).toList();
        for (int i = 0; i < sheets.size(); i++) {
            folder.write(paths.get(i), sheets.get(i));
        }
    }

    private PrintJob job(Copy copy) {
        Edition edition = copy.edition();
        Manuscript manuscript = copy.manuscript();
        return new PrintJob(manuscript.title(), edition.title() + ", " + edition.year(),
                manuscript.language(), manuscript.year(), edition.publisher(), edition.issued(),
                copy.set(), copy.imposition(), SheetWords.in(manuscript.language()), manuscript.proof());
    }
}
