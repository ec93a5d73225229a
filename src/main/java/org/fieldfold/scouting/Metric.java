package org.fieldfold.scouting;

import java.util.Optional;

/** How a threshold is measured. The unit of its value stands beside each. */
public enum Metric {
    /** Pests counted on a stated number of units: 50 adults per 50 stems. */
    COUNT_PER_SAMPLE(""),
    /** Pests per unit, on average: 1 thrips per leaf. */
    MEAN_PER_UNIT(""),
    /** Units with at least one pest (or with the damage), percent from 0 to 100; a unit counts once. */
    PERCENT_INFESTED(""),
    /** Catch per trap over a stated number of days: 5 moths per trap in 7 days. */
    TRAP_CATCH(""),
    /** Catch per trap since the traps were set: 5 weevils per trap in all. */
    CUMULATIVE_CATCH(""),
    /** Leaf area lost, percent from 0 to 100. */
    DEFOLIATION("leaf loss is judged by eye as a share of the leaf, not counted"),
    /** The first one found is enough; the value is not used. */
    ANY_PRESENT(""),
    /** Heat summed since a start, in degree-days of the unit that the event names. */
    DEGREE_DAYS("the date follows from temperatures, not from a count"),
    /** The catch sets the days between two treatments; the rows are an {@link IntervalTable}. */
    INTERVAL_TABLE("the catch is looked up in a table of intervals"),
    /** No threshold is known or wanted; the entry gives its reason. */
    NONE("no threshold is given for it");

    private final String whyNoCard;

    Metric(String whyNoCard) {
        this.whyNoCard = whyNoCard;
    }

    /** Why no count card can be made of this metric; empty when one can. */
    public Optional<String> whyNoCard() {
        return whyNoCard.isEmpty() ? Optional.empty() : Optional.of(whyNoCard);
    }

    /** Whether a value above 0 belongs to it. */
    public boolean hasValue() {
        return this != ANY_PRESENT && this != INTERVAL_TABLE && this != NONE;
    }

    /** Whether the value is a percentage, from 0 to 100. */
    public boolean isPercent() {
        return this == PERCENT_INFESTED || this == DEFOLIATION;
    }

    /** Whether the value refers to a stated number of units or traps. */
    public boolean isPerUnits() {
        return this == COUNT_PER_SAMPLE || this == MEAN_PER_UNIT || this == TRAP_CATCH
                || this == CUMULATIVE_CATCH;
    }
}
