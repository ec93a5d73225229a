package org.fieldfold.handbook;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.fieldfold.entry.EarlyStop;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Threshold;
import org.fieldfold.scouting.decision.Recount;
import org.fieldfold.scouting.degreeday.Cutoff;
import org.fieldfold.scouting.degreeday.DayTemperature;
import org.fieldfold.scouting.degreeday.DegreeDayMethod;
import org.fieldfold.scouting.degreeday.HandSum;
import org.fieldfold.scouting.degreeday.HeatModel;
import org.fieldfold.scouting.degreeday.TemperatureUnit;
import org.fieldfold.scouting.geometry.Field;
import org.fieldfold.scouting.geometry.Hoop;
import org.fieldfold.scouting.geometry.LowTunnel;
import org.fieldfold.scouting.sample.Confidence;
import org.fieldfold.scouting.season.LabelRange;
import org.fieldfold.scouting.season.WaitingTimes;
import org.fieldfold.scouting.sequential.SequentialPlan;
import org.fieldfold.scouting.sequential.StopRow;
import org.fieldfold.scouting.sequential.StopTable;

/** What the compiler reckons, as cases for the script: each is a name, what is asked, and what is answered. */
final class ReckonerCases {
    private final List<Object> cases = new ArrayList<>();

    private ReckonerCases() {
    }

    static String json() {
        ReckonerCases all = new ReckonerCases();
        all.warmth();
        all.seasons();
        all.recounts();
        all.covers();
        all.borders();
        all.waiting();
        all.plans();
        List<String> lines = all.cases.stream().map(Json::of).toList();
        return "[\n" + String.join(",\n", lines) + "\n]\n";
    }

