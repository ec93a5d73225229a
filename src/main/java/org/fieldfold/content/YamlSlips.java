package org.fieldfold.content;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Span;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;

/** Names the slip behind an error of the YAML reader, and mends it so far that reading can go on. */
final class YamlSlips {
    private static final Pattern KEY_AND_VALUE = Pattern.compile("^(\\s*(?:- "
            + "+)*)(?:([^\\s:#'\"{\\[][^:#]*): +)?(\\S.*)?$");
    private static final Pattern SWALLOWING = Pattern.compile("[^\\s#](?: #| +#(?=\\S))");
    private static final Pattern NO_BREAK = Pattern.compile("(?:^|[:\\-\\s])(\\u00a0)|\\u00a0$");

    /**
     * A slip.
     *
     * @param mended the text to read next; the same text when there is no way to go on
     * @param guessed whether something was passed over
     */
    record Slip(Finding finding, MendedText mended, boolean guessed) {
    }

    private final MendedText text;
    private final String problem;
    private final int at;
    private final int context;

    YamlSlips(MendedText text, MarkedYamlEngineException trouble) {
        this.text = text;
        this.at = offset(trouble.getProblemMark().or(trouble::getContextMark));
        this.context = offset(trouble.getContextMark().or(trouble::getProblemMark));
        this.problem = (trouble.getContext() == null ? "" : trouble.getContext() + ": ")
                + trouble.getProblem();
    }

    private int offset(java.util.Optional<Mark> mark) {
        return mark.map(place -> text.offset(place.getIndex())).orElse(0);
    }

    static Finding reservedStart(Span at, String sign) {
        return FormRule.RESERVED_START.at(at, "expected a value, found one that begins with '" + sign
                + "', which is a sign of YAML", "put the whole value in double quotes");
    }

    Slip slip() {
        return tabs().or(this::noBreakSpace).or(this::bySigns).or(this::swallowed).or(this::byContext)
                .orElseGet(this::unknown);
    }

    private java.util.Optional<Slip> some(Finding finding, MendedText mended) {
        return java.util.Optional.of(new Slip(finding, mended, false));
    }

    private java.util.Optional<Slip> tabs() {
        int from = text.lineStart(Math.min(at, context));
        int to = text.lineEnd(Math.max(at, context));
        for (int line = from; line <= to; line = text.lineEnd(line) + 1) {
            int tab = leadingTab(line);
            if (tab >= 0) {
                return some(FormRule.TAB_INDENT.at(text.span(tab, tab + 1),
                        "expected spaces before the first word, found a tab" + others(line),
                        "indent with two spaces; let the editor turn tabs into spaces"),
                                text.withoutLeadingTabs());
            }
        }
        if (at < text.text().length() && text.text().charAt(at) == '\t') {
            return some(FormRule.TAB_INDENT.at(text.span(at, at + 1), "expected a space, found a tab",
                    "write one space"), text.replace(at, at + 1, " "));
        }
        return java.util.Optional.empty();
    }

    private int leadingTab(int lineStart) {
        int i = lineStart;
        while (i < text.text().length() && text.text().charAt(i) == ' ') {
            i++;
        }
        return i < text.text().length() && text.text().charAt(i) == '\t' ? i : -1;
    }

    private String others(int firstLine) {
        int more = 0;
        for (int line = text.lineEnd(firstLine) + 1; line < text.text().length(); line = text.lineEnd(line)
                + 1) {
            more += leadingTab(line) >= 0 ? 1 : 0;
        }
        return more == 0 ? "" : ", and on " + more + " more " + (more == 1 ? "line" : "lines");
    }

    /** A no-break space beside a colon or hyphen is a letter to YAML, so that the key is not seen as one. */
    private java.util.Optional<Slip> noBreakSpace() {
        int from = problem.contains("<document start>") ? 0 : text.lineStart(lineAbove(Math.min(at,
                context)));
        Matcher found = NO_BREAK.matcher(text.text()).region(from, text.lineEnd(Math.max(at, context)));
        if (!found.find()) {
            return java.util.Optional.empty();
        }
        int space = found.end() - 1;
        return some(noBreakSpace(text.span(space, space + 1)), text.replace(space, space + 1, " "));
    }

