package org.fieldfold.source;

import java.util.List;

/**
 * Prints findings for people: place, severity, message and rule on one line, then the source line with a caret, then
 * the hint.
 *
 * <pre>
 * content/pests/leek-moth.yaml:12:9: error: expected a number, found 'two' [wrong-type]
 *     value: two
 *            ^~~
 *   hint: write the number in figures
 * </pre>
 */
public final class FindingPrinter {
    private static final int WIDEST_LINE = 160;

    private final boolean colour;

    /** @param colour whether to mark severities with terminal colours; only for a terminal */
    public FindingPrinter(boolean colour) {
        this.colour = colour;
    }

    public String print(Finding finding) {
        Span span = finding.span();
        StringBuilder out = new StringBuilder();
        out.append(span.place()).append(": ").append(severity(finding.severity())).append(": ")
                .append(finding.message()).append(" [").append(finding.rule()).append("]\n");
        String line = visible(span.file().lineText(span.line()));
        if (!line.isBlank() && line.length() <= WIDEST_LINE) {
            int column = span.column() - 1;
            int length = Math.max(1, Math.min(line.length() - column, span.end() - span.start()));
            out.append("    ").append(line).append('\n');
            out.append("    ").append(" ".repeat(column)).append('^').append("~".repeat(length - 1)).append('\n');
        }
        if (!finding.hint().isEmpty()) {
            out.append("  hint: ").append(finding.hint()).append('\n');
        }
        return out.toString();
    }

    /** One sentence that counts what was found, as in {@code 2 errors, 1 warning, 0 notes}. */
    public static String summary(List<Finding> findings) {
        return count(findings, Severity.ERROR, "error") + ", " + count(findings, Severity.WARNING, "warning") + ", "
                + count(findings, Severity.INFO, "note");
    }

    private static String count(List<Finding> findings, Severity severity, String word) {
        long count = findings.stream().filter(finding -> finding.severity() == severity).count();
        return count + " " + word + (count == 1 ? "" : "s");
    }

    /** Tabs and control characters would move the caret or the terminal: they are shown as a blank. */
    private static String visible(String line) {
        return line.replaceAll("\\p{Cntrl}", " ");
    }

    private String severity(Severity severity) {
        if (!colour) {
            return severity.word();
        }
        String code = switch (severity) {
            case ERROR -> "31";
            case WARNING -> "33";
            case INFO -> "36";
        };
        return "\u001b[1;" + code + "m" + severity.word() + "\u001b[0m";
    }
}
