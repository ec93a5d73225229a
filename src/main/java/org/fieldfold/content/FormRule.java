package org.fieldfold.content;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Severity;
import org.fieldfold.source.Span;

/**
 * What can be wrong with the form of a content file. Each has an explanation page under {@code check/rules}.
 */
public enum FormRule {
    ANCHOR_OR_ALIAS(Severity.ERROR,
            "anchors and aliases are not read: each fact is written out where it belongs"),
    BAD_DATE(Severity.ERROR, "a date is written year-month-day, and the day exists"),
    BAD_ESCAPE(Severity.ERROR, "a backslash in double quotes begins one of a few known escapes"),
    BAD_ID(Severity.ERROR,
            "an id has lower-case letters, digits and single hyphens, and begins with a letter or digit"),
    BAD_INDENT(Severity.ERROR, "keys of one map stand in one column"),
    BAD_NUMBER(Severity.ERROR,
            "a number is written in digits, with a point for decimals and without its unit"),
    BAD_VALUE(Severity.ERROR, "the values of a record fit together"),
    BAD_WEATHER_ROW(Severity.ERROR,
            "a weather file has a heading and rows of a date, a minimum and a maximum"),
    COLLIDING_ID(Severity.ERROR, "two ids or names differ in more than capitals and accents, and are given once"),
    CONTROL_CHARACTER(Severity.ERROR, "a text has no characters that are not seen, however they are written"),
    DUPLICATE_KEY(Severity.ERROR, "a key is given once in a map"),
    EMPTY_FILE(Severity.ERROR, "a content file says something"),
    EMPTY_VALUE(Severity.ERROR, "a key is followed by a value, or left out"),
    FIGURE_WITHOUT_NOTE(Severity.ERROR, "a drawing or photograph has a note beside it"),
    FILE_TOO_LARGE(Severity.ERROR, "a file keeps within its limit of size"),
    FOLD_SCHEME_BROKEN(Severity.ERROR, "a fold scheme can be read, folded, and reached on every panel"),
    LINK_LEAVES_FOLDER(Severity.ERROR, "a link in the content base leads to a file in it"),
    LINK_SCHEME(Severity.ERROR, "a link leads to an entry, a web page, a mail address or a telephone"),
    MISSING_COLON(Severity.ERROR, "a line of a map is a key, a colon, a space and a value"),
    MISSING_FILE(Severity.ERROR, "a content base has an edition.yaml"),
    MISSING_KEY(Severity.ERROR, "a key that is needed is there"),
    MISSING_TITLE(Severity.ERROR, "a chapter begins with a line '# Title'"),
    NO_BREAK_SPACE(Severity.ERROR,
            "an ordinary space stands beside a colon, a hyphen and at the ends of a value"),
    NOTE_WITHOUT_FIGURE(Severity.ERROR, "a note in figures/ has its drawing or photograph beside it"),
    NOT_AN_IMAGE(Severity.ERROR, "a .png or .jpg file holds such an image, of a size that can be handled"),
    NOT_UTF8(Severity.ERROR, "a text file is UTF-8"),
    NOT_YAML(Severity.ERROR, "a file can be read as YAML"),
    OUT_OF_RANGE(Severity.ERROR, "a number lies within the range of what it measures"),
    PARAGRAPH_TOO_LONG(Severity.ERROR, "a paragraph with Markdown in it keeps within its limit of length"),
    RAW_HTML(Severity.ERROR, "a text has Markdown, not HTML"),
    RESERVED_START(Severity.ERROR, "a value that begins with a sign of YAML stands in quotes"),
    SEVERAL_DOCUMENTS(Severity.ERROR, "a file holds one document"),
    SVG_NOT_PRINTABLE(Severity.ERROR, "a drawing is made of shapes alone"),
    SWALLOWED_COMMENT(Severity.ERROR,
            "a '#' after a space begins a comment; a text that has one stands in quotes"),
    TAB_INDENT(Severity.ERROR, "lines are indented with spaces"),
    TEXT_AFTER_QUOTE(Severity.ERROR, "a value that begins with a quotation mark ends with one"),
    TOO_DEEP(Severity.ERROR, "lists and maps are nested no deeper than a record needs"),
    TOO_MANY_FILES(Severity.ERROR, "a content base keeps within its limit of files"),
    UNCLOSED_BRACKET(Severity.ERROR, "a bracket that is opened is closed"),
    UNCLOSED_QUOTE(Severity.ERROR, "a quotation mark that is opened is closed"),
    UNEXPECTED_FILE(Severity.INFO, "a file in the content base is of a kind that is read"),
    UNKNOWN_KEY(Severity.ERROR, "a key is one of those that its record knows"),
    UNKNOWN_REFERENCE(Severity.ERROR, "an id that is named belongs to something in the content base"),
    UNKNOWN_WORD(Severity.ERROR, "a word from a fixed vocabulary is in that vocabulary"),
    UNPRINTABLE_MARKDOWN(Severity.ERROR, "a text has paragraphs, lists, headings, emphasis and links"),
    UNQUOTED_COLON(Severity.ERROR, "a text with a colon and a space stands in quotes"),
    UNREADABLE_FILE(Severity.ERROR, "a file can be opened and read"),
    UNQUOTED_COMMA(Severity.ERROR, "a text with a comma inside brackets stands in quotes"),
    WRONG_TYPE(Severity.ERROR, "a value is of its key's kind: text, number, list or map");

    private final Severity severity;
    private final String summary;

    FormRule(Severity severity, String summary) {
        this.severity = severity;
        this.summary = summary;
    }

    /** The rule's id, as in {@code unknown-key}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The rule with an id; empty when it is none about form. */
    public static Optional<FormRule> byId(String id) {
        return Arrays.stream(values()).filter(rule -> rule.id().equals(id)).findFirst();
    }

    public Severity severity() {
        return severity;
    }

    /** What holds in a file without this finding, in one line. */
    public String summary() {
        return summary;
    }

    Finding at(Span span, String message, String hint) {
        return new Finding(severity, span, id(), message, hint);
    }
}
