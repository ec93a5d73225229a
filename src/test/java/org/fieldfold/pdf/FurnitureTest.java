package org.fieldfold.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.fold.FoldLine;
import org.fieldfold.fold.FoldScheme;
import org.fieldfold.fold.FoldException;
import org.fieldfold.fold.FoldSchemes;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.PanelSlot;
import org.fieldfold.fold.Paper;
import org.fieldfold.fold.Side;
import org.junit.jupiter.api.Test;

/** What surrounds the panels, on every scheme and paper that ships, with nothing on the panels. */
class FurnitureTest {
    private static final double MM = 72 / 25.4;

    private static List<List<DrawnPage.Thing>> draw(Imposition imposition,
            String language) throws IOException {
        PrintJob plain = SampleGuide.job(imposition, SampleGuide.bare(imposition), Optional.empty());
        PrintJob job = new PrintJob(plain.title(), plain.subject(), language, plain.year(), plain.publisher(),
                plain.issued(), plain.guide(), imposition, SheetWords.in(language), Optional.empty());
        List<List<DrawnPage.Thing>> pages = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(SampleGuide.print(job))) {
            for (int i = 0; i < document.getNumberOfPages(); i++) {
                pages.add(DrawnPage.of(document.getPage(i)));
            }
        }
        return pages;
    }

    private static List<Imposition> all() {
        List<Imposition> all = new ArrayList<>();
        for (FoldScheme scheme : FoldSchemes.all()) {
            for (Paper paper : List.of(Paper.LETTER, Paper.A4)) {
                try {
                    all.add(Imposition.of(scheme, paper, FlipEdge.SHORT));
                } catch (FoldException tooSmall) {
                    continue;
                }
            }
        }
        assertTrue(all.size() > 15, "schemes that fold on office paper: " + all.size());
        return all;
    }

    @Test
    void nothingTouchesALiveAreaAndNoTwoWordsTouch() throws IOException {
        List<String> faults = new ArrayList<>();
        for (Imposition imposition : all()) {
            List<List<DrawnPage.Thing>> pages = draw(imposition, "es");
            // the longer words, with accents
            for (int page = 0; page < pages.size(); page++) {
                String where = imposition.scheme().id() + " " + imposition.paper() + " page " + page + ": ";
                List<DrawnPage.Thing> things = pages.get(page);
                for (DrawnPage.Thing thing : things) {
                    if (thing.owner() != DrawnPage.ARTIFACT) {
                        faults.add(where + "not an artifact: " + thing);
                    }
                    imposition.on(Side.values()[page]).stream().filter(slot -> thing.box()
                            .intersects(live(slot,
                            imposition.sheetHeight()))).forEach(slot -> faults.add(where + "on panel "
                            + slot.reading() + ": " + thing));
                    boolean type = !thing.text().isBlank();
                    if (type && !inside(thing.box(), imposition)) {
                        faults.add(where + "where a printer does not print: " + thing);
                    }
                    if (type && things.stream().anyMatch(other -> other != thing
                            && other.box().intersects(thing.box()))) {
                        faults.add(where + "words that something crosses: " + thing);
                    }
                }
            }
        }
        assertEquals(List.of(), faults);
    }

    private static Rectangle2D live(PanelSlot slot, double sheetHeight) {
        PageBox live = PanelFrame.of(slot, sheetHeight).box(slot.live().left(), slot.live().top(),
                slot.liveWidth(), slot.liveHeight());
        return new Rectangle2D.Double(live.left(), live.bottom(), live.right() - live.left(),
                live.top() - live.bottom());
    }

    /** About 4.2 mm from the edge: value from memory of what office lasers reach. */
    private static boolean inside(Rectangle2D box, Imposition imposition) {
        double edge = 4.2 * MM - 0.05;
        return box.getMinX() >= edge && box.getMinY() >= edge
                && box.getMaxX() <= imposition.sheetWidth() - edge
                && box.getMaxY() <= imposition.sheetHeight() - edge;
    }

    @Test
    void theFrontHasABarOf100Millimetres() throws IOException {
        for (Imposition imposition : all()) {
            assertTrue(draw(imposition, "en").get(0).stream().anyMatch(thing ->
                    Math.abs(Math.max(thing.box().getWidth(), thing.box().getHeight()) - 100 * MM) < 0.3),
                    imposition.scheme().id() + " " + imposition.paper());
        }
    }

    /** Every fold is marked at both ends, where it runs. */
    @Test
    void everyFoldHasAMarkAtBothEnds() throws IOException {
        for (Imposition imposition : all()) {
            List<List<DrawnPage.Thing>> pages = draw(imposition, "en");
            imposition.foldLines().forEach(fold -> {
                for (double[] end : new double[][] {{fold.x1(), fold.y1()}, {fold.x2(), fold.y2()}}) {
                    double x = end[0];
                    double y = imposition.sheetHeight() - end[1];
                    assertTrue(pages.get(fold.side().ordinal()).stream().anyMatch(thing ->
                            thing.box().getMinX() - 5 <= x && thing.box().getMaxX() + 5 >= x
                                    && thing.box().getMinY() - 5 <= y && thing.box().getMaxY() + 5 >= y
                                    && (Math.abs(thing.box().getCenterX() - x) < 0.01
                                            || Math.abs(thing.box().getCenterY() - y) < 0.01)),
                            imposition.scheme().id() + " " + imposition.paper() + " " + fold);
                }
            });
        }
    }

    private static String words(List<DrawnPage.Thing> page) {
        StringBuilder words = new StringBuilder();
        page.forEach(thing -> words.append(thing.text()));
        return words.toString();
    }

    /** Whoever folds finds every fold's number on the side that lies up, whichever it is. */
    @Test
    void everyFoldHasItsNumberOnBothSides() throws IOException {
        for (Imposition imposition : all()) {
            List<List<DrawnPage.Thing>> pages = draw(imposition, "en");
            int last = imposition.foldLines().stream().mapToInt(FoldLine::step).max().orElseThrow();
            for (int page = 0; page < pages.size(); page++) {
                for (int step = 1; step <= last; step++) {
                    assertTrue(words(pages.get(page)).contains("fold " + step), imposition.scheme().id() + " "
                            + imposition.paper() + " page " + page + ": fold " + step);
                }
            }
        }
    }

    /**
     * The letter fold: the flap at the right of the inside first, then the left over it; seen from the
     * outside both go under, and left and right are exchanged (common practice, no source).
     */
    @Test
    void theLetterFoldIsNumberedAsItIsFolded() throws IOException {
        Imposition letter = SampleGuide.imposition("letter", Paper.LETTER, FlipEdge.SHORT);
        List<List<DrawnPage.Thing>> pages = draw(letter, "en");
        assertEquals(7.375 * 72, placeOf("fold 1 over", pages.get(1)), 4);
        assertEquals(3.6875 * 72, placeOf("fold 2 over", pages.get(1)), 4);
        assertEquals(3.625 * 72, placeOf("fold 1 under", pages.get(0)), 4);
        assertEquals(7.3125 * 72, placeOf("fold 2 under", pages.get(0)), 4);
    }

    private static double placeOf(String text, List<DrawnPage.Thing> page) {
        List<DrawnPage.Thing> glyphs = page.stream().filter(thing -> !thing.text().isEmpty()).toList();
        return glyphs.get(words(glyphs).indexOf(text)).box().getMinX();
    }

    /**
     * Held to the light, each cross of one side falls on one of the other, as the panels fall on each other.
     */
    @Test
    void crossesCoincideHeldToTheLight() throws IOException {
        for (FlipEdge flip : FlipEdge.values()) {
            Imposition imposition = SampleGuide.imposition("letter", Paper.A4, flip);
            List<List<DrawnPage.Thing>> pages = draw(imposition, "en");
            List<String> front = crosses(pages.get(0), imposition, false);
            assertEquals(2, front.size());
            // a landscape sheet turned about its short edge turns like a leaf: left comes to the right
            assertEquals(front, crosses(pages.get(1), imposition, true));
        }
    }

    private static List<String> crosses(List<DrawnPage.Thing> things, Imposition imposition,
            boolean mirrored) {
        boolean leaf = (imposition.flip() == FlipEdge.SHORT)
                == (imposition.sheetHeight() < imposition.sheetWidth());
        List<String> found = new ArrayList<>();
        for (DrawnPage.Thing level : things) {
            for (DrawnPage.Thing upright : things) {
                double x = level.box().getCenterX();
                double y = level.box().getCenterY();
                if (level.text().isEmpty() && level.box().getHeight() < 1 && upright.box().getWidth() < 1
                        && level.box().getWidth() > 5 && upright.box().getHeight() > 5
                        && upright.text().isEmpty() && Math.abs(x - upright.box().getCenterX()) < 0.01
                        && Math.abs(y - upright.box().getCenterY()) < 0.01) {
                    found.add(String.format(java.util.Locale.ROOT, "%.1f %.1f",
                            mirrored && leaf ? imposition.sheetWidth() - x : x,
                            mirrored && !leaf ? imposition.sheetHeight() - y : y));
                }
            }
        }
        return found.stream().sorted().toList();
    }

    @Test
    void theBackIsPassedToWithWordsAtTheFootOfTheLastPanelBeforeIt() throws IOException {
        Imposition imposition = SampleGuide.imposition("letter", Paper.LETTER, FlipEdge.SHORT);
        StringBuilder back = new StringBuilder();
        draw(imposition, "en").get(1).forEach(thing -> back.append(thing.text()));
        assertTrue(back.toString().endsWith("turn over here"), back.toString());
    }
}
