package org.fieldfold.pdf;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDVectorFont;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;

/**
 * What a page shows: every letter, line and area with its box on the page and the marked stretch that it is
 * in.
 */
final class DrawnPage extends PDFGraphicsStreamEngine {
    /** Neither tagged nor an artifact. */
    static final int UNMARKED = -2;
    static final int ARTIFACT = -1;

    /**
     * In the order in which it is drawn.
     *
     * @param text empty for what is not type; the replacement character for a glyph that says nothing
     * @param turn by which type is turned, in degrees clockwise
     * @param rgb colour, as {@code 0xrrggbb}
     * @param filled whether it is an area; otherwise a line, or the lines around an area
     * @param shape what is covered by ink, where that is not the box
     */
    record Thing(int owner, String text, Rectangle2D box, int turn, int rgb, boolean filled, Shape shape) {
        boolean isType() {
            return !text.isBlank();
        }
    }

    private final List<Thing> things = new ArrayList<>();
    private final Deque<Integer> owners = new ArrayDeque<>(List.of(UNMARKED));
    private final GeneralPath path = new GeneralPath();

    private DrawnPage(PDPage page) {
        super(page);
    }

    static List<Thing> of(PDPage page) throws IOException {
        DrawnPage drawn = new DrawnPage(page);
        drawn.processPage(page);
        return drawn.things;
    }

    @Override
    public void beginMarkedContentSequence(COSName tag, COSDictionary properties) {
        int mcid = properties == null ? ARTIFACT : properties.getInt(COSName.MCID, ARTIFACT);
        owners.push(mcid >= 0 ? mcid : tag.equals(COSName.getPDFName("Artifact")) ? ARTIFACT : owners.peek());
    }

    @Override
    public void endMarkedContentSequence() {
        owners.pop();
    }

    @Override
    protected void showGlyph(Matrix matrix, PDFont font, int code, Vector displacement) throws IOException {
        String text = font.toUnicode(code);
        Rectangle2D box;
        GeneralPath outline = ((PDVectorFont) font).getNormalizedPath(code);
        if (outline.getBounds2D().isEmpty()) {
            box = new Rectangle2D.Double(matrix.getTranslateX(), matrix.getTranslateY(), 0, 0);
        } else {
            AffineTransform at = matrix.createAffineTransform();
            at.scale(0.001, 0.001);
            box = outline.createTransformedShape(at).getBounds2D();
        }
        int turn = Math.floorMod((int) Math.round(Math.toDegrees(
                Math.atan2(-matrix.getShearY(), matrix.getScaleX()))), 360);
        // code and glyph are the same number in the type that we embed, and glyph 0 is the empty box
        things.add(new Thing(owners.peek(), text == null || code == 0 ? "\ufffd" : text, box, turn,
                rgb(getGraphicsState().getNonStrokingColor()), true, box));
    }

    @Override
    public void strokePath() {
        add(false);
        path.reset();
    }

    @Override
    public void fillPath(int windingRule) {
        add(true);
        path.reset();
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
        add(true);
        add(false);
        path.reset();
    }

    private void add(boolean filled) {
        Rectangle2D box = path.getBounds2D();
        double half = filled ? 0 : transformWidth(getGraphicsState().getLineWidth()) / 2;
        box.setRect(box.getX() - half, box.getY() - half, box.getWidth() + 2 * half, box.getHeight()
                + 2 * half);
        things.add(new Thing(owners.peek(), "", box, 0, rgb(filled ? getGraphicsState().getNonStrokingColor()
                : getGraphicsState().getStrokingColor()), filled, filled ? new GeneralPath(path) : box));
    }

    private static int rgb(PDColor colour) {
        try {
            return colour.toRGB();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        path.moveTo(p0.getX(), p0.getY());
        path.lineTo(p1.getX(), p1.getY());
        path.lineTo(p2.getX(), p2.getY());
        path.lineTo(p3.getX(), p3.getY());
        path.closePath();
    }

    @Override
    public void drawImage(PDImage image) {
        AffineTransform at = getGraphicsState().getCurrentTransformationMatrix().createAffineTransform();
        Rectangle2D box = at.createTransformedShape(new Rectangle2D.Double(0, 0, 1, 1)).getBounds2D();
        things.add(new Thing(owners.peek(), "", box, 0, 0, true, box));
    }

    @Override
    public void moveTo(float x, float y) {
        path.moveTo(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
        path.lineTo(x, y);
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        path.curveTo(x1, y1, x2, y2, x3, y3);
    }

    @Override
    public Point2D getCurrentPoint() {
        return path.getCurrentPoint();
    }

    @Override
    public void closePath() {
        path.closePath();
    }

    @Override
    public void endPath() {
        path.reset();
    }

    @Override
    public void clip(int windingRule) {
        // what is clipped away would only make boxes larger than they are
    }

    @Override
    public void shadingFill(COSName shadingName) {
        add(true);
    }
}
