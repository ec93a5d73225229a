package org.fieldfold.scouting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.BigRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

/** Count cards against exact decimal arithmetic. */
class CountCardProperties {
    private static CountCard card(ThresholdFigure figure, int size) {
        return CountCard.of(figure, new SamplingPlan("plants", size, Walk.W, size, 1, 0)).orElseThrow();
    }

    @Property
    void percentCardIsTheExactCeiling(
            @ForAll @BigRange(min = "0.01", max = "100") @Scale(2) BigDecimal percent,
            @ForAll @IntRange(min = 1, max = 2000) int size) {
        BigDecimal exact = percent.multiply(BigDecimal.valueOf(size)).movePointLeft(2);
        CountCard card = card(ThresholdFigure.percentInfested(percent.doubleValue()), size);
        assertEquals(exact.setScale(0, RoundingMode.CEILING).intValueExact(), card.actAt());
        assertTrue(card.actAt() <= size, "a plant counts once");
    }

    @Property
    void cardIsNeverBelowTheThresholdAndLessThanOneAbove(
            @ForAll @BigRange(min = "0.001", max = "500") @Scale(3) BigDecimal value,
            @ForAll @IntRange(min = 1, max = 200) int per, @ForAll @IntRange(min = 1, max = 1000) int size) {
        int act = card(ThresholdFigure.count(value.doubleValue(), per), size).actAt();
        BigDecimal actTimesPer = BigDecimal.valueOf(act).multiply(BigDecimal.valueOf(per));
        BigDecimal threshold = value.multiply(BigDecimal.valueOf(size));
        assertTrue(actTimesPer.compareTo(threshold) >= 0, "below the threshold");
        assertTrue(actTimesPer.subtract(BigDecimal.valueOf(per)).compareTo(threshold) < 0,
                "a whole count above");
    }

    @Property
    void aLargerSampleOrThresholdNeverLowersTheCard(
            @ForAll @BigRange(min = "0.01", max = "99") @Scale(2) BigDecimal percent,
            @ForAll @IntRange(min = 1, max = 500) int size) {
        int act = card(ThresholdFigure.percentInfested(percent.doubleValue()), size).actAt();
        assertTrue(card(ThresholdFigure.percentInfested(percent.doubleValue()), size + 1).actAt() >= act);
        assertTrue(card(ThresholdFigure.percentInfested(percent.doubleValue() + 1), size).actAt() >= act);
    }

    @Property
    void roundingIsExplainedExactlyWhenItMovedTheNumber(
            @ForAll @BigRange(min = "0.01", max = "100") @Scale(2) BigDecimal percent,
            @ForAll @IntRange(min = 1, max = 500) int size) {
        BigDecimal exact = percent.multiply(BigDecimal.valueOf(size)).movePointLeft(2);
        boolean whole = exact.stripTrailingZeros().scale() <= 0;
        CountCard card = card(ThresholdFigure.percentInfested(percent.doubleValue()), size);
        assertEquals(!whole, card.rounding().isPresent());
    }
}
