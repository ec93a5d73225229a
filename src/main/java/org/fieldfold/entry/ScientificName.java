package org.fieldfold.entry;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The name of a species as the International Code of Zoological Nomenclature (ICZN, 4th ed. 1999) writes it:
 * genus with a capital and species in lower case (Art. 28), without diacritics, hyphens or figures (Art. 27,
 * 32.5), then the author with nothing between (Art. 51.2), in parentheses when the species now stands in
 * another genus than the one it was described in (Art. 51.3), and the year behind a comma inside those
 * parentheses (Rec. 22A.2).
 *
 * @param author as written, without parentheses; empty when none is given (Art. 51.1: it is optional)
 * @param year as written, in brackets where it was inferred; empty when none is given
 * @param moved whether author and year stand in parentheses
 */
public record ScientificName(String genus, String species, String author, String year, boolean moved) {
    private static final String AUTHOR = "[\\p{Lu}][\\p{L}.’' &-]*?";
    private static final String YEAR = "\\d{4}|\\[\\d{4}\\]";
    private static final Pattern FORM = Pattern.compile("(?<genus>[A-Z][a-z]+) (?<species>[a-z]{2,}|spp\\.)"
            + "(?: (?<open>\\()?(?<author>" + AUTHOR + ")(?:, (?<year>" + YEAR + "))?(?<close>\\))?)?");

    /** Reads a name, or empty when it is not formed as the Code asks. */
    public static Optional<ScientificName> read(String written) {
        Matcher form = FORM.matcher(written);
        if (!form.matches() || (form.group("open") == null) != (form.group("close") == null)) {
            return Optional.empty();
        }
        String author = form.group("author") == null ? "" : form.group("author").strip();
        String year = form.group("year") == null ? "" : form.group("year");
        return Optional.of(new ScientificName(form.group("genus"), form.group("species"), author, year,
                form.group("open") != null));
    }

    /** Genus and species. */
    public String binomen() {
        return genus + " " + species;
    }

    /** The author in parentheses where the species was moved, without the year; empty when none is given. */
    public String authority() {
        return author.isEmpty() ? "" : moved ? "(" + author + ")" : author;
    }

    /** The author with the year. */
    public String authorityAndYear() {
        String inner = year.isEmpty() ? author : author + ", " + year;
        return author.isEmpty() ? "" : moved ? "(" + inner + ")" : inner;
    }
}
