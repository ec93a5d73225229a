package org.fieldfold.pdf;

import org.fieldfold.fold.Insets;
import org.fieldfold.typeset.Mark;
import org.fieldfold.typeset.Tag;

/**
 * Draws marks in one frame of a page. What the page is set to (ink, face, line) is said only when it changes.
 */
final class PanelWriter {
    private static final double ASCENT = 0.75;
    private static final double DESCENT = 0.25;

    private final Sheet sheet;
    private final SheetPage page;
    private final PanelFrame frame;
    private final Operators out;
    private final Pen pen;

    private PanelWriter(Sheet sheet, SheetPage page, PanelFrame frame) {
        this.sheet = sheet;
        this.page = page;
        this.frame = frame;
        this.out = page.out();
        this.pen = new Pen(sheet, page);
    }

    /** Begins to draw; {@link #end} must follow. */
    static PanelWriter begin(Sheet sheet, SheetPage page, PanelFrame frame) {
        PanelWriter writer = new PanelWriter(sheet, page, frame);
        writer.out.raw("q\n").op("cm", frame.a(), frame.b(), frame.c(), frame.d(), frame.e(), frame.f());
        return writer;
    }

    void end() {
        pen.end();
        out.raw("Q\n");
    }

    void draw(Mark mark) {
        if (mark instanceof Mark.Words words) {
            words(words);
        } else if (mark instanceof Mark.Stroke stroke) {
            stroke(stroke);
        } else if (mark instanceof Mark.Box box) {
            box(box);
        } else if (mark instanceof Mark.Shape shape) {
            shape(shape);
        } else if (mark instanceof Mark.Drawing drawing) {
            drawing(drawing);
        } else if (mark instanceof Mark.SquareCode code) {
            squareCode(code);
        } else if (mark instanceof Mark.Bars bars) {
            enterFigure(bars.tag(), bars.x(), bars.y(), bars.width(), bars.height());
            bars.boxes().forEach(this::paint);
        } else if (mark instanceof Mark.LinkArea link) {
            TagNode node = sheet.node(link.tag());
            node.add(new TagNode.LinkPlace(sheet.nextPlace(), page.index(),
                    frame.box(link.x(), link.y(), link.width(), link.height()), link.address()));
        }
    }

    private void words(Mark.Words words) {
        if (words.text().isEmpty()) {
            return;
        }
        if (words.tag().isPresent()) {
            TagNode node = sheet.node(words.tag().get());
            pen.enter(node);
            node.say(words.text());
            if (node.inFigure()) {
                // the space at a line's end, which is there to be read, has no ink
                String seen = words.text().stripTrailing();
                node.cover(frame.box(words.x(), words.baseline() - ASCENT * words.size(),
                        sheet.type().metrics().width(words.face(), seen) * words.size() / 1000,
                        (ASCENT + DESCENT) * words.size()));
            }
        } else {
            pen.enterArtifact();
        }
        pen.fill(words.ink());
        pen.write(words.face(), words.size(), words.x(), up(words.baseline()), words.text());
    }

    private void stroke(Mark.Stroke stroke) {
        pen.enterArtifact();
        pen.leaveText();
        pen.line(stroke.ink(), stroke.width());
        out.op("m", stroke.x1(), up(stroke.y1())).op("l", stroke.x2(), up(stroke.y2())).raw("S\n");
    }

    private void box(Mark.Box box) {
        pen.enterArtifact();
        pen.leaveText();
        paint(box);
    }

    private void paint(Mark.Box box) {
        box.fill().ifPresent(pen::fill);
        box.outline().ifPresent(ink -> pen.line(ink, box.lineWidth()));
        if (box.fill().isPresent() || box.outline().isPresent()) {
            out.op("re", box.x(), up(box.y() + box.height()), box.width(), box.height());
            out.raw(box.outline().isEmpty() ? "f\n" : box.fill().isEmpty() ? "S\n" : "B\n");
        }
    }

    private void shape(Mark.Shape shape) {
        pen.enterArtifact();
        pen.leaveText();
        pen.fill(shape.fill());
        for (int i = 0; i + 1 < shape.points().size(); i += 2) {
            out.op(i == 0 ? "m" : "l", shape.points().get(i), up(shape.points().get(i + 1)));
        }
        out.raw("h f\n");
    }

    private void drawing(Mark.Drawing drawing) {
        Artwork artwork = sheet.artwork(drawing.figure());
        enterFigure(drawing.tag(), drawing.x(), drawing.y(), drawing.width(), drawing.height());
        out.raw("q\n").op("cm", 1, 0, 0, 1, drawing.x(), up(drawing.y() + drawing.height()));
        out.fine(drawing.width() / artwork.unitWidth()).raw("0 0 ")
                .fine(drawing.height() / artwork.unitHeight()).raw("0 0 cm\n");
        out.raw(sheet.resources().figure(drawing.figure())).raw(" Do\nQ\n");
    }

    private void squareCode(Mark.SquareCode code) {
        SquareCodePattern pattern = sheet.art().squareCode(code.address());
        enterFigure(code.tag(), code.x(), code.y(), code.size(), code.size());
        pen.fill(Mark.Ink.BLACK);
        double module = code.size() / pattern.side();
        for (SquareCodePattern.Dark dark : pattern.boxes()) {
            // from edge to edge, so that what touches shares the rounded number
            long left = Operators.thousandths(code.x() + dark.x() * module);
            long right = Operators.thousandths(code.x() + (dark.x() + dark.width()) * module);
            long low = Operators.thousandths(up(code.y() + (dark.y() + dark.height()) * module));
            long high = Operators.thousandths(up(code.y() + dark.y() * module));
            out.milli(left).milli(low).milli(right - left).milli(high - low).raw("re\n");
        }
        out.raw("f\n");
    }

    private void enterFigure(Tag tag, double x, double y, double width, double height) {
        TagNode node = sheet.node(tag);
        pen.enter(node);
        pen.leaveText();
        node.cover(frame.box(x, y, width, height));
    }

    /** A word across the panel in outline letters, so thin that whatever is printed over them can be read. */
    void proof(String word, Insets around) {
        pen.enterArtifact();
        ProofWord placed = ProofWord.of(word, sheet.type().metrics(),
                frame.width() - around.left() - around.right(),
                frame.height() - around.top() - around.bottom()).moved(around.left(), around.bottom());
        pen.line(Mark.Ink.BLACK, ProofWord.LINE);
        pen.outline(placed, word);
    }

    /** Type whose line runs up the page instead of across it. */
    void rising(double x, double y, double size, String text) {
        pen.enterArtifact();
        pen.fill(Mark.Ink.BLACK);
        pen.rise(size, x, up(y), text);
    }

    /** Dashes for the lines to come; none for an unbroken line. */
    void dashes(double... lengths) {
        pen.dashes(lengths);
    }

    private double up(double y) {
        return frame.height() - y;
    }
}
