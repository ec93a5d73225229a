package org.fieldfold.edition;

import java.util.List;
import java.util.Optional;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Threshold;

/** Says at what count it pays to act: a number and what it is a number of. */
public final class ThresholdWords {
    /** The keys that together are the count. */
    static final List<String> KEYS = List.of("metric", "value", "per", "days", "counted", "monitoring");

    /** Those of a monitoring that are looked at for it. */
    private static final List<String> LOOK = List.of("id", "unit");

    /**
     * The count in words.
     *
     * @param number empty where there is none
     * @param unit what it is a number of, or what stands instead of a number
     */
    record Measure(String number, String unit) {
        String whole() {
            return number.isEmpty() ? unit : number + " " + unit;
        }
    }

    private final Fact.Group entry;

    /** @param entry whose monitoring says what is looked at */
    ThresholdWords(Fact.Group entry) {
        this.entry = entry;
    }

    /** A threshold of an entry, as in {@code 3 thrips per leaf}. */
    public static String of(PestEntry entry, Threshold threshold) {
        List<Fact> looks = entry.monitoring().stream().map(look -> (Fact) FactForm.of(look, LOOK)).toList();
        return new ThresholdWords(Fact.group("monitoring", new Fact.Items(looks)))
                .measure(FactForm.of(threshold, KEYS)).whole();
    }

    Measure measure(Fact.Group threshold) {
        String number = threshold.word("value").orElse("");
        String counted = threshold.word("counted").orElse("pests");
        String per = threshold.word("per").orElse("1");
        String unit = unit(threshold);
        return switch (threshold.word("metric").orElse("")) {
            case "count-per-sample" -> new Measure(number, counted + " per "
                    + (per.equals("1") ? unit : per + " " + unit + "s"));
            case "mean-per-unit" -> new Measure(number, counted + " per "
                    + (per.equals("1") ? unit : per + " " + unit + "s"));
            case "percent-infested" -> new Measure(number, "% of " + (unit.equals("unit") ? "" : unit + "s, ")
                    + counted);
            case "trap-catch" -> new Measure(number, counted + " per trap"
                    + threshold.word("days").map(days -> days.equals("1") ? " a day" : " in " + days
                            + " days").orElse(""));
            case "cumulative-catch" -> new Measure(number, counted + " per trap in all");
            case "defoliation" -> new Measure(number, "% of the leaf lost");
            case "degree-days" -> new Measure(number, "degree-days");
            case "any-present" -> new Measure("", "the first one found");
            case "interval-table" -> new Measure("", "a table of intervals");
            case "none" -> new Measure("", "no number");
            default -> new Measure(number, threshold.word("metric").orElse("").replace('-', ' '));
        };
    }

    /** What is looked at: the unit of the monitoring that the threshold names, or of the first. */
    private String unit(Fact.Group threshold) {
        Optional<String> named = threshold.word("monitoring");
        return entry.items("monitoring").stream().map(look -> (Fact.Group) look)
                .filter(look -> named.isEmpty() || look.word("id").equals(named))
                .findFirst().flatMap(look -> look.word("unit")).orElse("unit").replace('-', ' ');
    }
}
