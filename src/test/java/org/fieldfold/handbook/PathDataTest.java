package org.fieldfold.handbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.fieldfold.entry.Figure;
import org.fieldfold.entry.Placed;
import org.junit.jupiter.api.Test;

class PathDataTest {
    /** A command, or a number (SVG 1.1, 8.3.9). Our drawings use no arc flags. */
    private static final Pattern TOKEN = Pattern.compile("[A-Za-z]|[-+]?(?:\\d+\\.?\\d*|\\.\\d+)");
    private static final Pattern PATH = Pattern.compile(" d=[\"']([^\"']*)[\"']");

    private static final double SEEN = 0.15;

    /** Steps for a unit. */
    private static final int SCALE = 10;

    /** What is not seen, and a rounding to tenths on top. */
    private static final double NEAR = SEEN + 0.1;

    @Test
    void everyShippedDrawingKeepsEveryLineWhereItWas() {
        long before = 0;
        long after = 0;
        int points = 0;
        for (Placed<Figure> placed : Shipped.BASE.figures().values()) {
            String drawn = new String(placed.value().bytes(), StandardCharsets.UTF_8);
            List<String> asked = paths(drawn);
            for (int i = 0; i < asked.size(); i++) {
                String found = PathOnGrid.of(PathData.of(asked.get(i)).orElseThrow().bent(SEEN), SCALE);
                List<double[]> one = points(asked.get(i));
                List<double[]> other = points(found);
                assertEquals(one.size(), other.size(), asked.get(i) + " / " + found);
                for (int k = 0; k < one.size(); k++) {
                    assertTrue(Math.hypot(one.get(k)[0] - other.get(k)[0] / SCALE,
                            one.get(k)[1] - other.get(k)[1] / SCALE) <= NEAR,
                            placed.value().id() + ": " + asked.get(i) + " / " + found);
                }
                points += one.size();
                before += asked.get(i).length();
                after += found.length();
            }
        }
        assertTrue(points > 10_000 && after < 0.9 * before, after + " of " + before + ", " + points + " points");
    }

    private static List<String> paths(String svg) {
        return PATH.matcher(svg).results().map(path -> path.group(1)).toList();
    }

    /** Four points along every segment, the end among them. */
    private static List<double[]> points(String data) {
        List<double[]> points = new ArrayList<>();
        List<String> tokens = TOKEN.matcher(data).results().map(token -> token.group()).toList();
        double[] pen = {0, 0};
        double[] start = {0, 0};
        char command = ' ';
        int at = 0;
        while (at < tokens.size()) {
            if (Character.isLetter(tokens.get(at).charAt(0))) {
                command = tokens.get(at++).charAt(0);
            }
            char kind = Character.toLowerCase(command);
            boolean relative = Character.isLowerCase(command);
            int needs = kind == 'z' ? 0 : kind == 'h' || kind == 'v' ? 1 : kind == 'q' ? 4 : kind == 'c' ? 6 : 2;
            double[][] bezier = new double[Math.max(2, needs / 2 + 1)][];
            bezier[0] = pen;
            bezier[1] = kind == 'z' ? start : kind == 'h'
                    ? new double[] {Double.parseDouble(tokens.get(at)) + (relative ? pen[0] : 0), pen[1]}
                    : kind == 'v' ? new double[] {pen[0], Double.parseDouble(tokens.get(at)) + (relative ? pen[1] : 0)}
                    : bezier[1];
            for (int i = 0; needs > 1 && i < needs; i += 2) {
                bezier[i / 2 + 1] = new double[] {Double.parseDouble(tokens.get(at + i)) + (relative ? pen[0] : 0),
                        Double.parseDouble(tokens.get(at + i + 1)) + (relative ? pen[1] : 0)};
            }
            at += needs;
            for (int quarter = 1; quarter <= 4 && kind != 'm'; quarter++) {
                points.add(along(bezier, quarter / 4.0));
            }
            pen = bezier[bezier.length - 1];
            if (kind == 'm') {
                start = pen;
                points.add(pen);
            }
            command = command == 'm' ? 'l' : command == 'M' ? 'L' : command;
        }
        return points;
    }

    /** De Casteljau's construction. */
    private static double[] along(double[][] bezier, double share) {
        double[][] left = bezier;
        while (left.length > 1) {
            double[][] next = new double[left.length - 1][];
            for (int i = 0; i < next.length; i++) {
                next[i] = new double[] {left[i][0] + share * (left[i + 1][0] - left[i][0]),
                        left[i][1] + share * (left[i + 1][1] - left[i][1])};
            }
            left = next;
        }
        return left[0];
    }
}
