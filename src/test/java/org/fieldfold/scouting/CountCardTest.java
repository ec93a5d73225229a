package org.fieldfold.scouting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CountCardTest {
    private static final SamplingPlan FIFTY_PLANTS = new SamplingPlan("plants", 50, Walk.V, 10, 5, 7);

    private static CountCard card(ThresholdFigure figure, SamplingPlan plan) {
        return CountCard.of(figure, plan).orElseThrow();
    }

    private static SamplingPlan sample(int size) {
        return new SamplingPlan("plants", size, Walk.BED, 1, size, 0);
    }

    // Rutgers plant-pest-advisory, brassica caterpillars on 10 x 5 plants: 10 % to four leaves, 20 % to head
    // fill, 5 % at mature head
    @Test
    void percentOfPlantsBecomesWholePlants() {
        CountCard seedling = card(ThresholdFigure.percentInfested(10), FIFTY_PLANTS);
        assertEquals(new CountCard(50, 10, 5, 5, true, 0, 5), seedling);
        assertEquals(Optional.empty(), seedling.rounding());
        assertEquals(10, card(ThresholdFigure.percentInfested(20), FIFTY_PLANTS).actAt());
        CountCard mature = card(ThresholdFigure.percentInfested(5), FIFTY_PLANTS);
        assertEquals(3, mature.actAt());
        assertEquals("the threshold comes to 2.5 for this sample; rounded up to 3",
                mature.rounding().orElseThrow());
        assertEquals(0.2, mature.overshoot(), 1e-12);
    }

    // lewistownsentinel.com, Penn State Extension: Colorado potato beetle, 50 adults per 50 stems
    @Test
    void countPerSampleIsScaledToTheSampleInHand() {
        assertEquals(50, card(ThresholdFigure.count(50, 50), FIFTY_PLANTS).actAt());
        assertEquals(10, card(ThresholdFigure.count(50, 50), sample(10)).actAt());
        // J. Econ. Entomol. 1979 72:566-569: potato leafhopper, 10 nymphs per 105 leaves; 50 leaves: 4.76
        assertEquals(5, card(ThresholdFigure.count(10, 105), FIFTY_PLANTS).actAt());
        assertEquals(10, card(ThresholdFigure.count(10, 105), sample(105)).actAt());
        assertFalse(card(ThresholdFigure.count(10, 105), sample(105)).countsUnitsWithPest());
    }

    // udel 24324: one bug per 20 plants by beat sheet
    @Test
    void meanPerUnitBecomesATotal() {
        assertEquals(50, card(ThresholdFigure.mean(1), FIFTY_PLANTS).actAt());
        assertEquals(3, card(ThresholdFigure.count(1, 20), FIFTY_PLANTS).actAt());
        // 0.07 x 100 and 0.14 x 50 are computed as 7.000000000000001: still 7
        assertEquals(7, card(ThresholdFigure.mean(0.07), sample(100)).actAt());
        assertEquals(7, card(ThresholdFigure.mean(0.14), sample(50)).actAt());
        assertEquals(Optional.empty(), card(ThresholdFigure.mean(0.07), sample(100)).rounding());
        assertEquals(29, card(ThresholdFigure.percentInfested(29), sample(100)).actAt());
    }

    // extension.umaine.edu, Strawberry IPM Newsletter 3, 2015: 4 or more of 30 clusters (printed as 13 % too)
    @Test
    void anOddPercentageIsRoundedUp() {
        SamplingPlan clusters = new SamplingPlan("clusters", 30, Walk.ROWS, 6, 5, 7);
        assertEquals(4, card(ThresholdFigure.percentInfested(13), clusters).actAt());
    }

    // pnwhandbooks.org quoting Ontario: carrot rust fly, 0.2 flies per trap and day
    @Test
    void trapCatchIsAddedUpOverTrapsAndDays() {
        SamplingPlan fiveTrapsWeekly = new SamplingPlan("traps", 5, Walk.TRAPS, 5, 1, 7);
        CountCard weekly = card(ThresholdFigure.trapCatch(0.2, 1), fiveTrapsWeekly);
        assertEquals(7, weekly.actAt());
        assertEquals(7, weekly.days());
        // read every third day, a weekly catch still runs over the week
        SamplingPlan everyThird = new SamplingPlan("traps", 2, Walk.TRAPS, 2, 1, 3);
        assertEquals(10, card(ThresholdFigure.trapCatch(5, 7), everyThird).actAt());
        assertEquals(7, card(ThresholdFigure.trapCatch(5, 7), everyThird).days());
        SamplingPlan fortnightly = new SamplingPlan("traps", 1, Walk.TRAPS, 1, 1, 14);
        assertEquals(10, card(ThresholdFigure.trapCatch(5, 7), fortnightly).actAt());
    }

    // profils-profiles.science.gc.ca, Blatt et al. 2020: carrot weevil, 5 per trap in all
    @Test
    void cumulativeCatchIsAddedUpOverTraps() {
        SamplingPlan fourTraps = new SamplingPlan("traps", 4, Walk.TRAPS, 4, 1, 3);
        assertEquals(20, card(ThresholdFigure.cumulativeCatch(5), fourTraps).actAt());
        assertEquals(0, card(ThresholdFigure.cumulativeCatch(5), sample(4)).days());
    }

    @Test
    void theFirstOneIsEnough() {
        CountCard any = card(ThresholdFigure.anyPresent(), sample(10));
        assertEquals(1, any.actAt());
        assertEquals(Optional.empty(), any.rounding());
    }

    @Test
    void aSmallBedCannotShowASmallPercentage() {
        CountCard bed = card(ThresholdFigure.percentInfested(5), sample(10));
        assertEquals(1, bed.actAt());
        assertEquals(1, bed.overshoot(), 1e-12);
    }

    @ParameterizedTest
    @EnumSource(names = {"NONE", "DEGREE_DAYS", "DEFOLIATION", "INTERVAL_TABLE"})
    void whatIsNotCountedHasNoCardButAReason(Metric metric) {
        ThresholdFigure figure = new ThresholdFigure(metric, metric.hasValue() ? 20 : 0, 0, 0);
        assertEquals(Optional.empty(), CountCard.of(figure, FIFTY_PLANTS));
        assertTrue(metric.whyNoCard().isPresent());
    }

    @Test
    void nonsenseIsRefusedWithFigureAndLimit() {
        assertMessage("threshold in percent must be from 0 to 100, found 120",
                () -> ThresholdFigure.percentInfested(120));
        assertMessage("threshold must be above 0, found 0", () -> ThresholdFigure.mean(0));
        assertMessage("threshold must be above 0, found NaN", () -> ThresholdFigure.mean(Double.NaN));
        assertMessage("trap period in days must be at least 1, found 0",
                () -> ThresholdFigure.trapCatch(5, 0));
        assertMessage("number of units that the threshold refers to must be at least 1, found 0",
                () -> ThresholdFigure.count(5, 0));
        assertMessage("stops times units at each must be the sample size: 10 x 4 is 40, not 50",
                () -> new SamplingPlan("plants", 50, Walk.V, 10, 4, 7));
        assertMessage("no count can be made of 1.0E13",
                () -> CountCard.of(ThresholdFigure.mean(1e12), sample(10)));
    }

    private static void assertMessage(String message, org.junit.jupiter.api.function.Executable work) {
        assertEquals(message, assertThrows(IllegalArgumentException.class, work).getMessage());
    }
}
