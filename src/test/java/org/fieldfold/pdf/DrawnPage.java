package org.fieldfold.pdf;

import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
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

    /** {@code text} is empty for what is not type. */
    record Thing(int owner, String text, Rectangle2D box) {}

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
        things.add(new Thing(owners.peek(), text == null ? "\ufffd" : text, box));
    }

    @Override
    public void strokePath() {
        add(getGraphicsState().getLineWidth());
    }

    @Override
    public void fillPath(int windingRule) {
        add(0);
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
        add(getGraphicsState().getLineWidth());
    }

    private void add(double lineWidth) {
        Rectangle2D box = path.getBounds2D();
        double half = transformWidth((float) lineWidth) / 2;
        box.setRect(box.getX() - half, box.getY() - half, box.getWidth() + 2 * half, box.getHeight()
                + 2 * half);
        things.add(new Thing(owners.peek(), "", box));
        path.reset();
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
        things.add(new Thing(owners.peek(), "",
                at.createTransformedShape(new Rectangle2D.Double(0, 0, 1, 1)).getBounds2D()));
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
        add(0);
    }
}
