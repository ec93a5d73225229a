package org.fieldfold.handbook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.EarlyStop;
import org.fieldfold.entry.Monitoring;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.SamplingUnit;
import org.fieldfold.entry.Threshold;
import org.fieldfold.manuscript.Phrases;
import org.fieldfold.scouting.CountCard;
import org.fieldfold.scouting.sequential.SequentialPlan;
import org.fieldfold.scouting.sequential.StopTable;

/** Every count card with its stop lines, as {@code count.js} takes it; all numbers are worked out here. */
final class CountFacts {
    private final ContentBase base;
    private final Phrases phrases;

    CountFacts(ContentBase base, Phrases phrases) {
        this.base = base;
        this.phrases = phrases;
    }

    /** By entry and threshold, as in {@code leek-moth/leaves}. */
    Map<String, Object> all() {
        Map<String, Object> cards = new LinkedHashMap<>();
        for (Placed<PestEntry> placed : base.pests().values()) {
            PestEntry pest = placed.value();
            for (Threshold threshold : pest.thresholds()) {
                card(pest, threshold).ifPresent(card -> cards.put(key(pest, threshold), card));
            }
        }
        return cards;
    }

    private static String key(PestEntry pest, Threshold threshold) {
        return pest.id() + "/" + threshold.id();
    }

    private Optional<Map<String, Object>> card(PestEntry pest, Threshold threshold) {
        Optional<CountCard> found = pest.cardOf(threshold, threshold.mainAudience());
        Optional<Monitoring> look = pest.monitoringOf(threshold, threshold.mainAudience());
        if (found.isEmpty() || look.isEmpty()) {
            return Optional.empty();
        }
        CountCard card = found.get();
        Map<String, Object> said = new LinkedHashMap<>();
        said.put("units", card.lookAt());
        said.put("stops", card.stops());
        said.put("each", card.each());
        said.put("act", card.actAt());
        if (card.countsUnitsWithPest()) {
            said.put("presence", true);
        }
        look.get().everyDays().ifPresent(days -> said.put("again", days));
        said.put("counted", threshold.counted().orElse(pest.names().common()));
        String unit = "unit." + look.get().unit().name().toLowerCase(Locale.ROOT).replace('_', '-');
        said.put("unit", phrases.count(unit, 2));
        said.put("unit1", phrases.count(unit, 1));
        if (look.get().unit() == SamplingUnit.TRAP) {
            said.put("trap", true);
        }
        List<String> others = sameLook(pest, threshold, look.get());
        if (others.size() > 1) {
            said.put("label", label(threshold, card));
            if (others.get(0).equals(key(pest, threshold))) {
                said.put("numbers", others);
            }
        }
        threshold.stopEarly().filter(stop -> stop.countsUnitsWithPest()
                == card.countsUnitsWithPest()).flatMap(EarlyStop::plan).flatMap(SequentialPlan::table)
                .map(CountFacts::rows).ifPresent(rows -> said.put("plan", rows));
        return Optional.of(said);
    }

    private String label(Threshold threshold, CountCard card) {
        List<String> where = new ArrayList<>();
        threshold.crop().map(crop -> base.crops().containsKey(crop) ? base.crops().get(crop).value().name() : crop)
                .ifPresent(where::add);
        threshold.when().ifPresent(where::add);
        return card.actAt() + " " + threshold.counted().orElse("")
                + (where.isEmpty() ? "" : ": " + String.join(", ", where));
    }

    /** The numbers between which one chooses on one card: those that count the same in the same way. */
    private static List<String> sameLook(PestEntry pest, Threshold threshold, Monitoring look) {
        return pest.thresholds().stream().filter(other -> other.metric().isPercent() == threshold.metric().isPercent()
                        && pest.cardOf(other, other.mainAudience()).isPresent()
                        && pest.monitoringOf(other, other.mainAudience()).equals(Optional.of(look)))
                .map(other -> key(pest, other)).toList();
    }

    private static List<List<Object>> rows(StopTable table) {
        return table.rows().stream().map(row -> List.<Object>of(row.units(), whole(row.stopLow()),
                whole(row.stopHigh()))).toList();
    }

    private static Optional<Integer> whole(OptionalInt number) {
        return number.isPresent() ? Optional.of(number.getAsInt()) : Optional.empty();
    }
}
