package org.fieldfold;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
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
import org.fieldfold.report.FitRow;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Severity;
import org.fieldfold.source.Span;

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

    /** All forms of all guides in a language, on all papers. */
    static List<Batch> batches(Tongues tongues, String language, PrintRoom room, boolean proof,
            FitRows rows) {
        Calendars dates = tongues.calendars(language);
        Edition edition = tongues.base().edition().value();
        Phrases phrases = Phrases.in(language).with(edition.units());
        return tongues.in(language).guides().keySet().stream().map(id -> batch("forms/" + id, proof + " "
                + dates.named(), form -> form.fit(rows), read -> new Forms(read, dates.of(read), room, proof)
                .onAllPapers(read.guides().get(id), phrases))).toList();
    }

    /**
     * Forms as sheets, of which is known from build to build what is to be known of them.
     *
     * @param fit how full a form's panels are, where that is told
     */
    static Batch batch(String name, Object of, Function<Form, List<FitRow>> fit,
            Function<ContentBase, List<Form>> make) {
        return new Batch(name, of.toString(), List.of(), read -> make.apply(read).stream().map(form ->
                form.sheet(read, fit.apply(form))).toList());
    }

    private List<Form> onAllPapers(Placed<Guide> guide, Phrases phrases) {
        Texts texts = texts(guide, phrases);
        return SetGuides.papers(guide.value(), base.edition().value()).stream().filter(PAPERS::contains)
                .flatMap(paper -> of(guide, texts, phrases, paper).stream()).toList();
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

    /** Those that offices ask for in a language. */
    static List<Batch> ofOffices(Tongues tongues, String language, PrintRoom room, boolean proof) {
        Calendars dates = tongues.calendars(language);
        List<Batch> batches = new ArrayList<>();
        for (Placed<Office> placed : tongues.in(language).offices().values()) {
            Office office = placed.value();
            for (Placed<Guide> guide : tongues.in(language).guides().values()) {
                if (prints(office, language) && office.handsOut(guide.value())) {
                    String id = guide.value().id();
                    String folder = "offices/" + office.id() + "/";
                    batches.add(batch(folder + "forms/" + id, proof + " " + dates.named(), form -> List.of(), read ->
                            new Forms(read, dates.of(read), room, proof).of(read.offices().get(office.id()),
                                    read.guides().get(id), folder, Phrases.in(language)).stream()
                                    .map(Form::released).toList()));
                }
            }
        }
        return batches;
    }

    private static boolean prints(Office office, String language) {
        return !office.forms().isEmpty() && office.languages().contains(language) && PAPERS.contains(office.paper());
    }

    /**
     * Those that an office asks for, in a language, with whom to call there: what it leaves out is left out of them,
     * and its notes stand in large print, where every page has room. A poster that is too full is left out,
     * which is said with the large print; nothing is said where an office asks for the poster alone.
     *
     * @param base in that language
     * @param folder before their names
     * @param calendars of that base
     */
    static List<Form> of(Placed<Office> office, String folder, ContentBase base, Calendars calendars, Phrases said,
            PrintRoom room, boolean proof) {
        if (!prints(office.value(), said.language())) {
            return List.of();
        }
        Forms forms = new Forms(base, calendars, room, proof);
        return base.guides().values().stream().filter(guide -> office.value().handsOut(guide.value()))
                .flatMap(guide -> forms.of(office, guide, folder, said).stream()).toList();
    }

    private List<Form> of(Placed<Office> placed, Placed<Guide> guide, String folder, Phrases said) {
        Office office = placed.value();
        Phrases phrases = said.with(office.units().or(() -> base.edition().value().units()));
        OfficePanel panel = OfficePanel.of(placed);
        Manuscript pocket = new GuideWriter(base, phrases, News.NONE, calendars).write(guide, panel, proof);
        List<Form> all = new ArrayList<>();
        if (office.forms().contains(GuideForm.LARGE_PRINT)) {
            all.add(largePrint(folder, LargePrint.of(pocket, phrases), phrases, office.paper()));
        }
        if (office.forms().contains(GuideForm.POSTER)) {
            Form poster = poster(folder, new PosterWriter(base, phrases).write(pocket, guide, panel), phrases,
                    office.paper());
            if (fits(poster)) {
                all.add(poster);
            } else {
                all.replaceAll(large -> large.without(noPoster(placed.at("forms"), guide, office.paper(), "leave out "
                        + "an entry at this office, or take 'poster' out of its forms")));
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
        return fits(poster) ? List.of(large, poster) : List.of(large.without(noPoster(guide.at("entries"), guide,
                paper, "give some entries to another guide, or shorten what they say about counting")));
    }

    private static boolean fits(Form poster) {
        return poster.findings().stream().noneMatch(finding -> finding.severity() == Severity.ERROR);
    }

    /** A guide whose poster would be too full for the wall is a good guide all the same. */
    private static Finding noPoster(Span at, Placed<Guide> guide, String paper, String hint) {
        return Finding.warning(at, "does-not-fit", "expected the count cards of \""
                + guide.value().title() + "\" on one sheet of " + paper + ", found more than it holds in type"
                + " that is read from an arm's length; no poster is printed", hint);
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
        String name = manuscript.id() + "." + manuscript.language() + "." + paper + "." + form;
        return new Form(folder + name + ".pdf", paper + ", " + form.replace('-', ' '), order, room,
                () -> room.set(order.setting(),
                folder.equals(GENERIC) ? room.learnt(name) : room.known(name)));
    }
}
