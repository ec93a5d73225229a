package org.fieldfold.handbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.view.ViewBox;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.fieldfold.entry.Figure;
import org.fieldfold.entry.Placed;
import org.junit.jupiter.api.Test;

class TerseSvgTest {
    /** Pixels along a drawing's longer side. */
    private static final int PIXELS = 400;
    private static final int SQUARE = 10;

    /** Both are painted by a reader of SVG that is not ours, JSVG, and the pictures laid over each other. */
    @Test
    void everyShippedDrawingPaintsTheSame() throws IOException {
        long before = 0;
        long after = 0;
        for (Placed<Figure> placed : Shipped.BASE.figures().values()) {
            String drawn = new String(placed.value().bytes(), StandardCharsets.UTF_8);
            String terse = new TerseSvg(drawn).encoded();
            String seen = URLDecoder.decode(terse.replace("+", "%2b"), StandardCharsets.UTF_8);
            Html.parse(new HandbookFile(placed.value().id(), seen.getBytes(StandardCharsets.UTF_8)));
            assertFalse(terse.contains("\""), placed.value().id());
            double apart = apart(painted(drawn), painted(seen));
            assertTrue(apart < 0.1, placed.value().id() + ": " + apart);
            before += drawn.length();
            after += terse.length();
        }
        assertTrue(before > 0 && after < 0.8 * before, after + " of " + before);
    }

    @Test
    void theComparisonSeesAMissingLine() {
        String line = "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 100 100'><path stroke='black' "
                + "d='M10 10L90 90'/></svg>";
        assertTrue(apart(painted(line), painted(line.replace("90 90", "50 50"))) > 0.1);
    }

    private static BufferedImage painted(String svg) {
        SVGDocument document = new SVGLoader().load(new ByteArrayInputStream(
                svg.getBytes(StandardCharsets.UTF_8)), null, LoaderContext.createDefault());
        BufferedImage image = new BufferedImage(PIXELS, PIXELS, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D pen = image.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, PIXELS, PIXELS);
        document.render(null, pen, new ViewBox(0, 0, PIXELS, PIXELS));
        pen.dispose();
        return image;
    }

    /** How unlike the ink is in the square in which it is most unlike: 0 the same, 1 black on white. */
    private static double apart(BufferedImage one, BufferedImage other) {
        double most = 0;
        for (int y = 0; y < PIXELS; y += SQUARE) {
            for (int x = 0; x < PIXELS; x += SQUARE) {
                most = Math.max(most, Math.abs(ink(one, x, y) - ink(other, x, y)));
            }
        }
        return most;
    }

    private static double ink(BufferedImage image, int left, int top) {
        double sum = 0;
        for (int y = top; y < top + SQUARE; y++) {
            for (int x = left; x < left + SQUARE; x++) {
                sum += 1 - image.getRaster().getSample(x, y, 0) / 255.0;
            }
        }
        return sum / SQUARE / SQUARE;
    }

    @Test
    void putsEveryPointOnTheGridByItself() {
        assertEquals("<svg viewBox='0 0 600 300'><path d='m6 12 2 4c-6-4-1 0-12 6h18v-6zm6 0h0' "
                + "stroke-width='8.4'/><use transform='translate(3 6) scale(-1 1)'/></svg>",
                new TerseSvg("<svg viewBox=\"0 0 100 50\"><path d=\"M1 2l.4 .6c-1 -.6,-.2 0,-2 1 h3 V 2.6z "
                        + "M2,2 h0\" stroke-width=\"1.4\"/><use transform=\"translate(0.5 1) "
                        + "scale(-1 1)\"/></svg>").encoded());
    }

    @Test
    void leavesOutBlanksAndNoughtsThatNobodyNeeds() {
        assertEquals("<svg><path d='M.5-1c2 .5.5 1 10 0z' id='_0'/><use href='%23_0'/></svg>",
                new TerseSvg("<svg><title>x</title>\n<path d=\"M 0.5 -1 c 2 0.5 0.5 1 10 0 z\" "
                        + "id=\"half\"/>\n<use href=\"#half\"/></svg>\n").encoded());
    }

    @Test
    void cannotEndTheStyleSheetThatItStandsIn() {
        String terse = new TerseSvg("<svg><style>a{}</Style>]]></svg>").encoded();
        assertFalse(terse.toLowerCase(java.util.Locale.ROOT).contains("</style") || terse.contains("]]>"),
                terse);
    }

    @Test
    void isNotHurriedIntoAnEndlessLoopByBrokenDrawings() {
        for (String broken : List.of("", "<", "<svg a=\"", "<svg d='1 2", "<title>", "'\"'\"",
                "<svg d=' , 0. 0.'/>")) {
            assertTrue(new TerseSvg(broken).encoded().length() < 40, broken);
        }
    }
}
