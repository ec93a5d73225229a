package org.fieldfold.report;

import java.util.ArrayList;
import java.util.List;

/**
 * Reads a table that a spreadsheet wrote: comma, semicolon or tab between cells, as the first line has them
 * most often; with or without a byte-order mark; lines ended in any way.
 *
 * @param separator between cells
 * @param rows in order; empty lines are left out
 */
public record CsvReading(char separator, List<Row> rows) {
    /**
     * One row.
     *
     * @param line on which it begins, from 1
     */
    public record Row(int line, List<String> cells) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    /** A table that is none; the message says where and why. */
    public static final class Unreadable extends Exception {
        Unreadable(String message) {
            super(message);
        }
    }

    public CsvReading {
        rows = List.copyOf(rows);
    }

    /** @throws Unreadable when a quotation mark is not closed, or stands in the middle of a cell */
    public static CsvReading read(String text) throws Unreadable {
        String table = text.startsWith("\uFEFF") ? text.substring(1) : text;
        char separator = separator(table);
        List<Row> rows = new ArrayList<>();
        int line = 1;
        int at = 0;
        while (at < table.length()) {
            List<String> cells = new ArrayList<>();
            int first = line;
            boolean more = true;
            while (more) {
                StringBuilder cell = new StringBuilder();
                int end = table.startsWith("\"", at) ? quoted(table, at, cell, line)
                        : plain(table, at, separator, cell);
                line += breaks(table.substring(at, end));
                at = end;
                cells.add(cell.toString());
                more = at < table.length() && table.charAt(at) == separator;
                at += more ? 1 : 0;
                if (!more && at < table.length() && !isBreak(table.charAt(at))) {
                    throw new Unreadable("line " + line + ": expected a separator behind the closing "
                            + "quotation mark, found '" + table.charAt(at) + "'");
                }
            }
            if (at < table.length()) {
                at += table.startsWith("\r\n", at) ? 2 : 1;
                line++;
            }
            if (cells.size() > 1 || !cells.get(0).isBlank()) {
                rows.add(new Row(first, cells));
            }
        }
        return new CsvReading(separator, rows);
    }

    private static char separator(String table) {
        int end = 0;
        while (end < table.length() && !isBreak(table.charAt(end))) {
            end++;
        }
        String head = table.substring(0, end).replaceAll("\"[^\"]*\"", "");
        char best = ',';
        for (char sign : new char[] {';', '\t'}) {
            best = count(head, sign) > count(head, best) ? sign : best;
        }
        return best;
    }

    private static long count(String text, char sign) {
        return text.chars().filter(c -> c == sign).count();
    }

    private static int plain(String table, int from, char separator, StringBuilder cell) {
        int at = from;
        while (at < table.length() && table.charAt(at) != separator && !isBreak(table.charAt(at))) {
            at++;
        }
        cell.append(table, from, at);
        return at;
    }

    private static int quoted(String table, int from, StringBuilder cell, int line) throws Unreadable {
        int at = from + 1;
        while (at < table.length()) {
            if (table.startsWith("\"\"", at)) {
                cell.append('"');
                at += 2;
            } else if (table.charAt(at) == '"') {
                return at + 1;
            } else {
                cell.append(table.charAt(at++));
            }
        }
        throw new Unreadable("line " + line + ": expected a closing quotation mark, found the "
                + "end of the file");
    }

    private static int breaks(String text) {
        return (int) text.replace("\r\n", "\n").chars().filter(c -> c == '\n' || c == '\r').count();
    }

    private static boolean isBreak(char c) {
        return c == '\n' || c == '\r';
    }
}
