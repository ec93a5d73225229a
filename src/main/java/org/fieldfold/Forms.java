package org.fieldfold;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.fieldfold.calendar.Calendars;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Edition;
import org.fieldfold.entry.Guide;
import org.fieldfold.entry.GuideForm;
import org.fieldfold.entry.Office;
import org.fieldfold.entry.Placed;
import org.fieldfold.fold.FlatScheme;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.Insets;
import org.fieldfold.fold.Lengths;
import org.fieldfold.fold.Paper;
import org.fieldfold.kept.Kept;
import org.fieldfold.manuscript.GuideWriter;
import org.fieldfold.manuscript.LargePrint;
import org.fieldfold.manuscript.Manuscript;
import org.fieldfold.manuscript.News;
import org.fieldfold.manuscript.OfficePanel;
import org.fieldfold.manuscript.Phrases;
import org.fieldfold.manuscript.PosterWriter;
import org.fieldfold.pdf.Press;
import org.fieldfold.pdf.PrintJob;
import org.fieldfold.pdf.SheetWords;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Severity;

/** What a guide is printed as besides the pocket foldout: in large type, and as a poster. */
final class Forms {
    /** Wide at the sides: a line of some 65 letters, and room for thumbs, a staple and a lamp's edge. */
    private static final Insets PAGE = new Insets(Lengths.points(15), Lengths.points(22), Lengths.points(19),
            Lengths.points(22));
    private static final List<String> PAPERS = Arrays.stream(Paper.values()).map(Paper::id).toList();
    private static final int MOST_SHEETS = 20;
    private static final String GENERIC = "foldouts/";

    private final ContentBase base;
    private final Calendars calendars;
    private final PrintRoom room;
    private final boolean proof;

    /** All forms of all guides, in all languages, on all papers. */
    static List<Form> all(ContentBase base, Press press, boolean proof) {
        return all(new Tongues(base), new PrintRoom(press, Kept.nothing()), proof);
    }

    /** The same; what an earlier build knows of them is not found out again. */
    static List<Form> all(Tongues tongues, PrintRoom room, boolean proof) {
        Edition edition = tongues.base().edition().value();
        List<Supplier<List<Form>>> work = new ArrayList<>();
        for (String language : edition.languages()) {
            Phrases phrases = Phrases.in(language).with(edition.units());
            ContentBase said = tongues.in(language);
            Forms forms = new Forms(said, tongues.calendars(language), room, proof);
            for (Placed<Guide> guide : said.guides().values()) {
                List<String> wanted = guide.value().papers();
                List<String> papers = wanted.isEmpty() ? edition.papers() : wanted;
                Texts texts = forms.texts(guide, phrases);
                for (String paper : papers.stream().filter(PAPERS::contains).toList()) {
                    work.add(() -> forms.of(guide, texts, phrases, paper));
                }
            }
        }
        return Stream.concat(FirstSheets.all(tongues, room, proof).stream(),
                work.parallelStream().map(Supplier::get).flatMap(List::stream)).toList();
    }

    Forms(ContentBase base, Press press, boolean proof) {
        this(base, new Calendars(base), new PrintRoom(press, Kept.nothing()), proof);
    }

    /** @param calendars of this base */
    private Forms(ContentBase base, Calendars calendars, PrintRoom room, boolean proof) {
        this.base = base;
        this.calendars = calendars;
        this.room = room;
        this.proof = proof;
    }

    /** All forms of a guide in a language on a paper. */
    List<Form> of(Placed<Guide> guide, Phrases phrases, String paper) {
        return of(guide, texts(guide, phrases), phrases, paper);
    }

    /** Those that offices ask for, in all languages. */
    static List<Form> ofOffices(Tongues tongues, PrintRoom room, boolean proof) {
        return tongues.languages().parallelStream().map(language -> tongues.in(language).offices().values()
                .stream().flatMap(office -> of(office, "offices/" + office.value().id() + "/", tongues.in(language),
                        tongues.calendars(language), Phrases.in(language), room, proof).stream().map(Form::released))
                .toList()).flatMap(List::stream).toList();
    }

