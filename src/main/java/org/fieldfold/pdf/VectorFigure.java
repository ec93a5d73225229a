package org.fieldfold.pdf;

import com.github.weisj.jsvg.SVGDocument;
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
                .build();
        SVGDocument drawing = new SVGLoader().load(new ByteArrayInputStream(content),
                URI.create("figure:" + Integer.toHexString(id.hashCode())), context);
        if (drawing == null) {
            throw new IllegalArgumentException("figure " + id
                    + ": expected a drawing in SVG, found none that reads");
        }
        try (PDDocument scratch = new PDDocument()) {
            PdfBoxGraphics2D paper = new PdfBoxGraphics2D(scratch, w, h);
            drawing.renderWithPlatform(NullPlatformSupport.INSTANCE, paper, new ViewBox(w, h));
            paper.dispose();
            COSDictionary form = paper.getXFormObject().getCOSObject();
            form.removeItem(COSName.getPDFName("FormType"));
            return new Artwork(Frozen.of(form), w, h);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
