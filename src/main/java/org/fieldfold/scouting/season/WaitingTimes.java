package org.fieldfold.scouting.season;

import java.time.LocalDateTime;

/**
 * The two waiting times of a material over all its labels. The label on the container decides; these only say
 * between which limits it will.
 *
 * @param reentryHours restricted-entry interval, hours
 * @param preHarvestDays pre-harvest interval, days
 */
public record WaitingTimes(LabelRange reentryHours, LabelRange preHarvestDays) {
    /** Whether a use leaves the harvest in peace. */
    public enum Fit {
        /** By every label. */
        BY_ANY_LABEL,
        /** By some labels and not by others: read the one on the container. */
        READ_THE_LABEL,
        /** By no label. */
        TOO_LATE
    }

    /**
     * When a field is open again, by the clock on the wall.
     *
     * @param soonest by the shortest label
     * @param surely by the longest label: the one to plan with
     */
    public record Open(LocalDateTime soonest, LocalDateTime surely) {
    }

    /** When people may go in again. */
    public Open entryAfter(LocalDateTime finished) {
        return new Open(finished.plusHours(reentryHours.shortest()),
                finished.plusHours(reentryHours.longest()));
    }

    /**
     * When harvest may begin: the later of the two waiting times, for nobody can pick without going in. Days
     * are taken as whole ones from the hour of use.
     */
    public Open harvestAfter(LocalDateTime finished) {
        Open entry = entryAfter(finished);
        return new Open(later(entry.soonest(), finished.plusDays(preHarvestDays.shortest())),
                later(entry.surely(), finished.plusDays(preHarvestDays.longest())));
    }

    private static LocalDateTime later(LocalDateTime one, LocalDateTime other) {
        return one.isAfter(other) ? one : other;
    }

    /** Whether a use that ends at {@code finished} still fits before {@code harvest}. */
    public Fit before(LocalDateTime harvest, LocalDateTime finished) {
        Open open = harvestAfter(finished);
        if (!open.surely().isAfter(harvest)) {
            return Fit.BY_ANY_LABEL;
        }
        return open.soonest().isAfter(harvest) ? Fit.TOO_LATE : Fit.READ_THE_LABEL;
    }
}
