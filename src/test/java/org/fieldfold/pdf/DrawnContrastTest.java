package org.fieldfold.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.fieldfold.check.Contrast;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.Paper;
import org.fieldfold.typeset.Face;
import org.fieldfold.typeset.Mark;
import org.fieldfold.typeset.SetGuide;
import org.fieldfold.typeset.SetPanel;
import org.fieldfold.typeset.Tag;
import org.junit.jupiter.api.Test;

/**
 * Contrast of what the pages of the guides show: of each letter against what lies beneath it, by the colour
 * that was in force when it was drawn. WCAG 2.2: text 7:1 (1.4.6), other marks 4.5:1, more than the 3:1 of
 * 1.4.11.
 */
class DrawnContrastTest {
    private static final String WHITE = "#ffffff";

    /** What is wrong on a page, and the inks that were met. */
    private static List<String> faults(List<DrawnPage.Thing> things, TreeSet<String> inks) {
        List<String> faults = new ArrayList<>();
        List<DrawnPage.Thing> grounds = new ArrayList<>();
        for (DrawnPage.Thing thing : things) {
            String ink = colour(thing);
            if (thing.isType()) {
                inks.add(ink);
                String ground = beneath(thing, grounds);
                if (Contrast.ratio(ink, ground) < 7
                        || Contrast.ratio(Contrast.grey(ink), Contrast.grey(ground)) < 7) {
                    faults.add("'" + thing.text() + "' " + ink + " on " + ground + " at " + thing.box());
                }
            } else if (thing.text().isEmpty()) {
                // within a drawing white covers what lies behind; everything else stands out from the paper
                boolean drawing = thing.owner() >= 0;
                String ground = drawing ? WHITE : beneath(thing, grounds);
                if (Contrast.ratio(ink, ground) < 4.5 && !(drawing && ink.equals(WHITE))) {
                    faults.add(ink + " on " + ground + ": " + thing.box());
                }
                if (thing.filled()) {
                    grounds.add(thing);
                }
            }
        }
        return faults;
    }

    private static String colour(DrawnPage.Thing thing) {
        return String.format("#%06x", thing.rgb());
    }

    /** The colour of the last area that was laid where the middle of the thing is; else that of paper. */
    private static String beneath(DrawnPage.Thing thing, List<DrawnPage.Thing> grounds) {
        for (int i = grounds.size() - 1; i >= 0; i--) {
            DrawnPage.Thing ground = grounds.get(i);
            if (ground.box().contains(thing.box().getCenterX(), thing.box().getCenterY())
                    && ground.shape().contains(thing.box().getCenterX(), thing.box().getCenterY())) {
                return colour(ground);
            }
        }
        return WHITE;
    }

    @Test
    void everyLetterAndEveryMarkOfEveryGuide() throws IOException {
        List<String> faults = new ArrayList<>();
        for (DemoGuides.Printed guide : DemoGuides.all()) {
            TreeSet<String> inks = new TreeSet<>();
            try (PDDocument document = Loader.loadPDF(guide.pdf())) {
                for (int page = 0; page < document.getNumberOfPages(); page++) {
                    String where = guide.id() + " page " + page + ": ";
                    faults(DrawnPage.of(document.getPage(page)), inks)
                            .forEach(fault -> faults.add(where + fault));
                }
            }
            // black, white on black, and the one ink of the crop: nothing else is set in type
            assertTrue(inks.contains("#000000") && inks.contains(WHITE) && inks.size() <= 3,
                    guide.id() + " " + inks);
        }
        assertEquals(List.of(), faults);
    }

    @Test
    void theInkOfEveryCropStaysDarkOnACopierWithoutColour() {
        DemoGuides.base().crops().values().forEach(crop -> {
            String ink = crop.value().ink();
            assertTrue(Contrast.ratio(ink, WHITE) >= 7, crop.value().id() + " " + ink);
            assertTrue(Contrast.ratio(Contrast.grey(ink), WHITE) >= 7, crop.value().id() + " in grey " + ink);
        });
    }

    /** The test itself: white on paper, black on black, and a pale line are seen. */
    @Test
    void paleInkIsSeen() throws IOException {
        Imposition letter = SampleGuide.imposition("letter", Paper.LETTER, FlipEdge.SHORT);
        Tag document = Tag.document();
        Optional<Tag> tag = Optional.of(document.add(Tag.Role.PARAGRAPH));
        Mark.Ink pale = new Mark.Ink("#808080");
        SetGuide guide = new SetGuide(List.of(new SetPanel(1, List.of(
                new Mark.Words(30, 60, Face.REGULAR, 8, Mark.Ink.WHITE, "w", tag),
                new Mark.Box(30, 80, 40, 12, Optional.of(Mark.Ink.BLACK), Optional.empty(), 0),
                new Mark.Words(32, 90, Face.REGULAR, 8, Mark.Ink.BLACK, "b", tag),
                new Mark.Words(42, 90, Face.REGULAR, 8, Mark.Ink.WHITE, "f", tag),
                new Mark.Stroke(30, 120, 60, 120, 1, pale)))), document, 8, List.of(), List.of());
        try (PDDocument printed = Loader.loadPDF(SampleGuide.print(SampleGuide.job(letter, guide,
                Optional.empty())))) {
            List<String> faults = faults(DrawnPage.of(printed.getPage(0)), new TreeSet<>());
            assertEquals(3, faults.size(), faults.toString());
            assertTrue(faults.get(0).startsWith("'w' #ffffff on #ffffff"), faults.get(0));
            assertTrue(faults.get(1).startsWith("'b' #000000 on #000000"), faults.get(1));
            assertTrue(faults.get(2).startsWith("#808080 on #ffffff"), faults.get(2));
            assertFalse(faults.toString().contains("'f'"));
        }
    }
}
