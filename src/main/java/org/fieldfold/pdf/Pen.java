package org.fieldfold.pdf;

import java.util.Optional;
import org.fieldfold.typeset.Face;
import org.fieldfold.typeset.Mark;

/**
 * What a page is set to while a frame of it is drawn: stretch, face, inks, line. It is said only when it
 * changes.
 */
final class Pen {
    private final Sheet sheet;
    private final SheetPage page;
    private final Operators out;
    private boolean inText;
    private long x;
    private long y;
    private Optional<Face> face = Optional.empty();
    private double size;
    private Mark.Ink fill = Mark.Ink.BLACK;
    private Mark.Ink line = Mark.Ink.BLACK;
    private double lineWidth = 1;

    Pen(Sheet sheet, SheetPage page) {
        this.sheet = sheet;
        this.page = page;
        this.out = page.out();
    }

    /** Goes on with, or begins, what belongs to a tag. */
    void enter(TagNode node) {
        if (page.owner().isEmpty() || page.owner().get() != node) {
            leaveText();
        }
        page.enter(node, sheet.nextPlace());
    }

    /** Goes on with, or begins, what is only seen. */
    void enterArtifact() {
        if (page.owner().isPresent()) {
            leaveText();
        }
        page.enterArtifact();
    }

    void end() {
        leaveText();
        page.leave();
    }

    void leaveText() {
        if (inText) {
            out.raw("ET\n");
            inText = false;
        }
    }

    /** Writes from a place in the frame, y up. */
    void write(Face wanted, double wantedSize, double toX, double toY, String text) {
        beginText();
        type(wanted, wantedSize);
        long nextX = Operators.thousandths(toX);
        long nextY = Operators.thousandths(toY);
        out.milli(nextX - x).milli(nextY - y).raw("Td\n");
        x = nextX;
        y = nextY;
        show(wanted, text);
    }

    /** Writes a line that runs up the page. */
    void rise(double wantedSize, double fromX, double fromY, String text) {
        leaveText();
        beginText();
        type(Face.REGULAR, wantedSize);
        out.raw("0 1 -1 0 ").op("Tm", fromX, fromY);
        show(Face.REGULAR, text);
        leaveText();
    }

    /** Writes only the outlines of the letters, with the line that is set. */
    void outline(ProofWord placed, String text) {
        leaveText();
        beginText();
        type(ProofWord.FACE, placed.size());
        out.raw("1 Tr\n").fine(placed.cos()).fine(placed.sin()).fine(-placed.sin()).fine(placed.cos())
                .op("Tm", placed.x(), placed.y());
        show(ProofWord.FACE, text);
        out.raw("0 Tr\n");
        leaveText();
    }

    private void show(Face shown, String text) {
        FrozenFace glyphs = sheet.type().face(shown);
        out.beginText();
        for (int i = 0; i < text.length(); ) {
            int codePoint = text.codePointAt(i);
            out.glyph(glyphs.glyph(codePoint, text));
            i += Character.charCount(codePoint);
        }
        out.endText();
    }

    private void beginText() {
        if (!inText) {
            out.raw("BT\n");
            inText = true;
            x = 0;
            y = 0;
        }
    }

    private void type(Face wanted, double wantedSize) {
        if (face.isEmpty() || face.get() != wanted || size != wantedSize) {
            out.raw(sheet.resources().font(wanted)).raw(" ").op("Tf", wantedSize);
            face = Optional.of(wanted);
            size = wantedSize;
        }
    }

    void fill(Mark.Ink ink) {
        if (!ink.equals(fill)) {
            InkColour.of(ink).set(out, true);
            fill = ink;
        }
    }

    void line(Mark.Ink ink, double width) {
        if (!ink.equals(line)) {
            InkColour.of(ink).set(out, false);
            line = ink;
        }
        if (width != lineWidth) {
            out.op("w", width);
            lineWidth = width;
        }
    }

    /** Dashes for the lines to come; none for an unbroken line. */
    void dashes(double... lengths) {
        leaveText();
        out.raw("[");
        for (double length : lengths) {
            out.number(length);
        }
        out.raw("]0 d\n");
    }
}
