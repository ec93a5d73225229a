package org.fieldfold.prose;

/**
 * A stretch of text in one style.
 *
 * @param link where it leads: an absolute address, {@code #id} of another entry, or empty
 * @param language as in {@code en}, where it is not that of the page; otherwise empty
 */
public record Run(String text, Style style, String link, String language) {
    /** How a run is set. {@link #NAME} is a scientific name: italic, and read aloud as Latin. */
    public enum Style { PLAIN, STRONG, EMPHASIS, NAME }

    /** In the language of the page. */
    public Run(String text, Style style, String link) {
        this(text, style, link, "");
    }

    public static Run plain(String text) {
        return new Run(text, Style.PLAIN, "");
    }

    public static Run strong(String text) {
        return new Run(text, Style.STRONG, "");
    }

    public static Run name(String text) {
        return new Run(text, Style.NAME, "");
    }

    public Run to(String address) {
        return new Run(text, style, address, language);
    }

    /** The same, said to be in a language of its own. */
    public Run in(String ownLanguage) {
        return new Run(text, style, link, ownLanguage);
    }
}
