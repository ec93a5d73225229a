package org.fieldfold.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.DoubleStream;
import org.fieldfold.entry.SizeRange;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.Lengths;
import org.fieldfold.fold.PanelSlot;
import org.fieldfold.fold.Paper;
import org.fieldfold.typeset.Mark;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Lengths and places measured in the pixels of printed pages, as one would with a ruler: at 600 dpi a pixel
 * is 0.042 mm. The page is rasterised by a program from outside; {@code target/measured.txt} has the worst
 * deviations.
 */
class MeasuredTest {
    /** What a ruler in the hand shows. */
    private static final double SLACK = 0.2;
    /** Rulers, crosses and words begin here (4.3 mm); only fold marks stand farther out. */
    private static final double SCALES = 4.3;
    private static final Map<String, Double> WORST = new TreeMap<>();

    @TempDir
    Path folder;

    private static void near(double expected, double found, String what) {
        WORST.merge(what.replaceAll(":.*", ""), Math.abs(expected - found), Math::max);
        assertEquals(expected, found, SLACK, what);
    }

    @AfterAll
    static void say() throws IOException {
        StringBuilder text = new StringBuilder();
        WORST.forEach((what, mm) -> text.append(String.format(Locale.ROOT,
                "%.3f mm  %s\n", mm, what)));
        Files.createDirectories(Path.of("target"));
        Files.writeString(Path.of("target/measured.txt"), text);
    }

    private List<Raster> print(Imposition imposition) throws IOException, InterruptedException {
        byte[] pdf = SampleGuide.print(SampleGuide.job(imposition, SampleGuide.bare(imposition),
                Optional.empty()));
        List<Raster> pages = new ArrayList<>();
        for (int page = 0; page < (imposition.scheme().oneSided() ? 1 : 2); page++) {
            pages.add(Raster.of(pdf, page, folder));
        }
        return pages;
    }

    /** The panel edges come from outside: the C-fold rule, equal shares, halves of the sheet. */
    @ParameterizedTest
    @CsvSource({
        // 11 in: 3.6875 / 3.6875 / 3.625 in (ThoughtCo, 'C-Folds in Printing'), from the left inside
        "letter, LETTER, SHORT, 93.6625 187.325, ''",
        // 297 mm: 100 / 100 / 97 mm (a printers' forum post)
        "letter, A4, LONG, 100 200, ''",
        // four equal panels across, two down: 420 x 297 mm
        "map, A3, SHORT, 105 210 315, 148.5",
    })
    void foldMarksAndCrossesStandWhereTheySay(String scheme, Paper paper, FlipEdge flip, String across,
            String down) throws Exception {
        List<Raster> pages = print(SampleGuide.imposition(scheme, paper, flip));
        boolean leaf = flip == FlipEdge.SHORT;
        for (Raster page : pages) {
            boolean front = page == pages.get(0);
            // said of the inside as its reader sees it: the front is seen from the other side, and a back
            // that was turned over its long edge comes out head down
            double[] upright = places(across, front || !leaf, page.widthMm());
            marks(upright, page.along(true, 1.5, 4), scheme + " " + paper + " top");
            marks(upright, page.along(true, page.heightMm() - 4, page.heightMm() - 1.5), scheme + " foot");
            double[] level = places(down, !front && !leaf, page.heightMm());
            marks(level, page.along(false, 1.5, 4), scheme + " left");
            marks(level, page.along(false, page.widthMm() - 4, page.widthMm() - 1.5), scheme + " right");
        }
        crosses(pages, leaf);
    }

    private static double[] places(String said, boolean mirrored, double length) {
        DoubleStream places = said.isBlank() ? DoubleStream.empty()
                : List.of(said.split(" ")).stream().mapToDouble(Double::parseDouble);
        return places.map(place -> mirrored ? length - place : place).sorted().toArray();
    }

    private static void marks(double[] expected, List<Raster.Ink> found, String where) {
        assertEquals(expected.length, found.size(), where + " " + found);
        for (int i = 0; i < expected.length; i++) {
            near(expected[i], found.get(i).middle(), "fold marks: " + where);
        }
    }

    /** Held to the light, the crosses of the front stand on those of the back as the printer turned it. */
    private static void crosses(List<Raster> pages, boolean leaf) {
        Raster front = pages.get(0);
        double[] one = cross(front, false, false);
        double[] other = cross(front, true, true);
        Raster back = pages.get(1);
        double[] ofOne = cross(back, leaf, !leaf);
        double[] ofOther = cross(back, !leaf, leaf);
        near(one[0], leaf ? back.widthMm() - ofOne[0] : ofOne[0], "crosses: x");
        near(one[1], leaf ? ofOne[1] : back.heightMm() - ofOne[1], "crosses: y");
        near(other[0], leaf ? back.widthMm() - ofOther[0] : ofOther[0], "crosses: x");
        near(other[1], leaf ? ofOther[1] : back.heightMm() - ofOther[1], "crosses: y");
    }

