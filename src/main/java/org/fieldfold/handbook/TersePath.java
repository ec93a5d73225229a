package org.fieldfold.handbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Path data (SVG 1.1, 8.3) as a telephone draws it: every curve keeps its ends, to a tenth of a unit, and loses the
 * control points that do not bend it by more than {@link #SEEN}.
 */
final class TersePath {
    /** What nobody sees, in units of the drawing: drawings are about 120 units across. */
    static final double SEEN = 0.15;

    private static final Pattern TOKEN = Pattern.compile("[A-Za-z]|[-+]?(?:\\d+\\.?\\d*|\\.\\d+)");
    /** By how much a cubic leaves the quadratic between its ends, as a share of its third difference. */
    private static final double APART = Math.sqrt(3) / 36;

    private final StringBuilder out = new StringBuilder();
    /** Where the pen is as drawn here, and as asked for: they differ by rounding alone. */
    private double penX;
    private double penY;
    private double x;
    private double y;
    private double startX;
    private double startY;
    private double startPenX;
    private double startPenY;
    private char last = ' ';

    private TersePath() {
    }

    /** The data anew; empty when it holds a command that is not taken apart here. */
    static Optional<String> of(String data) {
        TersePath path = new TersePath();
        List<String> tokens = new ArrayList<>();
        Matcher token = TOKEN.matcher(data);
        int end = 0;
        while (token.find()) {
            if (!isBlank(data, end, token.start())) {
                return Optional.empty();
            }
            tokens.add(token.group());
            end = token.end();
        }
        return path.read(tokens) ? Optional.of(path.out.toString()) : Optional.empty();
    }

    private static boolean isBlank(String data, int from, int to) {
        for (int i = from; i < to; i++) {
            if (data.charAt(i) > ' ' && data.charAt(i) != ',') {
                return false;
            }
        }
        return true;
    }

    private boolean read(List<String> tokens) {
        char command = ' ';
        int at = 0;
        while (at < tokens.size()) {
            char first = tokens.get(at).charAt(0);
            if (Character.isLetter(first)) {
                command = first;
                at++;
            }
            int needs = "zZ".indexOf(command) >= 0 ? 0 : "hHvV".indexOf(command) >= 0 ? 1
                    : "mMlL".indexOf(command) >= 0 ? 2 : "cC".indexOf(command) >= 0 ? 6 : -1;
            if (needs < 0 || at + needs > tokens.size() || needs == 0 && !Character.isLetter(first)) {
                return false;
            }
            double[] numbers = new double[needs];
            for (int i = 0; i < needs; i++) {
                if (Character.isLetter(tokens.get(at + i).charAt(0))) {
                    return false;
                }
                numbers[i] = Double.parseDouble(tokens.get(at + i));
            }
            at += needs;
            segment(command, numbers);
            command = command == 'm' ? 'l' : command == 'M' ? 'L' : command;
        }
        return true;
    }

    private void segment(char command, double[] n) {
        boolean relative = Character.isLowerCase(command);
        double fromX = relative ? x : 0;
        double fromY = relative ? y : 0;
        switch (Character.toLowerCase(command)) {
            case 'z' -> {
                out.append('z');
                last = 'z';
                x = startX;
                y = startY;
                penX = startPenX;
                penY = startPenY;
            }
            case 'm' -> {
                put('m', fromX + n[0], fromY + n[1]);
                startX = x;
                startY = y;
                startPenX = penX;
                startPenY = penY;
            }
            case 'l' -> put('l', fromX + n[0], fromY + n[1]);
            case 'h' -> put('l', fromX + n[0], y);
            case 'v' -> put('l', x, fromY + n[0]);
            default -> curve(fromX + n[0], fromY + n[1], fromX + n[2], fromY + n[3], fromX + n[4], fromY + n[5]);
        }
    }

    private void curve(double x1, double y1, double x2, double y2, double x3, double y3) {
        double bend = APART * Math.hypot(x3 - 3 * x2 + 3 * x1 - x, y3 - 3 * y2 + 3 * y1 - y);
        double qx = (3 * (x1 + x2) - x - x3) / 4;
        double qy = (3 * (y1 + y2) - y - y3) / 4;
        if (bend > SEEN) {
            put('c', x1, y1, x2, y2, x3, y3);
        } else if (bend + Math.hypot(qx - (x + x3) / 2, qy - (y + y3) / 2) / 2 <= SEEN) {
            put('l', x3, y3);
        } else {
            put('q', qx, qy, x3, y3);
        }
    }

    /** All points from where the pen stands here, so that rounding never adds up. */
    private void put(char command, double... points) {
        x = points[points.length - 2];
        y = points[points.length - 1];
        long[] tenths = new long[points.length];
        for (int i = 0; i < points.length; i++) {
            tenths[i] = Math.round((points[i] - (i % 2 == 0 ? penX : penY)) * 10);
        }
        penX += tenths[points.length - 2] / 10.0;
        penY += tenths[points.length - 1] / 10.0;
        if (command == 'l' && (tenths[0] == 0 || tenths[1] == 0)) {
            write(tenths[1] == 0 ? 'h' : 'v', tenths[1] == 0 ? tenths[0] : tenths[1]);
        } else {
            write(command, tenths);
        }
    }

    private void write(char command, long... tenths) {
        if (command != last || command == 'm') {
            out.append(command);
        } else {
            out.append(' ');
        }
        for (int i = 0; i < tenths.length; i++) {
            long whole = Math.abs(tenths[i]) / 10;
            long rest = Math.abs(tenths[i]) % 10;
            out.append(i == 0 ? "" : " ").append(tenths[i] < 0 ? "-" : "").append(whole)
                    .append(rest == 0 ? "" : "." + rest);
        }
        last = command;
    }
}
