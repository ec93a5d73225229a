package org.fieldfold.check;

import java.time.LocalDate;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.source.Finding;

/** No application rate is ever printed: the label on the container gives it. */
final class PrintedRate implements Rule {
    @Override
    public String id() {
        return "printed-rate";
    }

    @Override
    public void check(ContentBase base, LocalDate asOf, Consumer<Finding> found) {
        Facts.texts(base, text -> {
            Matcher rate = RATE.matcher(text.prose().words());
            if (rate.find()) {
                found.accept(Finding.error(text.span(), id(), "expected no application rate, found '" + rate.group().strip()
                        + "'", "take it out; the label on the container gives the rate"));
            }
        });
    }

    private static final String AMOUNT = "(?:\\d[\\d.,/]*|[¼½¾]|one|two|three|four|five|six|half an?)";
    private static final String MEASURE = "(?:fl\\.? ?oz|fluid ounces?|oz|ounces?|pints?|pt|quarts?|qt|gal|gallons?|"
            + "lbs?|pounds?|teaspoons?|tsp|tablespoons?|tbsp|ml|milliliters?|l|liters?|g|grams?|kg|cups?)";
    private static final String GROUND = "(?:acre|a\\b|ha|hectare|gal|gallon|l\\b|liter|\\d[\\d,]* ?(?:sq|square|ft|feet|gal))";
    /** An amount of something on an area or in a volume: 3 oz per acre, 2 tbsp/gal, 10 ml in a liter. */
    private static final Pattern RATE = Pattern.compile("\\b" + AMOUNT + "[ -]?" + MEASURE
            + "\\b[^.;]{0,30}?(?:/ ?|\\bper |\\ban? |\\bto the |\\bin an? |\\bto an? )" + GROUND, Pattern.CASE_INSENSITIVE);
}
