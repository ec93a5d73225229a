package org.fieldfold.entry;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.fieldfold.scouting.season.LabelRange;
import org.fieldfold.scouting.season.WaitingTimes;

/** A material, by what is in it; never by a brand, never with a rate. */
public record ActiveIngredient(
        @Describe("short id") String id,
        @Describe("common name of the active ingredient") @Translated String name,
        @Describe("mode-of-action group, as in 4A, 28 or UN; none when it has no "
        + "number") Optional<String> group,
        @Describe("what it is made of") MaterialKind kind,
        @Describe("organic status") OrganicStatus organic,
        @Describe("pre-harvest interval in days, over all labels") Optional<Interval> phiDays,
        @Describe("restricted-entry interval in hours, over all labels") Optional<Interval> reiHours,
        @Describe("hazard to bees on contact") Optional<BeeHazard> bees,
        @Describe("how bees are kept safe") Optional<Text> beeNote,
        @Describe("true when only a licensed applicator may buy and use it") boolean restrictedUse,
        @Describe("signal words found on its labels") List<SignalWord> signalWords,
        @Describe("toxicity categories of its most toxic product") Optional<Toxicity> toxicity,
        @Describe("day on which labels were last looked at") Optional<LocalDate> labelChecked,
        @Describe("ids of the sources") List<String> sources,
        @Describe("edition from which on it may no longer be used") Optional<Integer> withdrawn,
        @Describe("ids of crops on which it may no longer be used") List<String> lostUses) {
    /** Whether an edition may still tell of it, on these crops. */
    public boolean isGoneFor(int year, List<String> crops) {
        return withdrawn.filter(from -> from <= year).isPresent()
                || !crops.isEmpty() && lostUses.containsAll(crops);
    }

    /** Both waiting times over all labels; empty when one is missing or contradicts itself. */
    public Optional<WaitingTimes> waitingTimes() {
        return phiDays.filter(ActiveIngredient::rises).flatMap(harvest -> reiHours
                .filter(ActiveIngredient::rises).map(entry -> new WaitingTimes(
                        new LabelRange(entry.from(), entry.to()), new LabelRange(harvest.from(),
                                harvest.to()))));
    }

    private static boolean rises(Interval interval) {
        return interval.from() >= 0 && interval.from() <= interval.to();
    }
}
