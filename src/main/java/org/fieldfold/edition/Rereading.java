package org.fieldfold.edition;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.fieldfold.entry.ActiveIngredient;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Control;
import org.fieldfold.entry.Edition;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Reviewed;
import org.fieldfold.entry.Source;
import org.fieldfold.entry.Threshold;
import org.fieldfold.trace.ResultReader;
import org.fieldfold.trace.ResultWriter;

/**
 * What an entry and all that it leans on say about re-reading it; what rules find and offices ask for joins in
 * {@link Reasons}.
 *
 * @param isDue as in {@link Due#isDue}
 * @param isByHand whether it is signed without a hash of what was signed
 */
record Rereading(boolean isDue, boolean isByHand, List<Job.Why> why) {
    Rereading {
        why = List.copyOf(why);
    }

    /** @param last the last edition that was issued before this one */
    static Rereading of(Reviewed entry, ContentBase base, Optional<Ledger> last) {
        return new Work(entry, base, last).rereading();
    }

    void write(ResultWriter out) {
        out.number(isDue ? 1 : 0);
        out.number(isByHand ? 1 : 0);
        out.number(why.size());
        why.forEach(one -> {
            out.text(one.reason().name());
            out.text(one.detail());
        });
    }

    static Rereading read(ResultReader in) {
        boolean isDue = in.number() == 1;
        boolean isByHand = in.number() == 1;
        List<Job.Why> why = new ArrayList<>();
        for (int left = in.count(); left > 0; left--) {
            why.add(new Job.Why(WorkReason.valueOf(in.text()), in.text()));
        }
        return new Rereading(isDue, isByHand, why);
    }

    /** Finds out. */
    private record Work(Reviewed entry, ContentBase base, Optional<Ledger> last) {
        Rereading rereading() {
            List<Job.Why> why = new ArrayList<>();
            labels().forEach((day, names) -> why.add(new Job.Why(WorkReason.LABEL, String.join(", ", names)
                    + ", last on " + day)));
            sources().forEach(id -> superseded(id).ifPresent(detail ->
                    why.add(new Job.Why(WorkReason.SUPERSEDED, detail))));
            boolean isOfAge = Due.isOfAge(entry, edition());
            boolean isChanged = SignedFacts.changed(entry);
            if (isChanged) {
                why.add(new Job.Why(WorkReason.CHANGED, "signed " + signed("on no day")
                        + entry.reviser().map(by -> " by " + by).orElse("")));
            }
            List<String> beneath = beneath(isOfAge);
            beneath.forEach(detail -> why.add(new Job.Why(WorkReason.BENEATH, detail)));
            if (entry instanceof PestEntry pest) {
                new PriceMoves(base, last).of(pest).forEach(detail ->
                        why.add(new Job.Why(WorkReason.MOVED, detail)));
            }
            if (isOfAge) {
                why.add(new Job.Why(WorkReason.AGE, entry.revised().map(day -> "last read " + day)
                        .orElse("never read")));
            }
            boolean isDue = isOfAge || isChanged || !beneath.isEmpty();
            return new Rereading(isDue, !isDue && entry.signedFacts().isEmpty(), why);
        }

        private Edition edition() {
            return base.edition().value();
        }

        private String signed(String never) {
            return entry.revised().map(LocalDate::toString).orElse(never);
        }

        /** What changed in records that stand with it: since an edition for one that is re-read in any case. */
        private List<String> beneath(boolean isOfAge) {
            return isOfAge ? last.map(ledger -> SignedWith.since(entry, base, ledger).stream()
                    .map(detail -> detail + ", since edition " + ledger.year()).toList()).orElse(List.of())
                    : SignedWith.changes(entry, base, last).stream().map(detail -> detail
                            + ", since it was signed on " + signed("no day")).toList();
        }

        /** Materials whose labels nobody looked at since the last edition, by the day on which somebody did. */
        private SortedMap<String, List<String>> labels() {
            SortedMap<String, List<String>> byDay = new TreeMap<>();
            materials().stream().flatMap(id -> Optional.ofNullable(base.materials().get(id)).stream())
                    .map(Placed::value).filter(this::isUnchecked).forEach(known -> byDay.computeIfAbsent(
                            known.labelChecked().map(LocalDate::toString).orElse("no day"),
                            none -> new ArrayList<>()).add(known.name()));
            return byDay;
        }

        private boolean isUnchecked(ActiveIngredient material) {
            Optional<LocalDate> checked = material.labelChecked();
            return checked.isEmpty()
                    || checked.get().plusMonths(edition().maxAgeMonths()).isBefore(edition().issued())
                    || edition().reReadAfter().filter(last -> !checked.get().isAfter(last)).isPresent();
        }

        private Optional<String> superseded(String source) {
            return Optional.ofNullable(base.sources().get(source)).map(Placed::value)
                    .flatMap(known -> known.supersededBy().map(next -> brief(known) + " by "
                            + Optional.ofNullable(base.sources().get(next)).map(Placed::value)
                                    .map(Work::brief).orElse(next)));
        }

        private static String brief(Source source) {
            return source.authors() + source.year().map(year -> " " + year).orElse("");
        }

        private Set<String> materials() {
            Set<String> ids = new TreeSet<>();
            if (entry instanceof PestEntry pest) {
                for (Control control : pest.controls()) {
                    if (control instanceof Control.Insecticide use) {
                        ids.add(use.material());
                    }
                }
            }
            return ids;
        }

        private Set<String> sources() {
            Set<String> ids = new TreeSet<>(entry.sources());
            if (entry instanceof PestEntry pest) {
                pest.thresholds().stream().map(Threshold::source).forEach(source -> source.ifPresent(ids::add));
            }
            return ids;
        }
    }
}
