package org.fieldfold.pdf;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.fold.FoldSchemes;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.PanelSlot;
import org.fieldfold.fold.Paper;
import org.fieldfold.typeset.Face;
import org.fieldfold.typeset.Mark;
import org.fieldfold.typeset.SetGuide;
import org.fieldfold.typeset.SetPanel;
import org.fieldfold.typeset.Tag;

/** Guides set by hand, with every kind of mark and tag, on the panels of a real imposition. */
final class SampleGuide {
    static final String ADDRESS = "https://guides.fieldfold.example/2027/potato";
    static final String BEETLE = """
            <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 60 80"><title>a beetle</title>
            <g id="half"><path d="M30 10c14 4 24 20 22 40c-2 14-10 22-22 24z" fill="none" stroke="#000"
            stroke-width="1.4"/><circle cx="38" cy="30" r="3"/><path d="M44 34l12-6" stroke="#000"/></g>
            <use href="#half" transform="matrix(-1 0 0 1 60 0)"/></svg>
            """;
    private static final double SIZE = 8;
    private static final double LINE = 10;

    private final Imposition imposition;
    private final Tag document = Tag.document();
    private final List<SetPanel> panels = new ArrayList<>();
    private final List<Mark> marks = new ArrayList<>();
    private PanelSlot slot;
    private Tag section;
    private double y;

    private SampleGuide(Imposition imposition) {
        this.imposition = imposition;
    }

    static Imposition imposition(String scheme, Paper paper, FlipEdge flip) {
        return Imposition.of(FoldSchemes.named(scheme), paper, flip);
    }

    static Press press() {
        return Press.of(Map.of("beetle", BEETLE.getBytes(StandardCharsets.UTF_8)));
    }

    /** Prints on a press of its own, frozen for this job. */
    static byte[] print(PrintJob job) {
        Press press = press();
        press.freeze(job.characters());
        return press.print(job);
    }

    static PrintJob job(Imposition imposition) {
        return job(imposition, set(imposition), Optional.empty());
    }

    static PrintJob job(Imposition imposition, SetGuide guide, Optional<String> proof) {
        return new PrintJob("Potato pests <Leaf & tuber>", "A pocket guide for the field", "en", 2027,
                "Demonstration Extension", LocalDate.of(2027, 1, 15), guide, imposition, SheetWords.in("en"),
                proof);
    }

    /** A guide that fills each panel with something of everything. */
    static SetGuide set(Imposition imposition) {
        SampleGuide guide = new SampleGuide(imposition);
        Tag carried = null;
        for (PanelSlot slot : imposition.slots()) {
            guide.begin(slot);
            guide.heading(slot.reading());
            if (carried != null) {
                guide.words(Face.REGULAR, "it ends on the next panel.", carried, Mark.Ink.BLACK);
            }
            guide.paragraph();
            guide.list();
            guide.table();
            boolean last = slot.reading() == imposition.slots().size();
            if (!last) {
                guide.figure();
            }
            guide.box();
            guide.link();
            guide.note();
            if (last) {
                guide.code();
            }
            carried = guide.section.add(Tag.Role.PARAGRAPH);
            guide.words(Face.REGULAR, "Read " + slot.reading() + ": begun on one panel, ", carried,
                    Mark.Ink.BLACK);
            guide.panels.add(new SetPanel(slot.reading(), guide.marks));
        }
        return guide.done();
    }

    /** Panels with nothing on them. */
    static SetGuide bare(Imposition imposition) {
        return new SampleGuide(imposition).done();
    }

    /** One line of text at a place on the first panel. */
    static SetGuide line(Imposition imposition, String text, double x, double y) {
        SampleGuide guide = new SampleGuide(imposition);
        Tag tag = guide.document.add(Tag.Role.PARAGRAPH);
        guide.panels.add(new SetPanel(1, List.of(new Mark.Words(x, y, Face.REGULAR, SIZE, Mark.Ink.BLACK,
                text, Optional.of(tag)))));
        return guide.done();
    }

    private SetGuide done() {
        return new SetGuide(panels, document, SIZE, List.of(), List.of());
    }

    /**
     * A guide with as much on each panel as a pocket guide has: some 45 lines, two drawings, a table, a list.
     */
    static SetGuide full(Imposition imposition, Set<String> figures) {
        SampleGuide guide = new SampleGuide(imposition);
        List<String> drawings = List.copyOf(figures);
        int next = 0;
        for (PanelSlot slot : imposition.slots()) {
            guide.begin(slot);
            guide.heading(slot.reading());
            for (int i = 0; i < 2; i++) {
                Tag figure = guide.section.addFigure("A drawing");
                guide.marks.add(new Mark.Drawing(drawings.get(next++ % drawings.size()), guide.left()
                        + 50 * i, guide.y, 40, 40, figure));
            }
            guide.y += 50;
            for (int i = 0; i < 5; i++) {
                guide.paragraph();
                guide.list();
            }
            guide.table();
            guide.box();
            guide.link();
            guide.note();
            guide.panels.add(new SetPanel(slot.reading(), guide.marks));
        }
        return guide.done();
    }

