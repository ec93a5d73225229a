package org.fieldfold.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.fieldfold.prose.Run;
import org.junit.jupiter.api.Test;

class LineFitTest {
    private static final TypeMetrics TYPE = new FixedWidth();

    private static List<Word> words(String text) {
        return WordSplitter.split(List.of(Run.plain(text)), Voice.TEXT, TYPE).words();
    }

    /** @param measure in characters */
    private static List<String> lines(String text, int measure) {
        return LineFit.fit(words(text), measure * 500).stream().map(Line::text).toList();
    }

    @Test
    void breaksWhereTheLinesComeOutMostEven() {
        // filled greedily the lines are "aaa bb cc" / "ddddd" / "ee": 1 short, then 5; by total fit 4, then 2
        assertEquals(List.of("aaa bb ", "cc ddddd ", "eeeeee"), lines("aaa bb cc ddddd eeeeee", 10));
    }

    @Test
    void everyLineButTheLastEndsWithItsSpace() {
        assertEquals(List.of("look under ", "the leaves"), lines("look under the leaves", 11));
    }

    @Test
    void leavesNoWordAloneWhereTheLinesBeforeCanGiveOne() {
        assertEquals(List.of("count the ", "eggs now"), lines("count the eggs now", 14));
        assertEquals(List.of("one ", "twothree"), lines("one twothree", 9));
    }

    @Test
    void staysWithTheFewestLines() {
        assertEquals(2, lines("a bb ccc dddd eeeee ffffff", 20).size());
    }

    @Test
    void nothingIsNoLine() {
        assertEquals(List.of(), lines("  ", 10));
    }

    @Property(tries = 500)
    void isNeverWorseThanFillingGreedily(@ForAll("texts") String text, @ForAll @IntRange(min = 4,
            max = 40) int measure) {
        List<Word> words = words(text);
        List<int[]> greedy = greedy(words, measure * 500);
        List<int[]> fitted = ends(words, LineFit.fit(words, measure * 500));
        assertEquals(greedy.size(), fitted.size(), "as few lines as greedy");
        assertTrue(cost(words, fitted, measure * 500) <= cost(words, greedy, measure * 500) + 1e-9);
    }

    @Property(tries = 300)
    void isTheBestOfAllWays(@ForAll("shortTexts") String text, @ForAll @IntRange(min = 4,
            max = 20) int measure) {
        List<Word> words = words(text);
        double best = cheapest(words, measure * 500);
        List<int[]> fitted = ends(words, LineFit.fit(words, measure * 500));
        assertEquals(best, 1e6 * fitted.size() + cost(words, fitted, measure * 500), 1e-6);
    }

    @Property(tries = 500)
    void noLineIsWiderThanTheMeasureUnlessItIsOneWord(@ForAll("texts") String text,
            @ForAll @IntRange(min = 1, max = 40) int measure) {
        for (Line line : LineFit.fit(words(text), measure * 500)) {
            assertTrue(line.width() <= measure * 500 + 1e-6 || words(line.text()).size() == 1, line.text());
        }
    }

    @Property(tries = 500)
    void losesAndAddsNoWord(@ForAll("texts") String text, @ForAll @IntRange(min = 1, max = 40) int measure) {
        String read = String.join("", lines(text, measure));
        assertEquals(text.strip().replaceAll("[ \u00a0]+", " "), read);
    }

    private static List<int[]> greedy(List<Word> words, double measure) {
        List<int[]> lines = new ArrayList<>();
        int start = 0;
        double width = 0;
        for (int i = 0; i < words.size(); i++) {
            double grown = width + words.get(i).width() + (i > start ? words.get(i - 1).spaceWidth() : 0);
            if (i > start && grown > measure + 1e-9) {
                lines.add(new int[] {start, i});
                start = i;
                grown = words.get(i).width();
            }
            width = grown;
        }
        if (!words.isEmpty()) {
            lines.add(new int[] {start, words.size()});
        }
        return lines;
    }

    private static List<int[]> ends(List<Word> words, List<Line> lines) {
        List<int[]> ends = new ArrayList<>();
        int start = 0;
        for (Line line : lines) {
            int end = start;
            StringBuilder text = new StringBuilder();
            while (text.toString().strip().length() < line.text().strip().length()) {
                words.get(end).pieces().forEach(piece -> text.append(piece.text()));
                words.get(end).space().ifPresent(space -> text.append(space.text()));
                end++;
            }
            ends.add(new int[] {start, end});
            start = end;
        }
        return ends;
    }

    private static double cost(List<Word> words, List<int[]> lines, double measure) {
        return lines.stream().mapToDouble(line ->
                LineFit.cost(words, line[0], line[1], width(words, line[0], line[1]), measure)).sum();
    }

    private static double width(List<Word> words, int start, int end) {
        double width = 0;
        for (int i = start; i < end; i++) {
            width += words.get(i).width() + (i < end - 1 ? words.get(i).spaceWidth() : 0);
        }
        return width;
    }

    /** The cost of the best of all 2^(n-1) ways, a line costing more than any raggedness. */
    private static double cheapest(List<Word> words, double measure) {
        if (words.isEmpty()) {
            return 0;
        }
        double best = Double.MAX_VALUE;
        for (int breaks = 0; breaks < 1 << (words.size() - 1); breaks++) {
            List<int[]> lines = new ArrayList<>();
            int start = 0;
            boolean legal = true;
            for (int end = 1; end <= words.size(); end++) {
                if (end == words.size() || (breaks >> (end - 1) & 1) == 1) {
                    legal &= end - start == 1 || width(words, start, end) <= measure + 1e-9;
                    lines.add(new int[] {start, end});
                    start = end;
                }
            }
            if (legal) {
                best = Math.min(best, 1e6 * lines.size() + cost(words, lines, measure));
            }
        }
        return best;
    }

    @Provide
    Arbitrary<String> texts() {
        return text(60);
    }

    @Provide
    Arbitrary<String> shortTexts() {
        return text(9);
    }

    private static Arbitrary<String> text(int most) {
        Arbitrary<String> word = Arbitraries.oneOf(
                Arbitraries.strings().withCharRange('a', 'z').ofMinLength(1).ofMaxLength(12),
                Arbitraries.of("5–10 %", "20 to 30 %", "and/or", "hump-backed", "¼ mile", "–", "≥ 5", "3 mm",
                "2-3 days"));
        return word.list().ofMinSize(0).ofMaxSize(most)
                .map(list -> list.stream().collect(Collectors.joining(" ")));
    }
}
