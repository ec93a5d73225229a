package org.fieldfold.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.fold.FoldException;
import org.fieldfold.fold.FoldLine;
import org.fieldfold.fold.FoldScheme;
import org.fieldfold.fold.FoldSchemes;
import org.fieldfold.fold.FoldStep;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.Paper;
import org.fieldfold.fold.Side;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whoever does what the words say, with the marks of the printed page and nothing else, gets the folded
 * piece: the words are read, a sheet is folded by them here, and what comes of it is held against the marks
 * and the piece.
 */
class FoldingWordsTest {
    private static final Map<String, Pattern> FOLD = Map.of("en", Pattern.compile(
            "Mark (\\d+): fold the (left|right|upper|lower) part (over|under) the rest\\."), "es",
            Pattern.compile(
            "Marca (\\d+): doble la parte (izquierda|derecha|de arriba|de abajo) (sobre el|por debajo del) resto\\."));
    /** What is tucked in is narrower by some millimeters; in points. No panel is as narrow as this. */
    private static final double NEAR = 12;
    private static final List<String> LEFT = List.of("left", "izquierda");
    private static final List<String> RIGHT = List.of("right", "derecha");
    private static final List<String> UPPER = List.of("upper", "de arriba");

    /** One part of the sheet as it lies; {@code turned} when the side that lay up lies down. */
    private record Leaf(int number, double left, double top, double right, double bottom, boolean turned,
            boolean mirroredX, boolean mirroredY) {
        Leaf about(boolean upright, double at) {
            return upright ? new Leaf(number, 2 * at - right, top, 2 * at - left, bottom, !turned,
                    !mirroredX, mirroredY)
                    : new Leaf(number, left, 2 * at - bottom, right, 2 * at - top, !turned, mirroredX,
                    !mirroredY);
        }

        boolean over(Leaf other) {
            return left < other.right - NEAR && other.left < right - NEAR && top < other.bottom - NEAR
                    && other.top < bottom - NEAR;
        }
    }

    static Stream<FoldScheme> schemes() {
        return FoldSchemes.all().stream();
    }

    @ParameterizedTest
    @MethodSource("schemes")
    void whatTheWordsSayGivesTheFoldedPiece(FoldScheme scheme) {
        int papers = 0;
        for (Paper paper : Paper.values()) {
            for (FlipEdge flip : FlipEdge.values()) {
                Imposition sheet;
                try {
                    sheet = Imposition.of(scheme, paper, flip);
                } catch (FoldException tooSmall) {
                    continue;
                }
                papers++;
                for (String language : FOLD.keySet()) {
                    follow(sheet, language);
                }
            }
        }
        assertTrue(papers > 0, scheme.id());
    }

    private static void follow(Imposition sheet, String language) {
        String what = sheet.scheme().id() + " on " + sheet.paper().id() + " in " + language;
        List<String> words = FoldingWords.of(sheet, PackWords.in(language));
        Side up = words.get(0).contains("1") ? Side.FRONT : Side.BACK;
        boolean gathered = sheet.scheme().steps().stream().anyMatch(FoldStep.Gather.class::isInstance);
        int others = 2 + (sheet.cuts().isEmpty() ? 0 : 1) + (sheet.scheme().trims().isEmpty() ? 0 : 1)
                + (gathered ? 1 : 0);
        Pattern fold = FOLD.get(language);
        List<String> folds = words.stream().filter(line -> fold.matcher(line).matches()).toList();
        assertEquals(words.size() - others, folds.size(), what + ": " + words);
        List<Leaf> pile = flat(sheet, up);
        for (int i = 0; i < folds.size(); i++) {
            Matcher said = fold.matcher(folds.get(i));
            assertTrue(said.matches());
            assertEquals(i + 1, Integer.parseInt(said.group(1)), what);
            pile = folded(pile, sheet, up, i + 1, said.group(2), said.group(3).matches("over|sobre el"),
                    what);
        }
        assertEquals(!gathered, folds.size() == sheet.foldLines().stream().mapToInt(FoldLine::step).max()
                .orElse(0),
                what);
        if (!gathered) {
            lies(pile, sheet, up, what);
        }
    }

    /**
     * The page that lies up, in parts between its folds; the sheet is turned over as a leaf where it has to
     * be.
     */
    private static List<Leaf> flat(Imposition sheet, Side up) {
        List<Leaf> flat = new ArrayList<>();
        sheet.on(up).forEach(slot -> flat.add(new Leaf(slot.reading(), slot.x(), slot.y(), slot.x()
                + slot.width(),
                slot.y() + slot.height(), false, false, false)));
        assertFalse(flat.isEmpty(), sheet.scheme().id() + " begins with a blank page up");
        return flat;
    }

