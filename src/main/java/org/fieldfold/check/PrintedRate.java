package org.fieldfold.check;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.source.Finding;

/** No application rate is ever printed: the label on the container gives it. */
final class PrintedRate implements TextRule {
    private static final String AMOUNT = "(?:\\d[\\d.,/]*|\\d* ?[¼½¾⅓⅔]|one|two|three|four|five|six|seven|"
            + "eight|nine|ten|twelve|half an?|an?)";
    private static final String MEASURE = "(?:fl\\.? ?oz|fluid ounces?|oz|ounces?|pints?|pts?|quarts?|qts?|"
            + "gal|gallons?|lbs?|pounds?|teaspoons?|tsp|tablespoons?|tbsp|ml|milli(?:liters?|litres?)|l|"
            + "liters?|litres?|g|grams?|kg|cups?|drops?)";
    private static final String GROUND = "(?:(?:an?|the|each|every|one|\\d[\\d.,]*) )?(?:acres?|ha|hectares?|"
            + "gal|gallons?|l|liters?|litres?|(?:sq|square)\\.? ?(?:ft|feet|foot|yards?|m|meters?)|"
            + "row[- ]feet|feet of row)\\b";
    /** An amount of something on an area or in a volume: 3 oz per acre, 2 tbsp/gal, 25 oz/A. */
    private static final Pattern AMOUNT_ON_GROUND = Pattern.compile("(?<![\\p{L}\\d])" + AMOUNT + "[ -]?"
            + MEASURE + "\\b\\.?[^.;:]{0,30}?(?:(?: ?/ ?| (?:per|to|in|into|with|for|on|an?|each|every) )"
            + GROUND + "|(?: ?/ ?| per )a\\b)", Pattern.CASE_INSENSITIVE);
    /** A strength: a 2 % soap spray. */
    private static final Pattern STRENGTH = Pattern.compile("\\d ?(?:%|percent) (?:\\p{L}+ ){0,2}"
            + "(?:solution|spray|mix|mixture|emulsion|dilution)\\b", Pattern.CASE_INSENSITIVE);
    /** Seed, manure and water are measured out too, and no label says how much of them. */
    private static final Pattern NO_MATERIAL = Pattern.compile("\\b(?:sow|sown|sowing|drill|drilled|compost|"
            + "manure|straw|mulch|irrigate|rain)\\b", Pattern.CASE_INSENSITIVE);
    private static final Pattern SENTENCE_END = Pattern.compile("(?<=[.!?;]) +(?=\\p{Lu}|\\d)");

    @Override
    public String id() {
        return "printed-rate";
    }

    @Override
    public void check(Facts.Written text, ContentBase base, Consumer<Finding> found) {
        in(text.words()).ifPresent(rate -> found.accept(Finding.error(text.span(), id(),
                "expected no application rate, found '" + rate + "'",
                "take it out; the label on the container gives the rate")));
    }

    /** The first application rate in some words. */
    static Optional<String> in(String words) {
        for (String sentence : SENTENCE_END.split(words)) {
            for (Pattern form : new Pattern[] {AMOUNT_ON_GROUND, STRENGTH}) {
                Matcher rate = form.matcher(sentence);
                if (rate.find() && !NO_MATERIAL.matcher(sentence).find()) {
                    return Optional.of(rate.group().strip());
                }
            }
        }
        return Optional.empty();
    }
}
