package org.fieldfold.typeset;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fieldfold.fold.FlatScheme;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.fold.FoldLine;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.Paper;
import org.fieldfold.fold.Side;
import org.fieldfold.manuscript.Manuscript;
import org.fieldfold.manuscript.Phrases;
import org.fieldfold.prose.Run;
import org.fieldfold.source.Span;

/**
 * Sets the sheet that an office prints before all others: it shows in five steps, to somebody who never did
 * it, whether a copier keeps the size, turns the sheet on the right edge, brings front and back together and
 * takes paper straight. What belongs together on the two sides lies on each other when the sheet is right.
 */
public final class PrintMeFirst {
    private static final double TYPE = 12.5;
    private static final String OWN = "print-me-first:";
    private static final List<String> DRAWINGS = List.of("ruler", "turn", "light", "fold", "old");

    private final Manuscript manuscript;
    private final Phrases phrases;
    private final Imposition sheet;
    private final String whose;
    private final Span origin;
    private final Stick stick;
    private final Tag document = Tag.document();

    private PrintMeFirst(Manuscript manuscript, Phrases phrases, Imposition sheet, boolean own, Span origin,
            Stick stick) {
        this.manuscript = manuscript;
        this.phrases = phrases;
        this.sheet = sheet;
        this.whose = own ? ".office" : "";
        this.origin = origin;
        this.stick = stick;
    }

