package org.fieldfold.report;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Tables as comma-separated values (RFC 4180): what holds a comma, a quotation mark or a line end stands in
 * quotation marks, lines end with CRLF.
 *
 * <p>A cell that a spreadsheet would take for a formula begins with an apostrophe: formulas begin with =, +,
 * - or @, or with one of these behind a tab or a line end. A plain number is no formula.
 */
public final class Csv {
    private Csv() {
    }

    /** The table as text, without a byte-order mark. */
    public static String write(List<List<String>> rows) {
        return rows.stream().map(row -> row.stream().map(Csv::cell).collect(Collectors.joining(",")) + "\r\n")
                .collect(Collectors.joining());
    }

    private static String cell(String value) {
        String safe = harmless(value);
        return safe.matches("(?s).*[,;\"\t\r\n].*") || !safe.equals(safe.strip())
                ? "\"" + safe.replace("\"", "\"\"") + "\"" : safe;
    }

    /** The value as a cell that cannot act; {@link #meant} takes it back. */
    public static String harmless(String value) {
        return isFormula(value) || value.startsWith("'") ? "'" + value : value;
    }

    /** What a cell that was written by {@link #harmless} stands for. */
    public static String meant(String cell) {
        return cell.startsWith("'") && (isFormula(cell.substring(1)) || cell.startsWith("''"))
                ? cell.substring(1) : cell;
    }

    private static boolean isFormula(String value) {
        return value.matches("(?s)[=+\\-@\\t\\r\\n].*") && !value.matches("[+-]?[0-9]+([.,][0-9]+)?");
    }
}
