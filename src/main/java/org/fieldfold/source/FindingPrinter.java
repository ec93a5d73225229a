package org.fieldfold.source;

import java.util.List;

/**
 * Prints findings for people: place, severity, message and rule on one line, then the source line with a
 * caret, then the hint.
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
    /** Of a line that is quoted before its message. */
    private static final int WIDEST_QUOTE = 60;

    private final boolean colour;

    /** @param colour whether to mark severities with terminal colours; only for a terminal */
    public FindingPrinter(boolean colour) {
        this.colour = colour;
    }

    public String print(Finding finding) {
        Span span = finding.span();
        StringBuilder out = new StringBuilder();
        out.append(span.place()).append(": ").append(severity(finding.severity())).append(": ")
                .append(visible(finding.message())).append(" [").append(finding.rule()).append("]\n");
        String line = span.file().lineText(span.line());
        if (!line.isBlank() && line.length() <= WIDEST_LINE) {
            int from = span.start() - span.file().lineStart(span.line());
            int to = Math.min(line.length(), from + span.end() - span.start());
            out.append("    ").append(visible(line)).append('\n').append("    ")
                    .append(" ".repeat(columns(line.substring(0, Math.min(from, line.length()))))).append('^')
                    .append("~".repeat(Math.max(0, columns(line.substring(Math.min(from, to), to)) - 1)))
                            .append('\n');
        }
        if (!finding.hint().isEmpty()) {
            out.append("  hint: ").append(visible(finding.hint())).append('\n');
        }
        return out.toString();
    }

    /** Findings of one file, rule, severity and hint: what they share once, then a line each. */
    String together(List<Finding> alike) {
        Finding first = alike.get(0);
        SourceFile file = first.span().file();
        StringBuilder out = new StringBuilder(file.path()).append(": ").append(severity(first.severity()))
                .append(": ").append(alike.size()).append(" times [").append(first.rule()).append("]\n");
        alike.forEach(finding -> {
            String line = file.lineText(finding.span().line()).strip();
            out.append("    line ").append(finding.span().line()).append("  ");
            if (!line.isEmpty() && line.length() <= WIDEST_QUOTE) {
                out.append(visible(line)).append("  ");
            }
            out.append(visible(finding.message())).append('\n');
        });
        if (!first.hint().isEmpty()) {
            out.append("  hint: ").append(visible(first.hint())).append('\n');
        }
        return out.toString();
    }

    /** One sentence that counts what was found, as in {@code 2 errors, 1 warning, 0 notes}. */
    public static String summary(List<Finding> findings) {
        return count(findings, Severity.ERROR, "error") + ", " + count(findings, Severity.WARNING, "warning")
                + ", " + count(findings, Severity.INFO, "note");
    }

    private static String count(List<Finding> findings, Severity severity, String word) {
        long count = findings.stream().filter(finding -> finding.severity() == severity).count();
        return count + " " + word + (count == 1 ? "" : "s");
    }

    /** Tabs and control characters would move the caret or the terminal: they are shown as a blank. */
    private static String visible(String line) {
        return line.replaceAll("[\\p{Cntrl}\\x80-\\x9f]", " ");
    }

    /** Columns that a terminal gives to a text. */
    private static int columns(String text) {
        return text.codePoints().map(FindingPrinter::columns).sum();
    }

    /**
     * Unicode Standard Annex 11: the ideographs, kana, Hangul, full-width forms and most pictures take two
     * columns; marks that stand on the letter before them take none.
     */
    private static int columns(int c) {
        int type = Character.getType(c);
        if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK
                || type == Character.FORMAT) {
            return 0;
        }
        boolean wide = c >= 0x1100 && c <= 0x115F || c >= 0x2E80 && c <= 0xA4CF || c >= 0xAC00 && c <= 0xD7A3
                || c >= 0xF900 && c <= 0xFAFF || c >= 0xFE30 && c <= 0xFE6F || c >= 0xFF00 && c <= 0xFF60
                || c >= 0xFFE0 && c <= 0xFFE6 || c >= 0x1F300 && c <= 0x1FAFF || c >= 0x20000 && c <= 0x3FFFD;
        return wide ? 2 : 1;
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