    /** Its own drawings, to be given to the press with all others. */
    public static Map<String, byte[]> figures() {
        Map<String, byte[]> figures = new LinkedHashMap<>();
        for (String name : DRAWINGS) {
            try (InputStream in = PrintMeFirst.class.getResourceAsStream("check/" + name + ".svg")) {
                figures.put(figure(name), in.readAllBytes());
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
        }
        return figures;
    }

    /** No figure of a content base has such a name: they are of letters, digits and hyphens. */
    static String figure(String name) {
        return OWN + name;
    }

    /** Whether a figure is one of its own drawings. */
    public static boolean isOwn(String figure) {
        return figure.startsWith(OWN);
    }

    /** The sheet: lying, both sides, with fold marks across its middle. */
    public static Imposition sheet(Paper paper, FlipEdge flip) {
        Imposition flat = FlatScheme.WIDE_PAGE.on(paper, flip);
        double middle = flat.sheetWidth() / 2;
        List<FoldLine> folds = List.of(
                new FoldLine(Side.FRONT, middle, 0, middle, flat.sheetHeight(), true, 1,
                        FoldLine.Move.OVER),
                new FoldLine(Side.BACK, middle, 0, middle, flat.sheetHeight(), false, 1,
                        FoldLine.Move.UNDER));
        return new Imposition(paper, flat.scheme(), flip, flat.sheetWidth(), flat.sheetHeight(), flat.slots(),
                folds, flat.cuts(), flat.foldedWidth(), flat.foldedHeight(), flat.layers());
    }

    /**
     * Sets it on such a sheet.
     *
     * @param manuscript a title, the office beneath it, and the foot; it has no sections
     * @param own whether it is for one office's copier, and lies beside guides for that copier alone
     * @param origin where the office is written
     */
    public static SetGuide set(Manuscript manuscript, Phrases phrases, Imposition sheet, String office,
            boolean own, Span origin, TypeMetrics metrics, FigureShapes shapes) {
        return set(manuscript, phrases, sheet, office, own, origin, metrics, shapes, new WordCase(metrics));
    }

    static SetGuide set(Manuscript manuscript, Phrases phrases, Imposition sheet, String office, boolean own,
            Span origin, TypeMetrics metrics, FigureShapes shapes, WordCase words) {
        Frame frame = Frame.of(sheet.slot(1));
        Remarks remarks = new Remarks();
        Leading leading = Leading.of(TYPE, TYPE, frame.height(), metrics.capHeight(Face.REGULAR));
        Stick stick = new Stick(metrics, shapes, words, leading, frame.width(),
                Mark.Ink.BLACK, new Folio(Folio.NUMBER, 2),
                Abbreviations.in(phrases.language()), remarks);
        PrintMeFirst first = new PrintMeFirst(manuscript, phrases, sheet, own, origin, stick);
        SetPanel front = first.front(frame, office);
        SetPanel back = first.back(Frame.of(sheet.slot(2)));
        return new SetGuide(List.of(front, back), first.document, TYPE, List.of(), remarks.findings());
    }

    private SetPanel front(Frame frame, String office) {
        CheckPage page = new CheckPage(phrases, stick, origin, frame);
        double width = page.column();
        boolean onShort = sheet.flip() == FlipEdge.SHORT;
        page.begin(0);
        page.section(document, phrases.say("first.title"));
        page.runs(List.of(Run.plain(phrases.say("first.title"))), 0, width, Tag.Role.H1, Voice.HEADING, 24);
        page.runs(List.of(Run.strong(office)), 0, width, Tag.Role.PARAGRAPH, Voice.TEXT, TYPE);
        page.text(page.say("first.purpose", page.say("first.paper." + sheet.paper().id())), 0, width);
        page.text(page.say(onShort ? "first.file.short" : "first.file.long"), 0, width);
        page.down(4);
        page.step(document, 1, "first.1", 0, width);
        page.text(page.say("first.1.how"), 0, width);
        double corner = page.y() + 8 * CheckPage.MM;
        page.bar(page.left() + 4, corner, true);
        page.bar(page.left() + 4, corner + 6, false);
        page.to(corner + 14);
        double indent = 15 * CheckPage.MM;
        for (String key : List.of("right", "small", "uneven")) {
            page.text(page.say("first.1." + key), indent, width - indent);
        }
        page.down(6);
        page.drawing("ruler", "first.1.ruler", indent, 190);
        page.begin(1);
        double beside = sheet.sheetWidth() - CheckPage.ASIDE - 50 - page.left();
        page.step(document, 2, "first.2", 0, beside);
        page.text(page.say("first.2.how"), 0, beside);
        page.text(page.say("first.2.right" + whose), 0, beside);
        page.text(page.say("first.2.wrong" + whose + (onShort ? ".short" : ".long")), 0, beside);
        page.text(page.say("first.2.none"), 0, beside);
        double aside = sheet.sheetWidth() - CheckPage.ASIDE;
        page.arrow(aside, CheckPage.ARROW_AT);
        page.to(CheckPage.ARROW_AT + 74);
        page.drawing("turn", "first.2.turn", aside - page.left() - 50, 100);
        page.to(CheckPage.RINGS_AT - 66);
        page.step(document, 3, "first.3", 0, beside);
        page.text(page.say("first.3.how"), 0, beside);
        page.text(page.say("first.3.right"), 0, beside);
        page.text(page.say("first.3.wrong"), 0, beside);
        page.rings(aside, CheckPage.RINGS_AT);
        page.to(CheckPage.RINGS_AT + 40);
        page.drawing("light", "first.3.light", aside - page.left() - 50, 100);
        page.foot(manuscript, 1, page.whole(document));
        return new SetPanel(1, page.marks());
    }

    private SetPanel back(Frame frame) {
        CheckPage page = new CheckPage(phrases, stick, origin, frame);
        double width = page.column();
        page.begin(0);
        double indent = CheckPage.ASIDE + 50 - page.left();
        page.to(CheckPage.ARROW_AT - 50);
        page.step(document, 2, "first.2.back", indent, width);
        page.arrow(CheckPage.ASIDE, CheckPage.ARROW_AT);
        page.to(CheckPage.RINGS_AT - 50);
        page.step(document, 3, "first.3.back", indent, width);
        page.cross(CheckPage.ASIDE, CheckPage.RINGS_AT);
        page.begin(1);
        page.step(document, 4, "first.4", 0, width);
        page.drawing("fold", "first.4.fold", 0, 230);
        page.down(6);
        page.text(page.say("first.4.how"), 0, width);
        page.text(page.say("first.4.guides"), 0, width);
        page.down(10);
        page.step(document, 5, "first.5", 0, width);
        page.drawing("old", "first.5.old", 0, 140);
        page.down(6);
        page.text(page.say("first.5.how", manuscript.year()), 0, width);
        page.text(page.say("first.5.holds", manuscript.year(), manuscript.holdsUntil()), 0, width);
        page.down(8);
        page.runs(List.of(Run.strong(page.say("first.record"))), 0, width, Tag.Role.PARAGRAPH, Voice.TEXT,
                TYPE);
        page.blanks(width, "first.record.by", "first.record.day", "first.record.copier", "first.record.off");
        page.foot(manuscript, 2, page.whole(document));
        return new SetPanel(2, page.marks());
    }
}
