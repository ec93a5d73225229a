package org.fieldfold;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Edition;
import org.fieldfold.entry.Guide;
import org.fieldfold.entry.Placed;
import org.fieldfold.fold.FlatScheme;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.fold.Gathering;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.Insets;
import org.fieldfold.fold.Lengths;
import org.fieldfold.fold.Paper;
import org.fieldfold.manuscript.GuideWriter;
import org.fieldfold.manuscript.LargePrint;
import org.fieldfold.manuscript.Manuscript;
import org.fieldfold.manuscript.OfficePanel;
import org.fieldfold.manuscript.Phrases;
import org.fieldfold.manuscript.PosterWriter;
import org.fieldfold.pdf.Press;
import org.fieldfold.pdf.PrintJob;
import org.fieldfold.pdf.SheetWords;
import org.fieldfold.report.FitRow;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Severity;
import org.fieldfold.typeset.GatheredGuide;
import org.fieldfold.typeset.SetGuide;
import org.fieldfold.translation.TranslatedBase;
import org.fieldfold.typeset.Setter;

/** What a guide is printed as besides the pocket foldout: in large type, and as a poster. */
final class Forms {
    /** Wide at the sides: a line of some 65 letters, and room for thumbs, a staple and a lamp's edge. */
    private static final Insets PAGE = new Insets(Lengths.points(15), Lengths.points(22), Lengths.points(19),
            Lengths.points(22));
    private static final List<String> PAPERS = Arrays.stream(Paper.values()).map(Paper::id).toList();
    private static final int MOST_SHEETS = 20;

    /**
     * One form of a guide on a paper.
     *
     * @param path in the build
     * @param paper as the fit report names it
     * @param leftOut what is to be said about another form that is not printed
     */
    record Form(String path, String paper, Manuscript manuscript, PrintJob job, List<Finding> leftOut) {
        Form(String path, String paper, Manuscript manuscript, PrintJob job) {
            this(path, paper, manuscript, job, List.of());
        }

        List<Finding> findings() {
            return Stream.concat(job.guide().findings().stream(), leftOut.stream()).toList();
        }

        List<FitRow> fit(FitRows rows) {
            return rows.of(manuscript.id(), paper, job.guide());
        }
    }

    private final ContentBase base;
    private final Press press;
    private final boolean proof;

    /** All forms of all guides, in all languages, on all papers. */
    static List<Form> all(ContentBase base, Press press, boolean proof) {
        Edition edition = base.edition().value();
        List<Supplier<List<Form>>> work = new ArrayList<>();
        for (String language : edition.languages()) {
            Phrases phrases = Phrases.in(language);
            ContentBase said = TranslatedBase.in(base, language);
            Forms forms = new Forms(said, press, proof);
            for (Placed<Guide> guide : said.guides().values()) {
                List<String> wanted = guide.value().papers();
                List<String> papers = wanted.isEmpty() ? edition.papers() : wanted;
                for (String paper : papers.stream().filter(PAPERS::contains).toList()) {
                    work.add(() -> forms.of(guide, phrases, paper));
                }
            }
        }
        return Stream.concat(FirstSheets.all(base, press, proof).stream(),
                work.parallelStream().map(Supplier::get).flatMap(List::stream)).toList();
    }

    Forms(ContentBase base, Press press, boolean proof) {
        this.base = base;
        this.press = press;
        this.proof = proof;
    }

    /** All forms of a guide in a language on a paper. */
    List<Form> of(Placed<Guide> guide, Phrases phrases, String paper) {
        Manuscript pocket = new GuideWriter(base, phrases).write(guide, OfficePanel.generic(base.edition()),
                proof);
        Form large = largePrint(LargePrint.of(pocket, phrases), phrases, paper);
        Form poster = poster(new PosterWriter(base, phrases).write(pocket, guide,
                OfficePanel.generic(base.edition())), phrases, paper);
        boolean whole = poster.findings().stream().noneMatch(finding -> finding.severity() == Severity.ERROR);
        return whole ? List.of(large, poster) : List.of(new Form(large.path(), large.paper(),
                large.manuscript(), large.job(), List.of(noPoster(guide, paper))));
    }

    /** A guide whose poster would be too full for the wall is a good guide all the same. */
    private static Finding noPoster(Placed<Guide> guide, String paper) {
        return Finding.warning(guide.at("entries"), "does-not-fit", "expected the count cards of \""
                + guide.value().title() + "\" on one sheet of " + paper + ", found more than it holds in type"
                + " that is read from an arm's length; no poster is printed",
                "give some entries to another guide, or shorten what they say about counting");
    }

    private Form largePrint(Manuscript manuscript, Phrases phrases, String paper) {
        Imposition sheet = FlatScheme.PAGE.on(Paper.named(paper), FlipEdge.LONG, PAGE);
        GatheredGuide set = new Setter(press.metrics(), press.shapes(), phrases.say("folio"))
                .setOnFewest(manuscript, sheet, MOST_SHEETS);
        PrintJob job = job(manuscript, set.guide(), set.sheets(), PrintJob.Surround.PAGES);
        int sheets = set.sheets().sheets();
        return new Form(path(manuscript, paper, "large-print"), paper + ", large print, " + sheets
                + (sheets == 1 ? " sheet" : " sheets"), manuscript, job);
    }

    private Form poster(Manuscript manuscript, Phrases phrases, String paper) {
        Imposition sheet = FlatScheme.POSTER.on(Paper.named(paper), FlipEdge.SHORT);
        SetGuide set = new Setter(press.metrics(), press.shapes(), phrases.say("poster"))
                .set(manuscript, sheet.slots());
        return new Form(path(manuscript, paper, "poster"), paper + ", poster", manuscript,
                job(manuscript, set, new Gathering(sheet, 1), PrintJob.Surround.FOLDS));
    }

    private PrintJob job(Manuscript manuscript, SetGuide set, Gathering sheets, PrintJob.Surround around) {
        Edition edition = base.edition().value();
        return new PrintJob(manuscript.title(), edition.title() + ", " + edition.year(),
                manuscript.language(), manuscript.year(), edition.publisher(), edition.issued(), set, sheets,
                around, SheetWords.in(manuscript.language()), manuscript.proof());
    }

    private static String path(Manuscript manuscript, String paper, String form) {
        return "foldouts/" + manuscript.id() + "." + manuscript.language() + "." + paper + "." + form
                + ".pdf";
    }
}
