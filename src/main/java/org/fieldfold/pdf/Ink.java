package org.fieldfold.pdf;

import de.rototor.pdfbox.graphics2d.IPdfBoxGraphics2DDrawControl;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.image.BufferedImage;

/**
 * Watches a drawing while it becomes paths, until something of it has come down on the paper: an area or a line
 * that is neither white nor out of sight. What is covered later by white is not asked.
 */
final class Ink implements IPdfBoxGraphics2DDrawControl {
    /** Dots along the paper's longer side: what sets none of them is not seen in a figure of a foldout. */
    private static final int DOTS = 512;
    private static final int WHITE = 250;

    private final BufferedImage paper;
    private final double scale;
    private boolean left;

    /** @param width of the paper, in the units of the drawing surface */
    Ink(double width, double height) {
        this.scale = DOTS / Math.max(width, height);
        this.paper = new BufferedImage((int) Math.ceil(width * scale), (int) Math.ceil(height * scale),
                BufferedImage.TYPE_BYTE_BINARY);
    }

    /** Whether something is seen. */
    boolean left() {
        return left;
    }

    @Override
    public Shape transformShapeBeforeFill(Shape shape, IDrawControlEnv env) {
        return shape;
    }

    @Override
    public Shape transformShapeBeforeDraw(Shape shape, IDrawControlEnv env) {
        return shape;
    }

    @Override
    public void afterShapeFill(Shape shape, IDrawControlEnv env) {
        put(shape, env, true);
    }

    @Override
    public void afterShapeDraw(Shape shape, IDrawControlEnv env) {
        put(shape, env, false);
    }

    private void put(Shape shape, IDrawControlEnv env, boolean filled) {
        PdfBoxGraphics2D from = env.getGraphics();
        if (left || env.getPaint() instanceof Color colour && isFaint(colour)
                || from.getComposite() instanceof AlphaComposite alpha && alpha.getAlpha() == 0) {
            return;
        }
        Graphics2D dots = paper.createGraphics();
        dots.scale(scale, scale);
        dots.transform(from.getTransform());
        dots.setClip(from.getClip());
        dots.setColor(Color.WHITE);
        if (filled) {
            dots.fill(shape);
        } else {
            // without its dashes: there may be any number of them
            BasicStroke line = from.getStroke() instanceof BasicStroke given ? given : new BasicStroke();
            dots.setStroke(new BasicStroke(line.getLineWidth(), line.getEndCap(), line.getLineJoin(),
                    line.getMiterLimit()));
            dots.draw(shape);
        }
        dots.dispose();
        left = isMarked();
    }

    private static boolean isFaint(Color colour) {
        return colour.getAlpha() == 0
                || Math.min(colour.getRed(), Math.min(colour.getGreen(), colour.getBlue())) >= WHITE;
    }

    private boolean isMarked() {
        int[] dots = paper.getRaster().getPixels(0, 0, paper.getWidth(), paper.getHeight(), (int[]) null);
        for (int dot : dots) {
            if (dot != 0) {
                return true;
            }
        }
        return false;
    }
}
