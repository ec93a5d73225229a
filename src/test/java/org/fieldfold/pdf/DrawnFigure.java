package org.fieldfold.pdf;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;

/** A drawing on the press, and what another reader of PDFs finds of it there. */
public final class DrawnFigure {
    private static final int WHITE = 0xfa;
    /** Compressed; more than any drawing of the demo base takes by far. */
    private static final int MOST_BYTES = 8 << 20;

    private DrawnFigure() {
    }

    /** Why the press refuses it; what it takes lies on its paper and has a size. */
    public static Optional<String> problem(String svg) {
        Press press = Press.of(Map.of("x", svg.getBytes(StandardCharsets.UTF_8)));
        Optional<String> problem = Optional.ofNullable(press.problems().get("x"));
        if (problem.isEmpty() && !isSeen(artwork(svg))) {
            throw new IllegalStateException("it leaves nothing on paper, and nobody says so");
        }
        return problem;
    }

    /** Colours of what it draws, as {@code 0xrrggbb}, in order. */
    public static List<Integer> colours(String svg) {
        return things(artwork(svg)).stream().map(DrawnPage.Thing::rgb).toList();
    }

    /** Where what it draws lies, in order. */
    public static List<Rectangle2D> boxes(String svg) {
        return things(artwork(svg)).stream().map(DrawnPage.Thing::box).toList();
    }

    private static Artwork artwork(String svg) {
        return Figure.of("x", svg.getBytes(StandardCharsets.UTF_8)).render();
    }

    private static boolean isSeen(Artwork artwork) {
        return things(artwork).stream().anyMatch(thing -> !isWhite(thing.rgb())
                && thing.box().getMinX() <= artwork.unitWidth() && thing.box().getMaxX() >= 0
                && thing.box().getMinY() <= artwork.unitHeight() && thing.box().getMaxY() >= 0);
    }

    private static List<DrawnPage.Thing> things(Artwork artwork) {
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage(new PDRectangle((float) artwork.unitWidth(), (float) artwork.unitHeight()));
            document.addPage(page);
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                content.drawForm(new PDFormXObject((COSStream) readable(artwork.copy(), document)));
            }
            return DrawnPage.of(page);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static boolean isWhite(int rgb) {
        return (rgb >> 16 & 0xff) >= WHITE && (rgb >> 8 & 0xff) >= WHITE
                && (rgb & 0xff) >= WHITE;
    }

    /** The same object as the reader makes it when it opens a file. */
    private static COSBase readable(COSBase base, PDDocument document) throws IOException {
        if (base instanceof COSArray array) {
            COSArray copy = new COSArray();
            for (COSBase item : array) {
                copy.add(readable(item, document));
            }
            return copy;
        }
        if (!(base instanceof COSDictionary dictionary)) {
            return base;
        }
        COSDictionary copy = base instanceof StreamObject ? document.getDocument().createCOSStream()
                : new COSDictionary();
        for (Map.Entry<COSName, COSBase> entry : dictionary.entrySet()) {
            copy.setItem(entry.getKey(), readable(entry.getValue(), document));
        }
        if (base instanceof StreamObject stream) {
            if (stream.data().length > MOST_BYTES) {
                throw new IllegalStateException("it became " + stream.data().length + " bytes");
            }
            try (OutputStream out = ((COSStream) copy).createRawOutputStream()) {
                out.write(stream.data());
            }
        }
        return copy;
    }
}