    /**
     * Those that an office asks for, in a language, with whom to call there: what it leaves out is left out of them,
     * and its notes stand in large print, where every page has room. A poster that is too full is left out.
     *
     * @param base in that language
     * @param folder before their names
     * @param calendars of that base
     */
    static List<Form> of(Placed<Office> placed, String folder, ContentBase base, Calendars calendars, Phrases said,
            PrintRoom room, boolean proof) {
        Office office = placed.value();
        if (office.forms().isEmpty() || !office.languages().contains(said.language())
                || !PAPERS.contains(office.paper())) {
            return List.of();
        }
        Forms forms = new Forms(base, calendars, room, proof);
        Phrases phrases = said.with(office.units().or(() -> base.edition().value().units()));
        GuideWriter writer = new GuideWriter(base, phrases, News.NONE, calendars);
        OfficePanel panel = OfficePanel.of(placed);
        List<Form> all = new ArrayList<>();
        for (Placed<Guide> guide : base.guides().values()) {
            if (!office.handsOut(guide.value())) {
                continue;
            }
            Manuscript pocket = writer.write(guide, panel, proof);
            if (office.forms().contains(GuideForm.LARGE_PRINT)) {
                all.add(forms.largePrint(folder, LargePrint.of(pocket, phrases), phrases, office.paper()));
            }
            if (office.forms().contains(GuideForm.POSTER)) {
                Form poster = forms.poster(folder, new PosterWriter(base, phrases).write(pocket, guide, panel), phrases,
                        office.paper());
                if (fits(poster)) {
                    all.add(poster);
                }
            }
        }
        return all;
    }

    /** What is said on all papers. */
    private record Texts(Manuscript large, Manuscript poster) {
    }

    private Texts texts(Placed<Guide> guide, Phrases phrases) {
        OfficePanel publisher = OfficePanel.generic(base.edition());
        Manuscript pocket = new GuideWriter(base, phrases, News.NONE, calendars).write(guide, publisher, proof);
        return new Texts(LargePrint.of(pocket, phrases),
                new PosterWriter(base, phrases).write(pocket, guide, publisher));
    }

    private List<Form> of(Placed<Guide> guide, Texts texts, Phrases phrases, String paper) {
        Form large = largePrint(GENERIC, texts.large(), phrases, paper);
        Form poster = poster(GENERIC, texts.poster(), phrases, paper);
        return fits(poster) ? List.of(large, poster) : List.of(large.without(noPoster(guide, paper)));
    }

    private static boolean fits(Form poster) {
        return poster.findings().stream().noneMatch(finding -> finding.severity() == Severity.ERROR);
    }

    /** A guide whose poster would be too full for the wall is a good guide all the same. */
    private static Finding noPoster(Placed<Guide> guide, String paper) {
        return Finding.warning(guide.at("entries"), "does-not-fit", "expected the count cards of \""
                + guide.value().title() + "\" on one sheet of " + paper + ", found more than it holds in type"
                + " that is read from an arm's length; no poster is printed",
                "give some entries to another guide, or shorten what they say about counting");
    }

    private Form largePrint(String folder, Manuscript manuscript, Phrases phrases, String paper) {
        Imposition sheet = FlatScheme.PAGE.on(Paper.named(paper), FlipEdge.LONG, PAGE);
        return form(folder, manuscript, paper, "large-print", sheet, PrintJob.Surround.PAGES,
                new Setting.Manner.Pages(sheet, MOST_SHEETS, phrases.say("folio")));
    }

    private Form poster(String folder, Manuscript manuscript, Phrases phrases, String paper) {
        Imposition sheet = FlatScheme.POSTER.on(Paper.named(paper), FlipEdge.SHORT);
        return form(folder, manuscript, paper, "poster", sheet, PrintJob.Surround.FOLDS,
                new Setting.Manner.Panels(sheet.slots(), Optional.of(phrases.say("poster"))));
    }

    private Form form(String folder, Manuscript manuscript, String paper, String form, Imposition sheet,
            PrintJob.Surround around, Setting.Manner manner) {
        SheetOrder order = SheetOrder.of(new Setting(manuscript, manner), sheet, base.edition().value(),
                around,
                SheetWords.in(manuscript.language()));
        return new Form(folder + manuscript.id() + "." + manuscript.language() + "." + paper + "." + form
                + ".pdf", paper + ", " + form.replace('-', ' '), order, room);
    }
}
