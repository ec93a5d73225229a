package org.fieldfold.prose;

/**
 * A stretch of text in one style.
 *
 * @param link where it leads: an absolute address, {@code #id} of another entry, or empty
 */
public record Run(String text, Style style, String link) {
    /** How a run is set. {@link #NAME} is a scientific name: italic, and read aloud as Latin. */
    public enum Style { PLAIN, STRONG, EMPHASIS, NAME }

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
        return new Run(text, style, address);
    }
}