    private void add(String name, List<?> asked, Object answered) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("name", name);
        one.put("asked", asked);
        one.put("answered", answered);
        cases.add(one);
    }

    private void warmth() {
        for (DegreeDayMethod method : DegreeDayMethod.values()) {
            for (Cutoff cutoff : method.followsCurve() ? Cutoff.values() : new Cutoff[] {Cutoff.HORIZONTAL}) {
                for (OptionalDouble upper : List.of(OptionalDouble.empty(), OptionalDouble.of(86))) {
                    HeatModel model = new HeatModel(TemperatureUnit.FAHRENHEIT, 50, upper, method, cutoff);
                    for (double[] day : new double[][] {{30, 45, 40}, {41.5, 67.25, 50}, {55, 75, 60}, {60, 95, 70},
                            {88, 99, 90}, {45, 100, 52}, {60, 60, 75}, {50, 86, 50}}) {
                        add("warmth", List.of(ScriptFacts.numbers(model), day[0], day[1], day[2]),
                                model.degreeDays(day[0], day[1], day[2]));
                    }
                }
            }
        }
    }

    /** Days by hand, some of them missing, in either unit: {@code day, lowest, highest, unit}. */
    private void seasons() {
        for (DegreeDayMethod method : DegreeDayMethod.values()) {
            HeatModel model = new HeatModel(TemperatureUnit.FAHRENHEIT, 43, OptionalDouble.of(88), method,
                    Cutoff.HORIZONTAL);
            for (TemperatureUnit unit : TemperatureUnit.values()) {
                for (int without : new int[] {0, 1, 4}) {
                    season(model, unit, without);
                }
            }
        }
    }

    private void season(HeatModel model, TemperatureUnit unit, int without) {
        LocalDate start = LocalDate.of(2027, 2, 26);
        List<DayTemperature> days = new ArrayList<>();
        List<List<Object>> written = new ArrayList<>();
        for (int i = 11; i >= 0; i--) {
            double min = unit == TemperatureUnit.CELSIUS ? i - 1.5 : 35 + 1.75 * i;
            if (i < 5 || i >= 5 + without) {
                days.add(new DayTemperature(start.plusDays(i - 1), min, min + 7 + i * 1.25));
                written.add(List.of(start.plusDays(i - 1).toString(), min, min + 7 + i * 1.25,
                        unit == TemperatureUnit.CELSIUS ? "C" : "F"));
            }
        }
        HandSum sum = HandSum.of(model, unit, days, start);
        Map<String, Object> said = new LinkedHashMap<>();
        said.put("total", sum.total());
        said.put("days", sum.days());
        said.put("missing", sum.missing());
        Map<String, Object> asked = new LinkedHashMap<>(ScriptFacts.numbers(model));
        asked.put("unit", "F");
        add("season", List.of(asked, written, start.toString()), said);
        for (double event : new double[] {sum.total() / 2, sum.total() + 10}) {
            add("says", List.of(said, event), ScriptFacts.word(sum.says(event)));
        }
    }

    private void recounts() {
        for (int[] two : new int[][] {{10, 20, 3, 50}, {4, 5, 2, 30}, {40, 9, 4, 50}, {12, 60, 3, 50}, {7, 0, 3, 10},
                {0, 6, 2, 20}, {15, 15, 3, 20}}) {
            Recount recount = new Recount(two[0], two[1], two[2]);
            Map<String, Object> said = new LinkedHashMap<>();
            said.put("growth", number(recount.growth()));
            said.put("slow", number(recount.growth(Confidence.PERCENT_95).low()));
            said.put("fast", number(recount.growth(Confidence.PERCENT_95).high()));
            said.put("trend", ScriptFacts.word(recount.trend(Confidence.PERCENT_95)));
            said.put("doubling", perhaps(recount.doublingDays()));
            said.put("days", perhaps(recount.daysUntil(two[3])));
            said.put("soonest", perhaps(recount.soonest(two[3], Confidence.PERCENT_95)));
            add("recount", List.of(two[0], two[1], two[2], two[3]), said);
        }
    }

    private void covers() {
        for (double width : new double[] {2.5, 4, 6}) {
            cover("half-circle", width, 0, new Hoop.Semicircle(width));
            cover("flat", width, 1.5, new Hoop.HalfEllipse(width, 1.5));
            cover("legged", width, 0.8, new Hoop.Legged(width, 0.8));
        }
    }

    private void cover(String shape, double width, double more, Hoop hoop) {
        LowTunnel tunnel = new LowTunnel(hoop, 50, 3.3, 0.9, 1.1);
        Map<String, Object> said = new LinkedHashMap<>();
        said.put("hoops", tunnel.hoops());
        said.put("stock", tunnel.stock());
        said.put("width", tunnel.sheetWidth());
        said.put("length", tunnel.sheetLength());
        add("cover", List.of(shape, width, more, 50, 3.3, 0.9, 1.1), said);
    }

    private void borders() {
        for (double share : new double[] {0, 0.05, 0.1, 0.2, 0.5, 1}) {
            add("border", List.of(120, 310, share), new Field(120, 310).borderFor(share));
        }
    }

    private void waiting() {
        LocalDateTime finished = LocalDateTime.of(2027, 6, 30, 18, 30);
        for (int[] label : new int[][] {{4, 12, 0, 1}, {12, 48, 1, 7}, {24, 24, 0, 0}, {4, 4, 3, 21}}) {
            WaitingTimes times = new WaitingTimes(new LabelRange(label[0], label[1]),
                    new LabelRange(label[2], label[3]));
            WaitingTimes.Open entry = times.entryAfter(finished);
            WaitingTimes.Open harvest = times.harvestAfter(finished);
            add("waiting", List.of(finished.toString(), label[0], label[1], label[2], label[3]),
                    List.of(entry.soonest().toString(), entry.surely().toString(), harvest.soonest().toString(),
                            harvest.surely().toString()));
        }
    }

    /** Every stop line of the shipped base, with totals below, on and above it. */
    private void plans() {
        Map<String, Object> cards = new CountFacts(Shipped.BASE, Shipped.PHRASES).all();
        for (Placed<PestEntry> placed : Shipped.BASE.pests().values()) {
            for (Threshold threshold : placed.value().thresholds()) {
                StopTable table = threshold.stopEarly().flatMap(EarlyStop::plan).flatMap(SequentialPlan::table)
                        .orElse(null);
                Object card = cards.get(placed.value().id() + "/" + threshold.id());
                if (table != null && card instanceof Map<?, ?> said && said.containsKey("plan")) {
                    int each = (Integer) said.get("each");
                    table.rows().stream().filter(row -> row.units() % each == 0)
                            .forEach(row -> plan(said, table, row, row.units() / each));
                }
            }
        }
    }

    private void plan(Map<?, ?> card, StopTable table, StopRow row, int stops) {
        int surely = table.rows().get(table.rows().size() - 1).stopHigh().orElseThrow();
        int low = row.stopLow().orElse(-1);
        int high = Math.min(row.stopHigh().orElse(surely), surely);
        for (int total = Math.max(0, low - 1); total <= high + 1; total++) {
            add("plan", List.of(card.get("each"), card.get("plan"), stops, total),
                    total >= high ? "act" : total <= low ? "leave" : "go-on");
        }
    }

    private static Object perhaps(OptionalDouble number) {
        return number.isPresent() ? number.getAsDouble() : java.util.Optional.empty();
    }

    /** JSON has no infinity. */
    private static Object number(double number) {
        return Double.isInfinite(number) ? String.valueOf(number) : number;
    }
}
