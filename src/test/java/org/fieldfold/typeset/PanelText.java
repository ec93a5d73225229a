package org.fieldfold.typeset;

import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;

/** A panel set in fixed-width type as plain text: one row for each half line, one column for each half em. */
final class PanelText {
    private PanelText() {}

    static String of(SetPanel panel, Frame frame, double size) {
        double half = new Setter(new FixedWidth(), figure -> 1).leading(frame.height(), size, size).half();
        Map<Integer, char[]> rows = new TreeMap<>();
        int last = 0;
        for (Mark mark : panel.marks()) {
            if (mark instanceof Mark.Words words) {
                int row = (int) Math.floor((words.baseline() - frame.top()) / half);
                write(rows, row, (words.x() - frame.left()) / (size / 2), words.text());
                last = Math.max(last, row);
            } else if (mark instanceof Mark.Stroke stroke && Math.abs(stroke.y1() - stroke.y2()) < 0.01) {
                int row = (int) Math.floor((stroke.y1() - frame.top()) / half);
                int length = (int) Math.round((stroke.x2() - stroke.x1()) / (size / 2));
                write(rows, row, (stroke.x1() - frame.left()) / (size / 2), "_".repeat(Math.max(1, length)));
                last = Math.max(last, row);
            } else if (mark instanceof Mark.Drawing drawing) {
                int from = (int) Math.floor((drawing.y() - frame.top()) / half);
                int to = (int) Math.floor((drawing.y() + drawing.height() - frame.top()) / half);
                for (int row = from; row < to; row++) {
                    int length = (int) Math.round(drawing.width() / (size / 2));
                    write(rows, row, (drawing.x() - frame.left()) / (size / 2), "#".repeat(length));
                }
            }
        }
        StringBuilder out = new StringBuilder("panel " + panel.reading() + "\n");
        for (int row = 0; row <= last; row++) {
            String line = rows.containsKey(row) ? new String(rows.get(row)).stripTrailing() : "";
            out.append(line.isEmpty() ? "|" : "| " + line).append('\n');
        }
        return out.toString();
    }

    private static void write(Map<Integer, char[]> rows, int row, double x, String text) {
        char[] line = rows.computeIfAbsent(row, key -> {
            char[] empty = new char[120];
            Arrays.fill(empty, ' ');
            return empty;
        });
        int at = (int) Math.round(x);
        for (int i = 0; i < text.length() && at + i < line.length; i++) {
            if (text.charAt(i) != ' ') {
                line[Math.max(0, at + i)] = text.charAt(i);
            }
        }
    }
}
