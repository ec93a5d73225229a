package org.fieldfold.pdf;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.DocumentLimits;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.parser.resources.ResourcePolicy;
import com.github.weisj.jsvg.renderer.NullPlatformSupport;
import com.github.weisj.jsvg.view.ViewBox;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * A drawing in SVG, taken over as paths.
 *
 * @param width in the drawing's own units
 */
record VectorFigure(String id, byte[] content, double width, double height) implements Figure {
    /** Large enough for numbers of few decimals to be exact at print size. */
    private static final double LONG_SIDE = 1000;
    /** No narrower than what a content base may hold: depth of groups, depth of uses, shapes. */
    private static final DocumentLimits LIMITS = new DocumentLimits(300, 300, 40_000);
    /** What it would say of a drawing on the terminal is said as a finding. Held, or it would be forgotten. */
    private static final Logger SILENT = Logger.getLogger("com.github.weisj.jsvg");

    static {
        SILENT.setLevel(Level.OFF);
    }

    static VectorFigure of(String id, byte[] content) {
        SvgReading.Size size = SvgReading.read(id, content);
        return new VectorFigure(id, content, size.width(), size.height());
    }

    @Override
    public double aspect() {
        return width / height;
    }

    @Override
    public Artwork render() {
        double scale = LONG_SIDE / Math.max(width, height);
        float w = (float) (width * scale);
        float h = (float) (height * scale);
        LoaderContext context = LoaderContext.builder().externalResourcePolicy(ResourcePolicy.DENY_ALL)
                .documentLimits(LIMITS).build();
        SVGDocument drawing = new SVGLoader().load(new ByteArrayInputStream(content),
                URI.create("figure:" + Integer.toHexString(id.hashCode())), context);
        if (drawing == null) {
            throw new IllegalArgumentException("figure " + id
                    + ": expected a drawing in SVG, found none that reads");
        }
        try (PDDocument scratch = new PDDocument()) {
            PdfBoxGraphics2D paper = new PdfBoxGraphics2D(scratch, w, h);
            Ink ink = new Ink(w, h);
            paper.setDrawControl(ink);
            drawing.renderWithPlatform(NullPlatformSupport.INSTANCE, paper, new ViewBox(w, h));
            paper.dispose();
            if (!ink.left()) {
                throw new IllegalArgumentException("figure " + id
                        + ": expected a drawing that leaves ink on paper, found none that is seen");
            }
            COSDictionary form = paper.getXFormObject().getCOSObject();
            form.removeItem(COSName.getPDFName("FormType"));
            return new Artwork(Frozen.of(form), w, h);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
