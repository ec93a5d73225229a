package org.fieldfold.handbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Path data (SVG 1.1, 8.3), with all points where they lie and not as steps from each other. */
record PathData(List<Segment> segments) {
    /**
     * One command.
     *
     * @param kind m, l, c, q, s, t or z; what runs level or upright is an l
     * @param points x and y by turns, the last where the pen comes to
     */
    record Segment(char kind, double... points) {
        double x() {
            return points[points.length - 2];
        }

        double y() {
            return points[points.length - 1];
        }
    }

    private static final Pattern TOKEN = Pattern.compile(
            "\\G[\\s,]*([A-Za-z]|[-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?)");

    /** By how much a cubic leaves the quadratic between its ends, as a share of its third difference. */
    private static final double APART = Math.sqrt(3) / 36;

    /** Reads path data; empty when it is broken, or holds an arc, whose flags are no lengths. */
    static Optional<PathData> of(String data) {
        List<String> tokens = new ArrayList<>();
        Matcher token = TOKEN.matcher(data);
        int end = 0;
        while (token.find()) {
            tokens.add(token.group(1));
            end = token.end();
        }
        return data.substring(end).isBlank() ? read(tokens) : Optional.empty();
    }

    private static Optional<PathData> read(List<String> tokens) {
        Pen pen = new Pen();
        char command = ' ';
        for (int at = 0; at < tokens.size(); ) {
            if (isCommand(tokens.get(at))) {
                command = tokens.get(at).charAt(0);
                at++;
            }
            int count = numbers(Character.toLowerCase(command));
            if (count < 0 || at + count > tokens.size()
                    || tokens.subList(at, at + count).stream().anyMatch(PathData::isCommand)) {
                return Optional.empty();
            }
            pen.draw(command, tokens.subList(at, at + count).stream().mapToDouble(Double::parseDouble)
                    .toArray());
            at += count;
            command = command == 'm' ? 'l' : command == 'M' ? 'L' : count == 0 ? ' ' : command;
        }
        return Optional.of(new PathData(List.copyOf(pen.drawn)));
    }

    private static boolean isCommand(String token) {
        return Character.isLetter(token.charAt(0));
    }

    private static int numbers(char command) {
        return switch (command) {
            case 'm', 'l', 't' -> 2;
            case 'h', 'v' -> 1;
            case 's', 'q' -> 4;
            case 'c' -> 6;
            case 'z' -> 0;
            default -> -1;
        };
    }

    /** Follows the commands. */
    private static final class Pen {
        private final List<Segment> drawn = new ArrayList<>();
        private double x;
        private double y;
        private double startX;
        private double startY;

        void draw(char command, double[] numbers) {
            double fromX = Character.isLowerCase(command) ? x : 0;
            double fromY = Character.isLowerCase(command) ? y : 0;
            char kind = Character.toLowerCase(command);
            switch (kind) {
                case 'z' -> {
                    drawn.add(new Segment('z', startX, startY));
                    x = startX;
                    y = startY;
                }
                case 'h' -> to('l', numbers[0] + fromX, y);
                case 'v' -> to('l', x, numbers[0] + fromY);
                default -> {
                    for (int i = 0; i < numbers.length; i++) {
                        numbers[i] += i % 2 == 0 ? fromX : fromY;
                    }
                    to(kind, numbers);
                }
            }
            if (kind == 'm') {
                startX = x;
                startY = y;
            }
        }

        private void to(char kind, double... points) {
            Segment segment = new Segment(kind, points);
            drawn.add(segment);
            x = segment.x();
            y = segment.y();
        }
    }

    /**
     * The same path without the control points that do not bend it by more than {@code seen}. A curve that goes
     * on smoothly takes its first control point from the one before: then all stay.
     */
    PathData bent(double seen) {
        if (segments.stream().anyMatch(segment -> segment.kind() == 's' || segment.kind() == 't')) {
            return this;
        }
        List<Segment> bent = new ArrayList<>();
        double x = 0;
        double y = 0;
        for (Segment segment : segments) {
            bent.add(segment.kind() == 'c' ? bent(x, y, segment, seen) : segment);
            x = segment.x();
            y = segment.y();
        }
        return new PathData(bent);
    }

    private static Segment bent(double x, double y, Segment curve, double seen) {
        double[] p = curve.points();
        double bend = APART * Math.hypot(p[4] - 3 * p[2] + 3 * p[0] - x, p[5] - 3 * p[3] + 3 * p[1] - y);
        double qx = (3 * (p[0] + p[2]) - x - p[4]) / 4;
        double qy = (3 * (p[1] + p[3]) - y - p[5]) / 4;
        if (bend > seen) {
            return curve;
        }
        return bend + Math.hypot(qx - (x + p[4]) / 2, qy - (y + p[5]) / 2) / 2 <= seen
                ? new Segment('l', p[4], p[5]) : new Segment('q', qx, qy, p[4], p[5]);
    }
}
