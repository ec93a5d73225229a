package org.fieldfold.handbook;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.fieldfold.entry.Audience;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.EarlyStop;
import org.fieldfold.entry.InjuryTerms;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Threshold;
import org.fieldfold.scouting.decision.InjuryLevel;
import org.fieldfold.scouting.sample.SampleSupport;
import org.fieldfold.scouting.sequential.Outcome;
import org.fieldfold.scouting.sequential.SequentialPlan;

/**
 * For the specialist: what each plan for stopping early really does, how sure each count is, and how far
 * prices have moved each threshold that leans on them.
 */
public final class NumbersPage {
    private final ContentBase base;
    private final Markup out = new Markup();

    private NumbersPage(ContentBase base) {
        this.base = base;
    }

    /** The page as a file, self-contained and without script. */
    public static byte[] write(ContentBase base, boolean proof) {
        NumbersPage page = new NumbersPage(base);
        ReviewHead.open(page.out, base.edition().value(), "Numbers", "What plans, samples and prices come "
                + "to, worked out anew from the facts of this edition.", proof);
        page.plans();
        page.samples();
        page.prices();
        page.out.close().close();
        return new Frame("en").inline("Numbers of edition " + base.edition().value().year(),
                Sheet.read("handbook.css") + Sheet.read("review.css"), page.out.toString());
    }

    private interface Each {
        void look(PestEntry entry, Threshold threshold);
    }

    private void each(Each each) {
        for (Placed<PestEntry> placed : base.pests().values()) {
            placed.value().thresholds().forEach(threshold -> each.look(placed.value(), threshold));
        }
    }

    private void plans() {
        out.open("section", "class", "part", "id", "plans").element("h2", "Plans for stopping early").line();
        out.element("p", "Worked out exactly for the table as it is printed, with its smallest and its "
                + "largest sample: the chance of acting, and how many are looked at on average.");
        each((entry, threshold) -> threshold.stopEarly().ifPresent(stop -> stop.plan().ifPresent(plan ->
                plan(entry, threshold, stop, plan))));
        out.close().line();
    }

    private void plan(PestEntry entry, Threshold threshold, EarlyStop stop, SequentialPlan plan) {
        out.element("h3", entry.names().common() + " · " + threshold.id());
        out.element("p", "Acting at " + number(stop.letBe(), 2) + ": declared at most "
                + number(stop.alpha() * 100, 1) + " %, found " + number(plan.trueAlpha() * 100, 1)
                + " %. Not acting at " + number(stop.act(), 2) + ": declared at most "
                + number(stop.beta() * 100, 1) + " %, found " + number(plan.trueBeta() * 100, 1) + " %. "
                + plan.refusal().map(why -> "Not printed: " + why + ".").orElse(""));
        PlanCurve curve = PlanCurve.of(plan);
        curve.draw(out, "Chance of acting against density, " + entry.names().common());
        table("Average sample " + number(curve.mostLooked(), 1) + " at the worst density, of " + plan.max(),
                stop.countsUnitsWithPest() ? "Percent of units" : "Pests a unit", "Chance of acting",
                "Looked at");
        for (PlanCurve.Point point : curve.tabled()) {
            Outcome outcome = point.outcome();
            row(number(point.density() * (stop.countsUnitsWithPest() ? 100 : 1), 2),
                    number(outcome.chanceOfActing() * 100, 1) + " %", number(outcome.unitsLookedAt(), 1));
        }
        out.close().close().line();
    }

    private void samples() {
        out.open("section", "class", "part", "id", "samples").element("h2", "How sure each count is").line();
        table("Of a field that stands exactly at the threshold; means only where it is known how pests lie",
                "Entry", "Threshold", "Sample", "Standard error", "95 of 100 samples show", "Units for 25 %");
        each((entry, threshold) -> {
            Audience reader = threshold.audiences().isEmpty() ? Audience.FIELD : threshold.audiences().get(0);
            entry.monitoringOf(threshold, reader).ifPresent(look -> look.support(threshold).ifPresent(
                    support -> sample(entry, threshold, look.sample(), support)));
        });
        out.close().close().close().line();
    }

    private void sample(PestEntry entry, Threshold threshold, int size, SampleSupport support) {
        String unit = threshold.metric().isPercent() ? " %" : "";
        row(entry.names().common(), threshold.id(), String.valueOf(size),
                number(support.precision() * 100, 0) + " %", number(support.likely().low(), 2) + "–"
                + number(support.likely().high(), 2) + unit, String.valueOf(support.unitsForQuarter()));
    }

    private void prices() {
        out.open("section", "class", "part", "id", "prices").element("h2", "Thresholds and prices").line();
        table("The printed number and the one that today's prices give", "Entry", "Threshold", "Printed",
                "Injury level", "Act at", "Moved");
        each((entry, threshold) -> threshold.injuryLevel().ifPresent(terms ->
                terms.level(base.prices()).ifPresent(level -> price(entry, threshold, terms, level))));
        out.close().close().close().line();
    }

    private void price(PestEntry entry, Threshold threshold, InjuryTerms terms, InjuryLevel level) {
        Optional<Double> now = terms.actAt(base.prices());
        Optional<Double> printed = threshold.value().filter(value -> value > 0);
        row(entry.names().common(), threshold.id(), printed.map(value -> number(value, 2)).orElse("–"),
                number(level.pests(), 2), now.map(value -> number(value, 2)).orElse("–"),
                now.isPresent() && printed.isPresent()
                        ? number(InjuryLevel.moved(printed.get(), now.get()) * 100, 1) + " %" : "–");
    }

    private void table(String caption, String... columns) {
        out.open("table").element("caption", caption).open("thead").open("tr");
        List.of(columns).forEach(column -> out.element("th", column, "scope", "col"));
        out.close().close().open("tbody").line();
    }

    private void row(String... cells) {
        out.open("tr");
        List.of(cells).forEach(cell -> out.element("td", cell));
        out.close().line();
    }

    static String number(double number, int decimals) {
        return BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros()
                .toPlainString();
    }
}
