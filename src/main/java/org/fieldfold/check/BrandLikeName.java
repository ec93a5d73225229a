package org.fieldfold.check;

import java.util.Comparator;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.source.Finding;

/** Materials go by their active ingredient, never by what they are sold as. */
final class BrandLikeName implements TextRule {
    /** A trade-mark sign. Names end somewhere: without that a long word would be searched from each letter. */
    private static final Pattern SIGN = Pattern.compile("[^\\s®™]{0,80}(?:[®™]|\\((?:R|TM)\\))");
    /** Without one of these no sign is there, and most texts have none. */
    private static final Pattern ANY_SIGN = Pattern.compile("[®™]|\\((?:R|TM)\\)");
    /**
     * A capital name before a strength and the letters of a formulation, as on a label: 50WP, 2.5 EC, 480 SC.
     * Letters that stand alone (F, G, L) are left out: they are degrees, grams and liters too.
     */
    private static final Pattern FORMULATION = Pattern.compile("\\b\\p{Lu}[\\p{L}-]{1,60}[ -]?\\d+(?:\\.\\d+)?"
            + "[ -]?(?:WP|WSP|WG|WDG|EC|SC|SL|SP|DF|SG|EW|OD|ULV|ME)\\b");

    @Override
    public String id() {
        return "brand-like-name";
    }

    @Override
    public void check(Facts.Written text, ContentBase base, Consumer<Finding> found) {
        in(text.words()).ifPresent(mark -> found.accept(Finding.error(text.span(), id(),
                "expected the name of an active ingredient, found '" + mark + "', which looks like a product",
                "name what is in it; a number and letters behind a capital name are how products are written")));
    }

    /** The first token in some words that looks like the name of a product. */
    static Optional<String> in(String words) {
        Optional<MatchResult> sign = ANY_SIGN.matcher(words).find() ? first(SIGN, words) : Optional.empty();
        Optional<MatchResult> name = first(FORMULATION, words);
        return Stream.of(sign, name).flatMap(Optional::stream).min(Comparator.comparing(MatchResult::start))
                .map(mark -> mark.group().strip());
    }

    private static Optional<MatchResult> first(Pattern pattern, String words) {
        return pattern.matcher(words).results().findFirst();
    }
}
