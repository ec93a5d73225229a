package org.fieldfold.handbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Set;
import org.fieldfold.entry.EarlyStop;
import org.fieldfold.entry.InjuryTerms;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Threshold;
import org.fieldfold.scouting.sequential.SequentialPlan;
import org.fieldfold.scouting.sequential.StopRow;
import org.junit.jupiter.api.Test;

/** The specialist's page of numbers, and the demo's plans and prices held to published figures. */
class NumbersPageTest {
    private static Threshold threshold(String pest, String id) {
        PestEntry entry = Shipped.BASE.pests().get(pest).value();
        return entry.thresholds().stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
    }

    private static EarlyStop plan(String pest, String id) {
        return threshold(pest, id).stopEarly().orElseThrow();
    }

    /**
     * 15 clusters, none infested: stop; 3 or more: treat; at 30, treat at 4 (University of Delaware, weekly
     * crop update 17947; University of Maine, strawberry newsletter 3, 2015).
     */
    @Test
    void plantBugPlanBeginsAndEndsAsPublished() {
        var rows = plan("tarnished-plant-bug", "clusters").exactPlan().table().orElseThrow().rows();
        StopRow first = rows.get(0);
        StopRow last = rows.get(rows.size() - 1);
        assertEquals(15, first.units());
        assertEquals(0, first.stopLow().orElseThrow());
        assertEquals(3, first.stopHigh().orElseThrow());
        assertEquals(30, last.units());
        assertEquals(4, last.stopHigh().orElseThrow());
    }

    @Test
    void everyShippedPlanKeepsItsPromise() {
        long plans = Shipped.BASE.pests().values().stream()
                .flatMap(pest -> pest.value().thresholds().stream())
                .flatMap(threshold -> threshold.stopEarly().stream()).peek(stop -> {
                    SequentialPlan plan = stop.exactPlan();
                    assertTrue(plan.trueAlpha() <= stop.alpha() + SequentialPlan.ALLOWANCE);
                    assertTrue(plan.trueBeta() <= stop.beta() + SequentialPlan.ALLOWANCE);
                }).count();
        assertTrue(plans >= 3, plans + " plans");
    }

    /** 19 kg/ha lost for a percent, 39 % prevented, level 11 % (Lundin 2020, J. Econ. Entomol. 113(2)). */
    @Test
    void rapeLevelIsThePublishedOne() {
        InjuryTerms terms = threshold("crucifer-flea-beetle", "rape-leaf-loss").injuryLevel().orElseThrow();
        assertEquals(11, terms.level(Shipped.BASE.prices()).orElseThrow().pests(), 0.01);
    }

    @Test
    void pageSaysPlansSamplesAndPrices() {
        HandbookFile file = new HandbookFile("review/numbers.html", NumbersPage.write(Shipped.BASE, false));
        String page = new String(file.bytes(), StandardCharsets.UTF_8);
        var ids = Html.all(Html.parse(file), element -> element.getTagName().equals("section")).stream()
                .map(element -> element.getAttribute("id")).toList();
        assertEquals(Set.of("plans", "samples", "prices"), Set.copyOf(ids));
        assertTrue(page.contains("Acting at 5: declared at most 15 %, found 6.9 %"), "plant bug's plan");
        assertTrue(page.contains("<td>onion thrips</td><td>first</td><td>100</td><td>16 %</td>"), "thrips");
        assertTrue(page.contains("<td>rape-leaf-loss</td><td>11</td><td>11</td>"), "rape");
    }
}
