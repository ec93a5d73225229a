package org.fieldfold.handbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Path data (SVG 1.1, 8.3) as steps of whole numbers from point to point. Every point is put on the grid by
 * itself, so that roundings don't add up along a path.
 */
final class PathOnGrid {
    private static final Pattern TOKEN = Pattern.compile(
            "\\G[\\s,]*([A-Za-z]|[-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?)");

    private final StringBuilder out = new StringBuilder();
    private final int scale;
    private char written;

    /** Where the pen is and where its line began: as drawn, and on the grid. */
    private double x;
    private double y;
    private double startX;
    private double startY;
    private long gridX;
    private long gridY;
    private long gridStartX;
    private long gridStartY;

    private PathOnGrid(int scale) {
        this.scale = scale;
    }

    /** Reads path data; empty when it is broken, or holds an arc, whose flags are no lengths. */
    static Optional<PathOnGrid> of(String data, int scale) {
        List<String> tokens = new ArrayList<>();
        Matcher token = TOKEN.matcher(data);
        int end = 0;
        while (token.find()) {
            tokens.add(token.group(1));
            end = token.end();
        }
        PathOnGrid path = new PathOnGrid(scale);
        return data.substring(end).isBlank() && path.read(tokens) ? Optional.of(path) : Optional.empty();
    }

    String written() {
        return out.toString();
    }

    private boolean read(List<String> tokens) {
        char command = ' ';
        for (int at = 0; at < tokens.size(); ) {
            if (Character.isLetter(tokens.get(at).charAt(0))) {
                command = tokens.get(at).charAt(0);
                at++;
            }
            int count = numbers(Character.toLowerCase(command));
            if (count < 0 || at + count > tokens.size()) {
                return false;
            }
            double[] numbers = new double[count];
            for (int i = 0; i < count; i++) {
                if (Character.isLetter(tokens.get(at + i).charAt(0))) {
                    return false;
                }
                numbers[i] = Double.parseDouble(tokens.get(at + i));
            }
            at += count;
            step(command, numbers);
            command = command == 'm' ? 'l' : command == 'M' ? 'L' : count == 0 ? ' ' : command;
        }
        return true;
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

    private void step(char command, double[] numbers) {
        boolean relative = Character.isLowerCase(command);
        char kind = Character.toLowerCase(command);
        if (kind == 'z') {
            write('z');
            x = startX;
            y = startY;
            gridX = gridStartX;
            gridY = gridStartY;
            return;
        }
        if (kind == 'h') {
            double to = numbers[0] + (relative ? x : 0);
            write('h', grid(to) - gridX);
            moveTo(to, y);
            return;
        }
        if (kind == 'v') {
            double to = numbers[0] + (relative ? y : 0);
            write('v', grid(to) - gridY);
            moveTo(x, to);
            return;
        }
        long[] steps = new long[numbers.length];
        for (int i = 0; i < numbers.length; i += 2) {
            numbers[i] += relative ? x : 0;
            numbers[i + 1] += relative ? y : 0;
            steps[i] = grid(numbers[i]) - gridX;
            steps[i + 1] = grid(numbers[i + 1]) - gridY;
        }
        write(kind, steps);
        moveTo(numbers[numbers.length - 2], numbers[numbers.length - 1]);
        if (kind == 'm') {
            startX = x;
            startY = y;
            gridStartX = gridX;
            gridStartY = gridY;
        }
    }

    private void moveTo(double toX, double toY) {
        x = toX;
        y = toY;
        gridX = grid(toX);
        gridY = grid(toY);
    }

    private long grid(double length) {
        return Math.round(length * scale);
    }

    /** A command's letter stands only where it changes; a line behind a move needs none either. */
    private void write(char kind, long... steps) {
        boolean again = kind == written && kind != 'm' && kind != 'z' || kind == 'l' && written == 'm';
        if (!again) {
            out.append(kind);
        }
        for (int i = 0; i < steps.length; i++) {
            if ((again || i > 0) && steps[i] >= 0) {
                out.append(' ');
            }
            out.append(steps[i]);
        }
        written = kind;
    }
}
