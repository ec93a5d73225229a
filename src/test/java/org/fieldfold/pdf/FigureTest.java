package org.fieldfold.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.Paper;
import org.fieldfold.typeset.Mark;
import org.fieldfold.typeset.SetGuide;
import org.fieldfold.typeset.SetPanel;
import org.fieldfold.typeset.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FigureTest {
    private static final Imposition MAP = SampleGuide.imposition("map", Paper.LETTER, FlipEdge.SHORT);

    private static byte[] print(byte[] figure, double width, double height) {
        return print(Press.of(Map.of("it", figure)), width, height);
    }

    private static byte[] print(Press press, double width, double height) {
        Tag document = Tag.document();
        Tag tag = document.addFigure("what it shows");
        SetGuide guide = new SetGuide(List.of(new SetPanel(1, List.of(new Mark.Drawing("it", 30, 40, width,
                height, tag)))), document, 8, List.of(), List.of());
        PrintJob job = SampleGuide.job(MAP, guide, Optional.empty());
        press.freeze(job.characters());
        return press.print(job);
    }

    private static byte[] svg(String inside) {
        return ("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 40 20\">" + inside + "</svg>")
                .getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] picture(String format, int type) throws IOException {
        BufferedImage image = new BufferedImage(40, 20, type);
        Graphics2D paint = image.createGraphics();
        paint.setColor(Color.RED);
        paint.fillRect(0, 0, 20, 20);
        paint.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        assertTrue(ImageIO.write(image, format, out));
        return out.toByteArray();
    }

    @Test
    void drawingsComeOutAsPathsWhereTheyArePlaced() throws IOException {
        byte[] pdf = print(svg("<defs><linearGradient id=\"a\"><stop offset=\"0\" stop-color=\"#f00\"/>"
                + "<stop offset=\"1\" stop-color=\"#00f\"/></linearGradient><clipPath id=\"c\">"
                + "<circle cx=\"10\" cy=\"10\" r=\"9\"/></clipPath></defs>"
                + "<rect width=\"20\" height=\"20\" fill=\"#000\"/><path d=\"M20 0h20v20z\" fill=\"url(#a)\""
                + " opacity=\"0.5\"/><g clip-path=\"url(#c)\"><path d=\"M0 0h9v9\" stroke=\"#0a0\"/></g>"),
                80, 40);
        assertEquals(List.of(), Conformance.failures(pdf));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PageBox box = PanelFrame.of(MAP.slot(1), MAP.sheetHeight()).box(30, 40, 80, 40);
            BufferedImage page = new PDFRenderer(document).renderImageWithDPI(MAP.slot(1).side().ordinal(),
                    72);
            int y = (int) (MAP.sheetHeight() - (box.bottom() + box.top()) / 2);
            int left = page.getRGB((int) box.left() + 8, y) & 0xffffff;
            int outside = page.getRGB((int) box.left() - 4, y) & 0xffffff;
            int right = page.getRGB((int) box.right() - 8, y) & 0xffffff;
            int black = MAP.slot(1).rotation() == 180 ? right : left;
            assertEquals(0, black);
            assertEquals(0xffffff, outside);
        }
    }

    /** Drawings of an earlier press, and how often they were asked for and kept. */
    private static final class Shelf implements ArtStore {
        private final Map<String, byte[]> kept = new TreeMap<>();
        private int drawn;

        @Override
        public Optional<byte[]> known(String figure) {
            return Optional.ofNullable(kept.get(figure));
        }

        @Override
        public void keep(String figure, byte[] bytes) {
            kept.put(figure, bytes);
            drawn++;
        }
    }

    @Test
    void aDrawingThatAnEarlierPressKeptGivesTheSameBytes() throws IOException {
        List<byte[]> all = new ArrayList<>(List.of(svg("<defs><radialGradient id=\"a\"><stop offset=\"0.3\" "
                + "stop-color=\"#f00\"/><stop offset=\"1\" stop-color=\"#00f\"/></radialGradient><clipPath id=\"c\">"
                + "<circle cx=\"10.123456\" cy=\"1e1\" r=\"9\"/></clipPath></defs><path d=\"M20 0h20v20z\" "
                + "fill=\"url(#a)\" opacity=\"0.37\"/><g clip-path=\"url(#c)\" stroke-dasharray=\"1 .3\"><path "
                + "d=\"M0 0h9v9\" stroke=\"#0a0\"/></g>")));
        try (DirectoryStream<Path> figures = Files.newDirectoryStream(Path.of("content/figures"), "*.svg")) {
            for (Path figure : figures) {
                all.add(Files.readAllBytes(figure));
            }
        }
        for (byte[] figure : all) {
            Shelf shelf = new Shelf();
            byte[] without = print(figure, 80, 40);
            for (int press = 0; press < 2; press++) {
                Press one = Press.of(Map.of("it", figure), shelf);
                assertEquals(Press.of(Map.of("it", figure)).shapes().aspect("it"), one.shapes().aspect("it"));
                assertArrayEquals(without, print(one, 80, 40));
                assertEquals(1, shelf.drawn, "it is drawn by the first press alone");
            }
            shelf.kept.put("it", new byte[] {1, 2, 3});
            assertArrayEquals(without, print(Press.of(Map.of("it", figure), shelf), 80, 40));
            assertEquals(2, shelf.drawn, "what does not read is drawn again");
        }
    }

    @ParameterizedTest
    @CsvSource({"png, 1", "png, 2", "png, 10", "png, 13", "jpg, 1", "jpg, 10"})
    void picturesKeepBothStandards(String format, int type) throws IOException {
        byte[] figure = picture(format, type);
        assertEquals(2, Press.of(Map.of("it", figure)).shapes().aspect("it"));
        assertEquals(List.of(), Conformance.failures(print(figure, 80, 40)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"<text>x</text>", "<pattern/>", "<g mask=\"url(#m)\"/>",
            "<rect filter=\"url(#f)\"/>",
            "<image href=\"http://fieldfold.example/x.png\"/>", "<use href=\"other.svg#a\"/>", "<script/>",
            "<foreignObject/>", "<g>"})
    void refusesWhatIsNotPrinted(String inside) {
        String message = Press.of(Map.of("it", svg(inside))).problems().get("it");
        assertTrue(message.startsWith("figure it"), message);
        assertThrows(IllegalArgumentException.class, () -> Press.of(Map.of("it", svg(inside))).shapes()
                .aspect("it"));
    }

    @Test
    void refusesWhatIsNoFigure() {
        for (String text : List.of("", "no", "<html/>", "<svg xmlns=\"http://www.w3.org/2000/svg\"/>",
                "<!DOCTYPE svg [<!ENTITY a SYSTEM \"file:/etc/hostname\">]><svg "
                + "viewBox=\"0 0 1 1\">&a;</svg>")) {
            assertEquals(1, Press.of(Map.of("it", text.getBytes(StandardCharsets.UTF_8))).problems().size(), text);
        }
        byte[] cut = new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10, 0};
        assertEquals(1, Press.of(Map.of("it", cut)).problems().size());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "<defs><path d=\"M0 0h9v9z\"/></defs>", "<path d=\"M0 0h9\"/>", "<path d=\"\"/>",
            "<path d=\"M0 0h9v9\" fill=\"none\"/>", "<rect width=\"9\" height=\"9\" fill=\"#fff\"/>",
            "<rect width=\"9\" height=\"9\" opacity=\"0\"/>", "<g display=\"none\"><circle r=\"5\"/></g>",
            "<rect x=\"41\" width=\"9\" height=\"9\"/>", "<circle r=\".001\"/>",
            "<g transform=\"scale(0)\"><circle r=\"5\"/></g>", "<clipPath id=\"c\"/><rect width=\"9\" height=\"9\" "
            + "clip-path=\"url(#c)\"/>"})
    void aDrawingWithoutInkIsFound(String inside) {
        assertEquals(Map.of("it", "figure it: expected a drawing that leaves ink on paper, found none that is seen"),
                Press.of(Map.of("it", svg(inside))).problems());
    }

    @ParameterizedTest
    @ValueSource(strings = {"<path d=\"M0 0h9\" stroke=\"#000\"/>", "<path d=\"M0 0h9v9\"/>",
            "<rect width=\"9\" height=\"9\" fill=\"#fff\" stroke=\"#777\"/>",
            "<path d=\"M0 0h9\" stroke=\"#000\" stroke-width=\"0\"/>", "<rect x=\"-9\" width=\"10\" height=\"9\"/>",
            "<path d=\"M1 1l.01 0\" stroke=\"#000\" stroke-linecap=\"round\" fill=\"none\"/>"})
    void aLittleInkIsEnough(String inside) {
        assertEquals(Map.of(), Press.of(Map.of("it", svg(inside))).problems());
    }

    /** The drawing library throws something else for each; content's own check refuses such values before. */
    @ParameterizedTest
    @ValueSource(strings = {"<rect width=\"9\" height=\"9\" stroke=\"#000\" stroke-width=\"-1\"/>",
            "<path d=\"M0 0h9\" stroke=\"#000\" stroke-dasharray=\"1\" pathLength=\"1e-30\"/>",
            "<polygon points=\"1\"/>", "<g transform=\"scale()\"/>",
            "<clipPath id=\"c\"><rect id=\"r\" clip-path=\"url(#c)\"/></clipPath><use href=\"#r\"/>"})
    void whatTheDrawingLibraryBreaksOnIsFound(String inside) {
        assertEquals(1, Press.of(Map.of("it", svg(inside))).problems().size());
    }

    /** Every drawing of the content base that ships: as paths only, on sheets that keep both standards. */
    @Test
    void theDrawingsThatShipArePrintedAsPaths() throws IOException {
        Map<String, byte[]> figures = new TreeMap<>();
        try (DirectoryStream<Path> files = Files.newDirectoryStream(Path.of("content/figures"), "*.svg")) {
            for (Path file : files) {
                figures.put(file.getFileName().toString(), Files.readAllBytes(file));
            }
        }
        assertTrue(figures.size() > 25, "drawings: " + figures.size());
        Press press = Press.of(figures);
        Tag document = Tag.document();
        List<Mark> marks = new ArrayList<>();
        Imposition sheet = SampleGuide.imposition("half", Paper.A3, FlipEdge.SHORT);
        for (String id : figures.keySet()) {
            double side = 48;
            double aspect = press.shapes().aspect(id);
            marks.add(new Mark.Drawing(id, 20 + marks.size() % 10 * 55, 20 + marks.size() / 10 * 55,
                    aspect > 1 ? side : side * aspect, aspect > 1 ? side / aspect
                    : side, document.addFigure(id)));
        }
        PrintJob job = SampleGuide.job(sheet, new SetGuide(List.of(new SetPanel(1, marks)), document, 8,
                List.of(), List.of()), Optional.empty());
        press.freeze(job.characters());
        byte[] pdf = press.print(job);
        assertEquals(List.of(), Conformance.failures(pdf));
        assertEquals(List.of(), PdfJudge.judge(pdf, sheet).faults());
        try (PDDocument printed = Loader.loadPDF(pdf)) {
            for (COSName name : printed.getPage(0).getResources().getXObjectNames()) {
                PDFormXObject form = assertInstanceOf(PDFormXObject.class,
                        printed.getPage(0).getResources().getXObject(name));
                assertTrue(form.getContentStream().toByteArray().length > 100, name + " is empty");
                form.getResources().getXObjectNames().forEach(inner -> assertFalse(
                        form.getResources().isImageXObject(inner), name + " holds pixels"));
            }
        }
    }
}
