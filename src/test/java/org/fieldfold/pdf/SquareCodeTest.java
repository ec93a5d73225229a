package org.fieldfold.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.LuminanceSource;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.fieldfold.Outside;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.Paper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SquareCodeTest {
    /**
     * Most bytes at level M in versions 1 to 10: ISO/IEC 18004, table 7; the same from the npm package
     * qrcode.
     */
    private static final int[] CAPACITY = {14, 26, 42, 62, 84, 106, 122, 152, 180, 213};

    @Test
    void holdsAsMuchAsTheStandardSays() {
        for (int version = 1; version <= CAPACITY.length; version++) {
            int modules = 17 + 4 * version;
            assertEquals(modules + 8, SquareCodePattern.of("a".repeat(CAPACITY[version - 1])).side());
            assertEquals(modules + 4 + 8, SquareCodePattern.of("a".repeat(CAPACITY[version - 1] + 1)).side());
        }
    }

    @Test
    void boxesDoNotOverlapAndKeepTheQuietZone() {
        SquareCodePattern pattern = SquareCodePattern.of(SampleGuide.ADDRESS);
        boolean[][] dark = new boolean[pattern.side()][pattern.side()];
        for (SquareCodePattern.Dark box : pattern.boxes()) {
            for (int y = box.y(); y < box.y() + box.height(); y++) {
                for (int x = box.x(); x < box.x() + box.width(); x++) {
                    assertEquals(false, dark[y][x]);
                    dark[y][x] = true;
                    int last = pattern.side() - SquareCodePattern.QUIET;
                    assertEquals(true, x >= 4 && y >= 4 && x < last && y < last);
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "https://é.example", "a\nb"})
    void refusesWhatIsNoAddress(String address) {
        assertThrows(IllegalArgumentException.class, () -> SquareCodePattern.of(address));
    }

    /**
     * Read back from the printed page, on upright and on turned panels, by the reader of the same library.
     */
    @ParameterizedTest
    @ValueSource(strings = {"letter", "map"})
    void isReadFromThePage(String scheme) throws IOException, ReaderException {
        BufferedImage page = page(scheme);
        LuminanceSource grey = new RGBLuminanceSource(page.getWidth(), page.getHeight(),
                page.getRGB(0, 0, page.getWidth(), page.getHeight(), null, 0, page.getWidth()));
        String text = new QRCodeReader().decode(new BinaryBitmap(new HybridBinarizer(grey))).getText();
        assertEquals(SampleGuide.ADDRESS, text);
    }

    /** A second opinion from zbar, where it is installed. */
    @Test
    void isReadByAnotherReader(@TempDir Path folder) throws IOException, InterruptedException {
        Outside.need("zbarimg");
        Path picture = folder.resolve("page.png");
        ImageIO.write(page("letter"), "png", picture.toFile());
        String read = Outside.run("zbarimg", "-q", "--raw", picture.toString()).text();
        assertTrue(read.lines().anyMatch(SampleGuide.ADDRESS::equals), read);
    }

    private static BufferedImage page(String scheme) throws IOException {
        Imposition imposition = SampleGuide.imposition(scheme, Paper.LETTER, FlipEdge.SHORT);
        List<BufferedImage> pages = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(SampleGuide.print(SampleGuide.job(imposition)))) {
            int last = imposition.slots().get(imposition.slots().size() - 1).side().ordinal();
            pages.add(new PDFRenderer(document).renderImageWithDPI(last, 150));
        }
        return pages.get(0);
    }
}
