package org.fieldfold.typeset;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fieldfold.manuscript.Block;
import org.fieldfold.manuscript.Manuscript;
import org.fieldfold.manuscript.Section;
import org.fieldfold.prose.Run;
import org.fieldfold.source.SourceFile;
import org.fieldfold.source.Span;

/** Manuscripts to set: an invented guide whose facts are those of the demonstration base. */
public final class Samples {
    static final FigureShapes SHAPES = figure -> Map.of("colorado-potato-beetle-adult", 0.8,
            "colorado-potato-beetle-larva", 1.55, "potato-leafhopper-adult", 0.55).getOrDefault(figure, 1.2);
    static final int TABLE_ROWS = 70;
    private static int line;

    private Samples() {}


    static Span span() {
        SourceFile file = new SourceFile("content/sample.yaml", "x\n".repeat(500));
        int start = 2 * (line++ % 400);
        return new Span(file, start, start);
    }

    static Block.Paragraph paragraph(Run... runs) {
        return new Block.Paragraph(List.of(runs), List.of(), span());
    }

    static Block.Tier tier(int tier, String heading, String after, String... measures) {
        List<Block.Measure> all = new ArrayList<>();
        for (String measure : measures) {
            all.add(new Block.Measure(List.of(Run.plain(measure)), span()));
        }
        return new Block.Tier(tier, List.of(Run.plain(heading)), all,
                after.isEmpty() ? List.of() : List.of(Run.plain(after)), span());
    }

    static Section beetle(int tab) {
        return new Section("colorado-potato-beetle", Section.Kind.ENTRY, tab, "Colorado potato beetle",
                List.of(
                new Block.Title(List.of(Run.plain("Colorado potato beetle")),
                        List.of(Run.name("Leptinotarsa decemlineata"), Run.plain(" (Say, 1824)")), span()),
                new Block.Plates(List.of(
                        new Block.Plate("colorado-potato-beetle-adult", "adult",
                        "A round beetle with ten stripes.",
                                Optional.of(new Block.Plate.Length(9, 11))),
                        new Block.Plate("colorado-potato-beetle-larva", "large larva", "A hump-backed larva.",
                                Optional.of(new Block.Plate.Length(6, 12)))), span()),
                paragraph(Run.strong("Look for"),
                Run.plain(" leaves stripped from the edge in; black droppings; "
                        + "orange eggs in rafts under leaves.")),
                paragraph(Run.strong("Not this:"),
                Run.plain(" lady beetle larvae are gray, quick, and eat the eggs. "
                        + "Leave them.")),
                new Block.CountBox(List.of(Run.strong("Count"),
                Run.plain(" beetles on 50 stems: 10 stops in a V, "
                        + "5 stems each, every 7 days from emergence.")), "act at", "50", "adults", 10,
                        span()),
                paragraph(Run.plain("or 75 large larvae, or 200 small ones. Before bloom plants stand 20–30 "
                        + "% leaf loss; after it, 5–10 %.")),
                tier(1, "1 Cultural", "", "Plant ¼ mile from last year’s field.",
                        "Straw between rows; pull volunteers."),
                tier(2, "2 Exclusion and natural enemies", "",
                "Row cover on hoops from planting until bloom; not "
                        + "where beetles wintered.", "Pick adults and crush eggs in small plots."),
                tier(3, "3 Insecticide, last — only past the count", "Change group with each generation.",
                        "spinosad (group 5), listed for organic use by product",
                        "chlorantraniliprole (28) · novaluron (15)"),
                new Block.Divider(span()),
                paragraph(Run.strong("Spare"), Run.plain(" spotted lady beetle, ground beetles, stink bug "),
                        Run.name("Perillus"), Run.plain("."))), span());
    }

    static Section leafhopper(int tab) {
        return new Section("potato-leafhopper", Section.Kind.ENTRY, tab, "Potato leafhopper", List.of(
                new Block.Title(List.of(Run.plain("Potato leafhopper")),
                        List.of(Run.name("Empoasca fabae"), Run.plain(" (Harris, 1841)")), span()),
                new Block.Plates(List.of(new Block.Plate("potato-leafhopper-adult", "adult", "A green wedge.",
                        Optional.of(new Block.Plate.Length(3, 3.5)))), span()),
                paragraph(Run.strong("Look for"),
                Run.plain(" yellow V-shaped burn at the leaf tip; leaves curl up.")),
                new Block.Heading(2, List.of(Run.plain("When it pays to act")), span()),
                new Block.Grid("", List.of(List.of(Run.plain("Crop")), List.of(Run.plain("Stage")),
                        List.of(Run.plain("Per leaf"))), List.of(
                        List.of(List.of(Run.plain("potato")), List.of(Run.plain("before bloom")),
                        List.of(Run.plain("1"))),
                        List.of(List.of(Run.plain("eggplant")), List.of(Run.plain("any")),
                        List.of(Run.plain("0.5"))),
                        List.of(List.of(Run.plain("bean")), List.of(Run.plain("two leaves")),
                        List.of(Run.plain("12")))),
                        span()),
                new Block.Items(false, List.of(List.of(Run.plain("Turn the leaf; nymphs run sideways.")),
                        List.of(Run.plain("Sweep 20 times in the row and divide by 20."))), span()),
                tier(1, "1 Cultural", "", "Plant tolerant kinds early."),
                tier(2, "2 Exclusion and natural enemies", "", "Cover seedlings until the first count."),
                tier(3, "3 Insecticide, last — only past the count", "The label is the law.",
                        "acetamiprid (4A), not in bloom")), span());
    }

