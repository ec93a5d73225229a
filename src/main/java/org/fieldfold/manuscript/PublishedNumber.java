package org.fieldfold.manuscript;

import java.util.List;
import java.util.Locale;
import org.fieldfold.entry.Monitoring;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Threshold;
import org.fieldfold.prose.Run;

/** A threshold in words, as it was published, and what it comes to on the count card. */
final class PublishedNumber {
    private final Register register;
    private final PestEntry entry;

    PublishedNumber(Register register, PestEntry entry) {
        this.register = register;
        this.entry = entry;
    }

    /** As in {@code 50 adults on 50 stems}. */
    String words(Threshold threshold) {
        String value = threshold.value().map(Figures::plain).orElse("–");
        String counted = threshold.counted().orElse(entry.names().common());
        int per = threshold.per().orElse(1);
        int days = threshold.days().orElse(1);
        return switch (threshold.metric()) {
            case COUNT_PER_SAMPLE ->
                    register.say("book.value.count", value, counted, per, unit(threshold, per));
            case MEAN_PER_UNIT -> per == 1
                    ? register.say("book.value.mean", value, counted, unit(threshold, 1))
                    : register.say("book.value.count", value, counted, per, unit(threshold, per));
            case PERCENT_INFESTED -> register.say("book.value.percent", value, counted);
            case TRAP_CATCH -> register.phrases().count("book.value.trap", days, value, counted, days);
            case CUMULATIVE_CATCH -> register.say("book.value.trap-all", value, counted);
            case DEFOLIATION -> register.say("book.value.leaf-loss", value);
            case ANY_PRESENT -> register.say("book.value.any", counted);
            case DEGREE_DAYS -> register.say("book.value.warmth", counted, value);
            case INTERVAL_TABLE, NONE -> counted;
        };
    }

    /** Crop, growth stage and readers for whom it holds. */
    List<Run> where(Threshold threshold, Reader reader) {
        Line line = Line.of();
        line.add(threshold.crop().map(crop -> register.crops(List.of(crop)))
                .orElse(List.of(Run.plain(register.say("book.any-crop")))));
        threshold.when().ifPresent(when -> line.plain(", " + when));
        threshold.stages().ifPresent(stages -> line.plain(", "
                + register.stages(threshold.crop().map(List::of).orElse(entry.crops()), stages)));
        String only = reader.only(threshold.audiences());
        line.plain(only.isEmpty() ? "" : ". " + only + ".");
        if (!threshold.together().isEmpty()) {
            line.plain((only.isEmpty() ? ". " : " ") + register.say("book.together", String.join(", ",
                    threshold.together().stream().map(register::name).toList())));
        }
        return line.runs();
    }

    /** The whole number to act at, with the sample that it holds for. */
    List<Run> onCard(Threshold threshold) {
        return entry.cardOf(threshold, PestCounts.audience(threshold)).map(card -> Line.of()
                .strong(String.valueOf(card.actAt()))
                .plain(" " + register.say("book.of-sample", card.lookAt(), unit(threshold, card.lookAt())))
                .plain(card.rounding().isPresent()
                        ? register.say("book.rounded", Figures.rounded(card.exact(), 2)) : "")
                .runs())
                .orElse(List.of(Run.plain("–")));
    }

    private String unit(Threshold threshold, int count) {
        return entry.monitoringOf(threshold, PestCounts.audience(threshold)).map(Monitoring::unit)
                .map(unit -> register.phrases().count("unit." + unit.name().toLowerCase(Locale.ROOT)
                        .replace('_', '-'), count)).orElse("");
    }
}