    static Finding noBreakSpace(Span at) {
        return FormRule.NO_BREAK_SPACE.at(at, "expected an ordinary space, found a no-break space (U+00A0)",
                "delete it and press the space bar");
    }

    private java.util.Optional<Slip> bySigns() {
        if (problem.contains("cannot start any token") && at < text.text().length()) {
            return some(reservedStart(text.span(at, text.lineEnd(at)),
                    String.valueOf(text.text().charAt(at))), text.shift(at));
        }
        if (problem.startsWith("while scanning an alias") || problem.startsWith("while scanning an anchor")
                || problem.startsWith("while scanning a block scalar")
                        || problem.startsWith("while scanning a tag")
                || problem.startsWith("while scanning a directive")) {
            return isShiftable(context) ? some(reservedStart(text.span(context, text.lineEnd(context)),
                    String.valueOf(text.text().charAt(context))), text.shift(context))
                            : java.util.Optional.empty();
        }
        if (problem.contains("mapping values are not allowed")) {
            return java.util.Optional.of(colon());
        }
        if (problem.startsWith("while scanning a quoted scalar")
                || problem.startsWith("while scanning a double-quoted")
                || problem.startsWith("while scanning a single-quoted")) {
            return quotes();
        }
        return java.util.Optional.empty();
    }

    private boolean isShiftable(int offset) {
        return offset < text.text().length() && "*&!|>%".indexOf(text.text().charAt(offset)) >= 0;
    }

    private Slip colon() {
        int lineStart = text.lineStart(at);
        String before = text.text().substring(Math.max(lineStart, at - 1000), at);
        if (before.strip().matches("(- +)*[a-z][a-z0-9-]*")) {
            int word = at - before.stripLeading().length();
            return new Slip(FormRule.BAD_INDENT.at(text.span(word, at), "expected the key '" + before.strip()
                    + "' in the column of the keys above it, found it deeper, inside the value above",
                    "move the line so that it begins where the keys beside it begin"),
                    text.replace(lineStart, word, " ".repeat(keyColumnAbove(lineStart))), false);
        }
        Matcher line = KEY_AND_VALUE.matcher(text.line(at));
        int value = line.matches() && line.group(3) != null && lineStart + line.start(3) < at
                ? lineStart + line.start(3) : lineStart;
        return new Slip(FormRule.UNQUOTED_COLON.at(text.span(value, text.lineEnd(at)),
                "expected one value, found a second colon and space in it",
                "put the whole value in double quotes"), text.shift(at), false);
    }

    /** The offset of the line before that of {@code offset}, or of the same line when it is the first. */
    private int lineAbove(int offset) {
        int end = text.lineStart(offset) - 1;
        return Math.max(0, end > 0 && text.text().startsWith("\r\n", end - 1) ? end - 1 : end);
    }

    /** The column in which the key of the nearest line above begins. */
    private int keyColumnAbove(int lineStart) {
        for (int line = lineStart; line > 0; line = text.lineStart(line)) {
            line = lineAbove(line);
            Matcher key = KEY_AND_VALUE.matcher(text.line(line));
            if (key.matches() && key.group(2) != null) {
                return key.end(1);
            }
        }
        return 0;
    }

    private java.util.Optional<Slip> quotes() {
        if (problem.contains("escape")) {
            int slash = text.text().lastIndexOf('\\', at);
            if (slash < 0) {
                return java.util.Optional.empty();
            }
            return some(FormRule.BAD_ESCAPE.at(text.span(slash, Math.min(slash + 2, text.text().length())),
                    "expected a known escape behind '\\' in double quotes, found another character",
                    "write '\\\\' for a backslash, or use single quotes"), text.shift(slash));
        }
        return some(FormRule.UNCLOSED_QUOTE.at(text.span(context, context + 1),
                "expected a closing quotation mark, found the end of the text",
                "close the value with the quotation mark that opens it"), text.shift(context));
    }