    private void begin(PanelSlot next) {
        slot = next;
        marks.clear();
        y = next.live().top() + 14;
    }

    private double left() {
        return slot.live().left();
    }

    private void words(Face face, String text, Tag tag, Mark.Ink ink) {
        marks.add(new Mark.Words(left(), y, face, SIZE, ink, text, Optional.of(tag)));
        y += LINE;
    }

    private void heading(int reading) {
        section = document.addSection("Panel " + reading + " é");
        Tag tag = section.add(reading == 1 ? Tag.Role.H1 : Tag.Role.H2);
        marks.add(new Mark.Box(left(), y - 12, slot.liveWidth(), 16, Optional.of(new Mark.Ink("#7a2a1b")),
                Optional.empty(), 0));
        words(Face.BOLD, "Heading of panel " + reading, tag, Mark.Ink.WHITE);
        y += 6;
    }

    private void paragraph() {
        Tag tag = section.add(Tag.Role.PARAGRAPH);
        words(Face.BOLD, "Look for ", tag, Mark.Ink.BLACK);
        Tag name = tag.addSpan("la");
        words(Face.ITALIC, "Leptinotarsa decemlineata ", name, Mark.Ink.BLACK);
        words(Face.REGULAR, "on 50 stems (≥ 20 °C) \\ ¼ mile.", tag, Mark.Ink.BLACK);
    }

    private void list() {
        Tag list = section.add(Tag.Role.LIST);
        for (String line : List.of("Plant far from last year. ", "Straw between rows. ")) {
            Tag item = list.add(Tag.Role.ITEM);
            marks.add(new Mark.Words(left(), y, Face.REGULAR, SIZE, Mark.Ink.BLACK, "– ",
                    Optional.of(item.add(Tag.Role.LABEL))));
            marks.add(new Mark.Words(left() + 8, y, Face.REGULAR, SIZE, Mark.Ink.BLACK, line,
                    Optional.of(item.add(Tag.Role.ITEM_BODY))));
            y += LINE;
        }
    }

    private void table() {
        Tag table = section.add(Tag.Role.TABLE);
        Tag head = table.add(Tag.Role.TABLE_HEAD).add(Tag.Role.ROW);
        row(head, Tag.Role.HEADER_CELL, Face.BOLD, "stage ", "act at ");
        Tag body = table.add(Tag.Role.TABLE_BODY);
        row(body.add(Tag.Role.ROW), Tag.Role.CELL, Face.REGULAR, "adults ", "50 ");
        row(body.add(Tag.Role.ROW), Tag.Role.CELL, Face.REGULAR, "eggs ", "");
        marks.add(new Mark.Stroke(left(), y - 8, left() + 100, y - 8, 0.5, Mark.Ink.BLACK));
    }

    private void row(Tag row, Tag.Role role, Face face, String one, String other) {
        marks.add(new Mark.Words(left(), y, face, SIZE, Mark.Ink.BLACK, one, Optional.of(row.add(role))));
        marks.add(new Mark.Words(left() + 50, y, face, SIZE, Mark.Ink.BLACK, other,
                Optional.of(row.add(role))));
        y += LINE;
    }

    private void figure() {
        Tag figure = section.addFigure("A striped beetle seen from above");
        marks.add(new Mark.Drawing("beetle", left(), y, 45, 60, figure));
        y += 70;
        words(Face.REGULAR, "adult, 10 mm ", figure.add(Tag.Role.CAPTION), Mark.Ink.BLACK);
    }

    private void box() {
        marks.add(new Mark.Box(left(), y, 40, 12, Optional.empty(), Optional.of(Mark.Ink.BLACK), 0.6));
        marks.add(new Mark.Shape(List.of(left() + 50, y, left() + 60, y + 6, left() + 50, y + 12),
                Mark.Ink.BLACK));
        y += 24;
    }

    private void link() {
        Tag paragraph = section.add(Tag.Role.PARAGRAPH);
        Tag link = paragraph.addLink("Guide on the web");
        marks.add(new Mark.LinkArea(left(), y - 7, 100, 9, ADDRESS, link));
        words(Face.REGULAR, "guides.fieldfold.example/", link, Mark.Ink.BLACK);
        marks.add(new Mark.LinkArea(left(), y - 7, 60, 9, ADDRESS, link));
        words(Face.REGULAR, "2027/potato ", link, Mark.Ink.BLACK);
    }

    private void note() {
        words(Face.BOLD_ITALIC, "Demonstration, not advice. ", section.add(Tag.Role.NOTE), Mark.Ink.BLACK);
    }

    private void code() {
        Tag figure = section.addFigure("Square code: " + ADDRESS);
        marks.add(new Mark.SquareCode(ADDRESS, left(), y, 62, figure));
        y += 72;
    }
}