    private static List<Leaf> folded(List<Leaf> pile, Imposition sheet, Side up, int step, String part,
            boolean over,
            String what) {
        boolean upright = LEFT.contains(part) || RIGHT.contains(part);
        boolean low = LEFT.contains(part) || UPPER.contains(part);
        List<FoldLine> lines = sheet.foldLines().stream().filter(line -> line.side() == up && line.step()
                == step
                && line.move() != FoldLine.Move.ALONG).toList();
        assertFalse(lines.isEmpty(), what + ": no mark " + step);
        double at = place(lines.get(0), pile, sheet, up);
        List<Leaf> rest = new ArrayList<>();
        List<Leaf> moved = new ArrayList<>();
        for (Leaf leaf : pile) {
            double from = upright ? leaf.left() : leaf.top();
            double to = upright ? leaf.right() : leaf.bottom();
            assertTrue(to <= at + NEAR || from >= at - NEAR, what + ": mark " + step + " runs through panel "
                    + leaf.number());
            (low == to <= at + NEAR ? moved : rest).add(leaf);
        }
        assertFalse(moved.isEmpty() || rest.isEmpty(), what + ": nothing to fold at mark " + step);
        for (FoldLine line : sheet.foldLines()) {
            if (line.side() == up && line.step() == step) {
                Leaf beside = beside(line, pile, sheet, up);
                assertEquals(over != beside.turned(), line.valley(), what + ": mark " + step
                        + " bends the wrong way");
            }
        }
        List<Leaf> turned = new ArrayList<>();
        for (int i = moved.size() - 1; i >= 0; i--) {
            turned.add(moved.get(i).about(upright, at));
        }
        List<Leaf> joined = new ArrayList<>(over ? rest : turned);
        joined.addAll(over ? turned : rest);
        return joined;
    }

    /** Where a printed line lies by now. */
    private static double place(FoldLine line, List<Leaf> pile, Imposition sheet, Side up) {
        Leaf leaf = beside(line, pile, sheet, up);
        boolean upright = Math.abs(line.x1() - line.x2()) < 0.01;
        return upright ? leaf.mirroredX() ? leaf.left() : leaf.right() : leaf.mirroredY() ? leaf.top()
                : leaf.bottom();
    }

    /** The panel whose right or lower edge on the flat page is a printed line. */
    private static Leaf beside(FoldLine line, List<Leaf> pile, Imposition sheet, Side up) {
        boolean upright = Math.abs(line.x1() - line.x2()) < 0.01;
        double x = (line.x1() + line.x2()) / 2;
        double y = (line.y1() + line.y2()) / 2;
        int number = sheet.on(up).stream().filter(slot -> upright
                ? Math.abs(slot.x() + slot.width() - x) < 0.01 && slot.y() <= y && y <= slot.y()
                + slot.height()
                : Math.abs(slot.y() + slot.height() - y) < 0.01 && slot.x() <= x && x <= slot.x()
                + slot.width())
                .findFirst().orElseThrow().reading();
        return pile.stream().filter(leaf -> leaf.number() == number).findFirst().orElseThrow();
    }

    /** As large as the piece is said to be, and with the cover outside. */
    private static void lies(List<Leaf> pile, Imposition sheet, Side up, String what) {
        double width = pile.stream().mapToDouble(Leaf::right).max().orElseThrow()
                - pile.stream().mapToDouble(Leaf::left).min().orElseThrow();
        double height = pile.stream().mapToDouble(Leaf::bottom).max().orElseThrow()
                - pile.stream().mapToDouble(Leaf::top).min().orElseThrow();
        assertEquals(Math.min(sheet.foldedWidth(), sheet.foldedHeight()), Math.min(width, height), NEAR,
                what);
        assertEquals(Math.max(sheet.foldedWidth(), sheet.foldedHeight()), Math.max(width, height), NEAR,
                what);
        int cover = coverOn(sheet, up);
        int at = 0;
        while (pile.get(at).number() != cover) {
            at++;
        }
        Leaf leaf = pile.get(at);
        boolean facesUp = (sheet.slot(1).side() == up) != leaf.turned();
        List<Leaf> above = facesUp ? pile.subList(at + 1, pile.size()) : pile.subList(0, at);
        assertTrue(above.stream().noneMatch(leaf::over), what + ": the cover is not outside");
    }

    /** The panel on the page that lies up which has the cover on its other side, or is it. */
    private static int coverOn(Imposition sheet, Side up) {
        var cover = sheet.slot(1);
        if (cover.side() == up) {
            return 1;
        }
        boolean like = sheet.flip() == FlipEdge.SHORT == sheet.sheetWidth() > sheet.sheetHeight();
        double x = like ? sheet.sheetWidth() - cover.x() - cover.width() : cover.x();
        double y = like ? cover.y() : sheet.sheetHeight() - cover.y() - cover.height();
        return sheet.on(up).stream().filter(slot -> Math.abs(slot.x() - x) < 0.1
                && Math.abs(slot.y() - y) < 0.1)
                .findFirst().orElseThrow().reading();
    }
}