    /** What went on behind a line that lost its end to a '#' looks out of place. */
    private java.util.Optional<Slip> swallowed() {
        boolean lost = problem.contains("could not find expected ':'")
                || problem.contains("expected <block end>");
        int above = lineAbove(problem.contains("<block end>") ? at : context);
        Matcher found = SWALLOWING.matcher(text.text()).region(text.lineStart(above), text.lineEnd(above));
        if (!lost || above == 0 || !found.find()) {
            return java.util.Optional.empty();
        }
        int sign = found.end() - 1;
        return some(swallowed(text.span(sign, text.lineEnd(sign))), text.shift(sign));
    }

    static Finding swallowed(Span at) {
        return FormRule.SWALLOWED_COMMENT.at(at,
                "expected the text to go on, found ' #', behind which nothing is read",
                "put the whole value in double quotes; for a comment write two spaces, '#' and a space");
    }

    private java.util.Optional<Slip> byContext() {
        if (problem.startsWith("while parsing a flow")) {
            int open = problem.contains("flow node") ? openBracket(at) : context;
            char bracket = open >= 0 && open < text.text().length() ? text.text().charAt(open) : ' ';
            if (bracket == '[' || bracket == '{') {
                return some(FormRule.UNCLOSED_BRACKET.at(text.span(open, open + 1), "expected a '"
                        + (bracket == '[' ? ']' : '}') + "' that closes this '" + bracket + "', found none",
                        "close the bracket; a text that begins with a bracket stands in double quotes"),
                        text.blank(open));
            }
        }
        if (problem.contains("could not find expected ':'")) {
            int start = text.lineStart(context);
            int end = text.lineEnd(context);
            return java.util.Optional.of(new Slip(FormRule.MISSING_COLON.at(text.span(context, end),
                    "expected a key, a colon and a space, found '" + MendedText.unshifted(
                            text.text().substring(context, end).strip()) + "'",
                    "write 'key: value'"), text.replace(start, end, " ".repeat(end - start)), true));
        }
        if (problem.contains("expected <block end>") || problem.contains("did not find expected")) {
            return java.util.Optional.of(afterBlock());
        }
        return java.util.Optional.empty();
    }

    /** The last bracket before {@code end} that is not closed again; -1 when all are. */
    private int openBracket(int end) {
        int closed = 0;
        for (int i = Math.min(end, text.text().length()) - 1; i >= 0; i--) {
            char c = text.text().charAt(i);
            closed += c == ']' || c == '}' ? 1 : 0;
            if ((c == '[' || c == '{') && closed-- == 0) {
                return i;
            }
        }
        return -1;
    }

    private Slip afterBlock() {
        int lineStart = text.lineStart(at);
        Matcher line = KEY_AND_VALUE.matcher(text.line(at));
        if (line.matches() && line.group(3) != null && lineStart + line.start(3) < at) {
            int value = lineStart + line.start(3);
            char sign = text.text().charAt(value);
            if (sign == '"' || sign == '\'') {
                MendedText mended = text;
                for (int i = value; i < text.lineEnd(at); i++) {
                    mended = text.text().charAt(i) == sign ? mended.shift(i) : mended;
                }
                return new Slip(FormRule.TEXT_AFTER_QUOTE.at(text.span(at, text.lineEnd(at)),
                        "expected the end of the value behind its closing quotation mark, found more text",
                        "put the whole value in the other kind of quotation mark"), mended, false);
            }
            if (isShiftable(value)) {
                return new Slip(reservedStart(text.span(value, text.lineEnd(at)), String.valueOf(sign)),
                        text.shift(value), false);
            }
        }
        int word = lineStart + text.line(at).length() - text.line(at).stripLeading().length();
        return new Slip(FormRule.BAD_INDENT.at(text.span(word, text.lineEnd(at)),
                "expected a line in the column of the lines that it belongs to, found it between columns",
                "move the line so that it begins where the lines beside it begin"), text.blank(at), true);
    }

    /** Nothing that has a name: the line is passed over, or the line where the trouble began. */
    private Slip unknown() {
        Finding finding = FormRule.NOT_YAML.at(text.span(at, text.lineEnd(at)),
                "expected YAML, found something that is "
                + "none: " + problem, "compare the line, and the one above it, with a sample");
        int line = !text.line(at).isBlank() ? at : !text.line(context).isBlank() ? context : -1;
        return new Slip(finding, line < 0 ? text : text.blank(line), true);
    }
}
