package org.fieldfold.typeset;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Breaks a paragraph into ragged-right lines by total fit: of all ways to break it, the one with the fewest
 * lines, and of those the one with the least cost. The cost of a line is the square of its shortness (the
 * share of the measure left empty) plus the penalty of the place where it ends; the last line costs nothing
 * unless one short word stands alone on it. The optimality principle over lines, as in Knuth and Plass,
 * "Breaking Paragraphs into Lines" (1981), with their glue left out because nothing stretches.
 */
final class LineFit {
    /**
     * One word alone on the last line: dearer than any raggedness, so it is only left where nothing else can
     * be.
     */
    static final double STRANDED = 50;
    /** A single word shorter than this share of the measure counts as stranded. */
    static final double STRANDED_WIDTH = 0.5;
    /** A single word that is wider than the measure. */
    static final double TOO_WIDE = 1000;

    private LineFit() {}

    /** @param measure in thousandths of the type size */
    static List<Line> fit(List<Word> words, double measure) {
        int n = words.size();
        if (n == 0) {
            return List.of();
        }
        double[] widths = new double[n];
        double[] spaces = new double[n];
        for (int i = 0; i < n; i++) {
            widths[i] = words.get(i).width();
            spaces[i] = words.get(i).spaceWidth();
        }
        int[] lines = new int[n + 1];
        double[] cost = new double[n + 1];
        int[] from = new int[n + 1];
        for (int end = 1; end <= n; end++) {
            lines[end] = Integer.MAX_VALUE;
            double width = 0;
            for (int start = end - 1; start >= 0; start--) {
                width += widths[start] + (start < end - 1 ? spaces[start] : 0);
                if (width > measure + 1e-9 && start < end - 1) {
                    break;
                }
                int count = lines[start] + 1;
                double total = cost[start] + cost(words, start, end, width, measure);
                if (count < lines[end] || (count == lines[end] && total < cost[end])) {
                    lines[end] = count;
                    cost[end] = total;
                    from[end] = start;
                }
            }
        }
        List<Line> result = new ArrayList<>();
        for (int end = n; end > 0; end = from[end]) {
            result.add(Line.of(words.subList(from[end], end), end < n));
        }
        Collections.reverse(result);
        return List.copyOf(result);
    }

    /** Cost of the words from {@code start} to before {@code end} as one line. */
    static double cost(List<Word> words, int start, int end, double width, double measure) {
        double tooWide = width > measure + 1e-9 ? TOO_WIDE : 0;
        if (end == words.size()) {
            boolean stranded = start > 0 && end - start == 1 && width < STRANDED_WIDTH * measure;
            return tooWide + (stranded ? STRANDED : 0);
        }
        double shortness = Math.max(0, measure - width) / measure;
        return tooWide + shortness * shortness + words.get(end - 1).penalty();
    }
}