    static Section cover() {
        return new Section("cover", Section.Kind.COVER, 0, "Cover", List.of(
                new Block.Title(List.of(Run.plain("Potato and eggplant")),
                List.of(Run.plain("Find it, count it, decide")),
                        span()),
                paragraph(Run.plain("A pocket guide for field growers: three pests, each on one panel.")),
                paragraph(Run.strong("Holds until"),
                Run.plain(" 31 January 2028. Then ask for the new one.")),
                paragraph(Run.strong("Ask the Lowbridge County Office"),
                Run.plain(" 555-0111, Monday to Friday, "
                        + "8 to noon"))), span());
    }

    static Section scouting() {
        return new Section("scouting", Section.Kind.SCOUTING, 0, "How to scout", List.of(
                new Block.Title(List.of(Run.plain("How to scout")), List.of(), span()),
                new Block.Items(true, List.of(
                        List.of(Run.plain("Walk the same way every week, on the same day. Write the count "
                                + "down.")),
                        List.of(Run.plain("Name it before you count it. A friend looks like a pest from "
                                + "above.")),
                        List.of(Run.plain("Flag a bad spot and count there again in 2 to 3 days. The second "
                                + "count decides."))), span()),
                new Block.Heading(2, List.of(Run.plain("The three tiers")), span()),
                tier(1, "1 Cultural", "", "How and where the crop is grown."),
                tier(2, "2 Exclusion and natural enemies", "", "Covers, nets, and those that eat the pest."),
                tier(3, "3 Insecticide, last", "The label on the container decides.",
                "Only past the count.")), span());
    }

    static Section contact() {
        return new Section("contact", Section.Kind.CONTACT, 0, "Ask", List.of(
                new Block.Title(List.of(Run.plain("Not sure? Ask")), List.of(), span()),
                paragraph(Run.strong("Lowbridge County Office"),
                Run.plain(", 12 Mill Lane, Lowbridge. 555-0111, "),
                        Run.plain("lowbridge@marrowvalley.example")
                        .to("mailto:lowbridge@marrowvalley.example")),
                paragraph(Run.plain("Flag it, count again in 2–3 days, send a photograph with crop, place, "
                        + "date and count.")),
                new Block.Heading(2, List.of(Run.plain("Cautions")), span()),
                new Block.Items(false, List.of(
                        List.of(Run.plain("The label on the container is the law.")),
                        List.of(Run.plain("Ask your county office or a licensed applicator before using any "
                                + "insecticide.")),
                        List.of(Run.plain("Keep every insecticide locked, out of reach of children."))), 2,
                        span()),
                new Block.Code("https://handbook.marrowvalley.example/2027",
                List.of(Run.plain("The whole handbook, "
                        + "also offline")), span()),
                new Block.Notice(List.of(Run.strong("Demonstration, not advice."),
                Run.plain(" The region, its offices "
                        + "and its weather are invented.")), span())), span());
    }

    /**
     * A small guide with something of everything, for any number of panels from 4.
     *
     * @param smallest size of type in points: narrow panels need less than a real guide may have
     */
    public static Manuscript small(int panels, double smallest) {
        List<Section> sections = new ArrayList<>(List.of(cover(), scouting()));
        for (int entry = 1; entry <= Math.max(1, (panels - 2) / 3); entry++) {
            sections.add(entry % 2 == 1 ? beetle(entry) : leafhopper(entry));
        }
        sections.add(contact());
        Manuscript guide = guide(sections.toArray(Section[]::new));
        return new Manuscript(guide.id(), guide.title(), guide.language(), guide.year(), guide.holdsUntil(),
                guide.proof(), guide.foot(), guide.ink(), new Manuscript.TypeRange(smallest, 9), sections);
    }

    private static List<Run> cell(String text) {
        return List.of(Run.plain(text));
    }

    /** A guide with one table that is longer than a panel. */
    public static Manuscript longTable() {
        List<List<List<Run>>> rows = new ArrayList<>();
        for (int row = 1; row <= TABLE_ROWS; row++) {
            rows.add(List.of(cell("field " + row), cell(String.valueOf(1000 + row))));
        }
        return guide(cover(), new Section("days", Section.Kind.ENTRY, 1, "Degree-days",
                List.of(new Block.Title(cell("Degree-days"), List.of(), span()),
                        new Block.Grid("Sums of the year", List.of(cell("Field"), cell("Sum")), rows,
                                span())), span()), contact());
    }

    static Manuscript guide(Section... sections) {
        return new Manuscript("potato", "Potato and eggplant", "en", 2027, "31 January 2028",
                Optional.empty(),
                List.of(Run.strong("The label is the law."), Run.plain(" Demonstration, not advice.")),
                "#7a2a18",
                new Manuscript.TypeRange(7.5, 9), List.of(sections));
    }

    /** Panels of one size: live area 6.35 mm from the head and foot of the sheet, 3 mm from folds. */
    static List<Frame> frames(int count, double widthIn, double heightIn) {
        List<Frame> frames = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            Frame.Place place = i == 1 ? Frame.Place.FIRST : i == count ? Frame.Place.LAST
                    : Frame.Place.INNER;
            frames.add(new Frame(i, place, 8.5, 18, widthIn * 72 - 17, heightIn * 72 - 36));
        }
        return frames;
    }
}
