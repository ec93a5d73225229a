package org.fieldfold.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import org.fieldfold.fold.FoldLine;

/**
 * What is printed around the panels, in 6 point along the edges of the sheet: short, and in the guide's
 * language.
 *
 * @param front on the side with the cover
 * @param back on the other side
 * @param only instead of both on a sheet that is printed on one side
 * @param shortEdge how to turn the sheet in a printer; or {@code longEdge}
 * @param bar beside a bar of 100 mm: what to do when it is not as long
 * @param turnOver where the reader goes on on the other side
 * @param marks what the two kinds of fold marks mean
 * @param cut along a cut
 * @param fold beside the mark of a fold, {@code {0}} being its number; or {@code foldOver}, {@code foldUnder}
 *     where it is said which way the part goes
 */
public record SheetWords(String front, String back, String only, String shortEdge, String longEdge,
        String bar, String turnOver, String marks, String cut, String fold,
        String foldOver, String foldUnder) {

    public SheetWords {
        for (String words : List.of(front, back, only, shortEdge, longEdge, bar, turnOver, marks, cut, fold,
                foldOver, foldUnder)) {
            if (words.isBlank()) {
                throw new IllegalArgumentException("words for the edge of the sheet are missing");
            }
        }
    }

    /** The words that ship in a language, {@code en} or {@code es}. */
    public static SheetWords in(String language) {
        String file = "sheet-" + language + ".properties";
        Properties words = new Properties();
        try (InputStream in = SheetWords.class.getResourceAsStream(file)) {
            if (in == null || !language.matches("[a-z]{2,3}")) {
                throw new IllegalArgumentException(
                        "expected a language that the edge of the sheet has words in"
                        + " (en, es), found '" + language + "'");
            }
            words.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new SheetWords(word(words, "front"), word(words, "back"), word(words, "only"),
                word(words, "short-edge"), word(words, "long-edge"), word(words, "bar"), word(words,
                "turn-over"), word(words, "marks"), word(words, "cut"), word(words, "fold"),
                word(words, "fold-over"), word(words, "fold-under"));
    }

    private static String word(Properties words, String key) {
        return words.getProperty(key, "");
    }

    /** What stands beside the mark of a fold. */
    String step(FoldLine line) {
        String words = switch (line.move()) {
            case OVER -> foldOver;
            case UNDER -> foldUnder;
            case ALONG -> fold;
        };
        return words.replace("{0}", Integer.toString(line.step()));
    }

    /** The characters in them, and those of the ruler's numbers. */
    Set<Integer> characters() {
        Set<Integer> found = new TreeSet<>();
        (front + back + only + shortEdge + longEdge + bar + turnOver + marks + cut + fold + foldOver
                + foldUnder + "0123456789 mminch").codePoints().forEach(found::add);
        return found;
    }
}