    /** The middle of the cross in a corner: the column and the row with the most ink. */
    private static double[] cross(Raster page, boolean right, boolean bottom) {
        double pixel = 25.4 / 600;
        double left = right ? page.widthMm() - 6.4 : 4.2;
        double top = bottom ? page.heightMm() - 6.4 : 4.2;
        double[] middle = new double[2];
        for (int way = 0; way < 2; way++) {
            int most = 0;
            double sum = 0;
            int count = 0;
            for (double at = 0; at < 2.2; at += pixel) {
                int ink = 0;
                for (double along = 0; along < 2.2; along += pixel) {
                    ink += page.dark(left + (way == 0 ? at : along), top + (way == 0 ? along : at)) ? 1 : 0;
                }
                if (ink > most) {
                    most = ink;
                    sum = 0;
                    count = 0;
                }
                if (ink == most) {
                    sum += at + pixel / 2;
                    count++;
                }
            }
            assertTrue(most * pixel > 1.5, "a cross with arms of " + most * pixel + " mm");
            middle[way] = (way == 0 ? left : top) + sum / count;
        }
        return middle;
    }

    @Test
    void theBarIsAHundredMillimetresAndBothRulersAreTrue() throws Exception {
        List<Raster> pages = print(SampleGuide.imposition("letter", Paper.LETTER, FlipEdge.SHORT));
        Scale bar = longest(pages.get(0));
        near(100, bar.ticks().get(bar.ticks().size() - 1) - bar.ticks().get(0), "the bar of 100 mm: whole");
        assertEquals(11, bar.ticks().size(), "a tick each centimetre");
        evenly(bar, 10, "the bar of 100 mm: ticks");
        List<Scale> rulers = scales(pages.get(1)).stream()
                .sorted(Comparator.comparingDouble(Scale::step)).toList();
        assertEquals(2, rulers.size(), rulers.toString());
        evenly(rulers.get(0), 1, "the ruler in mm: ticks");
        assertTrue(rulers.get(0).ticks().size() > 50 && rulers.get(0).ticks().size() % 10 == 1);
        evenly(rulers.get(1), 25.4 / 8, "the ruler in inches: ticks");
        assertTrue(rulers.get(1).ticks().size() > 16 && rulers.get(1).ticks().size() % 8 == 1);
    }

    /** Places of the ticks of a scale along its edge. */
    private record Scale(List<Double> ticks) {
        double step() {
            return ticks.get(1) - ticks.get(0);
        }
    }

    private static void evenly(Scale scale, double step, String what) {
        for (int i = 0; i < scale.ticks().size(); i++) {
            near(scale.ticks().get(0) + i * step, scale.ticks().get(i), what);
        }
    }

    private static Scale longest(Raster page) {
        return scales(page).stream().max(Comparator.comparingDouble(scale ->
                scale.ticks().get(scale.ticks().size() - 1) - scale.ticks().get(0))).orElseThrow();
    }

    /** Along each edge: a line at 4.3 mm that is longer than any letter, and what stands on it. */
    private static List<Scale> scales(Raster page) {
        List<Scale> scales = new ArrayList<>();
        for (boolean level : new boolean[] {true, false}) {
            double depth = level ? page.heightMm() : page.widthMm();
            for (boolean far : new boolean[] {false, true}) {
                double base = far ? depth - SCALES : SCALES;
                double ticks = far ? base - 0.3 : base + 0.3;
                page.along(level, base - 0.05, base + 0.05).stream().filter(ink -> ink.length() > 20)
                        .forEach(line -> scales.add(new Scale(page.along(level, ticks - 0.04, ticks + 0.04)
                                .stream().filter(ink -> ink.from() > line.from() - 0.1
                                        && ink.to() < line.to() + 0.1).map(Raster.Ink::middle).toList())));
            }
        }
        return scales;
    }

    /** A bar beside a drawing is as long as the facts of the figure say that the animal is at its largest. */
    @Test
    void barsBesideDrawingsAreAsLongAsTheAnimals() throws Exception {
        DemoGuides.Printed potato = DemoGuides.all().stream().filter(one -> one.id().equals("potato"))
                .findFirst().orElseThrow();
        List<Raster> pages = List.of(Raster.of(potato.pdf(), 0, folder), Raster.of(potato.pdf(), 1, folder));
        int measured = 0;
        for (PanelSlot slot : potato.imposition().slots()) {
            List<Mark> marks = potato.set().panels().get(slot.reading() - 1).marks();
            for (int i = 0; i < marks.size() - 1; i++) {
                if (marks.get(i) instanceof Mark.Drawing drawing
                        && marks.get(i + 1) instanceof Mark.Stroke bar && bar.y1() == bar.y2()) {
                    SizeRange size = DemoGuides.base().figures().get(drawing.figure()).value().note()
                            .trueSize().orElseThrow();
                    near(size.to(), length(pages.get(slot.side().ordinal()), potato.imposition(), slot, bar),
                            "bars beside drawings: " + drawing.figure());
                    measured++;
                }
            }
        }
        assertTrue(measured >= 5, "bars measured: " + measured);
        WORST.put("(bars beside drawings: " + measured + " measured)", 0.0);
    }

    /** The unbroken ink about the middle of a level line. */
    private static double length(Raster page, Imposition imposition, PanelSlot slot, Mark.Stroke bar) {
        assertEquals(0, slot.rotation());
        PageBox box = PanelFrame.of(slot, imposition.sheetHeight()).box(Math.min(bar.x1(), bar.x2()),
                bar.y1(), Math.abs(bar.x2() - bar.x1()), 0);
        double y = Lengths.millimetres(imposition.sheetHeight() - box.top());
        double middle = Lengths.millimetres((box.left() + box.right()) / 2);
        return page.along(true, y - 0.04, y + 0.04).stream()
                .filter(ink -> ink.from() <= middle && middle <= ink.to()).findFirst().orElseThrow().length();
    }
}
