package org.fieldfold.check;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.source.Finding;

/** Materials go by their active ingredient, never by what they are sold as. */
final class BrandLikeName implements Rule {
    /**
     * A trade-mark sign, or a capital name before a strength and the letters of a formulation, as on a label:
     * 50WP, 2.5 EC, 480 SC. Letters that stand alone (F, G, L) are left out: they are degrees, grams and
     * liters too. Names end somewhere: without that, a word of a page's length would be searched again from
     * each of its letters.
     */
    private static final Pattern MARK = Pattern.compile("[^\\s®™]{0,80}(?:[®™]|\\((?:R|TM)\\))"
            + "|\\b\\p{Lu}[\\p{L}-]{1,60}[ -]?\\d+(?:\\.\\d+)?[ -]?"
            + "(?:WP|WSP|WG|WDG|EC|SC|SL|SP|DF|SG|EW|OD|ULV|ME)\\b");

    @Override
    public String id() {
        return "brand-like-name";
    }

    @Override
    public void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        Facts.texts(base, text -> in(text.words()).ifPresent(mark -> found.accept(Finding.error(text.span(),
                id(), "expected the name of an active ingredient, found '" + mark
                + "', which looks like a product",
                "name what is in it; a number and letters behind a capital name are how products "
                + "are written"))));
    }

    /** The first token in some words that looks like the name of a product. */
    static Optional<String> in(String words) {
        Matcher mark = MARK.matcher(words);
        return mark.find() ? Optional.of(mark.group().strip()) : Optional.empty();
    }
}
