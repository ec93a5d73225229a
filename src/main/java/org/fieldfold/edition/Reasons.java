package org.fieldfold.edition;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fieldfold.entry.ActiveIngredient;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Control;
import org.fieldfold.entry.Edition;
import org.fieldfold.entry.NaturalEnemy;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Practice;
import org.fieldfold.entry.Reviewed;
import org.fieldfold.entry.Source;
import org.fieldfold.entry.Threshold;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Severity;

/** Why entries are on the worklist. */
final class Reasons {
    /** A file of an entry, of the base itself or of a language. */
    private static final Pattern ENTRY_FILE =
            Pattern.compile("(?:^|/)(?:pests|natural-enemies|practices)/([a-z0-9-]+)\\.yaml$");
    private static final Pattern FIGURE_FILE = Pattern.compile("(?:^|/)figures/([a-z0-9-]+)\\.[a-z]+$");

    /** Rules whose matter is told in its own words. */
    private static final Set<String> TOLD = Set.of("revision-date", "reviser-missing", "label-not-checked",
            "threshold-moved");

    private final ContentBase base;
    private final Edition edition;
    private final PriceMoves moves;
    private final Optional<Ledger> last;
    private final Map<String, List<Finding>> findings = new HashMap<>();

    Reasons(ContentBase base, List<Finding> all, Optional<Ledger> last) {
        this.base = base;
        this.last = last;
        this.moves = new PriceMoves(base, last);
        this.edition = base.edition().value();
        all.forEach(finding -> entries(finding).forEach(id ->
                findings.computeIfAbsent(id, none -> new ArrayList<>()).add(finding)));
    }

    /** The entries that a finding is about: of its file, of its figure, or those that lean on its price. */
    private Collection<String> entries(Finding finding) {
        return finding.span().file().path().endsWith("/prices.yaml") ? ofPrice(finding)
                : entry(finding).stream().toList();
    }

    private List<String> ofPrice(Finding finding) {
        List<String> prices = base.prices().values().stream().filter(price -> price.at().start()
                <= finding.span().start() && finding.span().start() <= price.at().end())
                .map(price -> price.value().id()).toList();
        return base.pests().values().stream().map(Placed::value).filter(pest -> pest.thresholds().stream()
                .flatMap(threshold -> threshold.injuryLevel().stream())
                .anyMatch(terms -> prices.contains(terms.cost()) || prices.contains(terms.value())))
                .map(PestEntry::id).toList();
    }

    private Optional<String> entry(Finding finding) {
        String path = finding.span().file().path();
        Matcher entry = ENTRY_FILE.matcher(path);
        if (entry.find()) {
            return Optional.of(entry.group(1));
        }
        Matcher figure = FIGURE_FILE.matcher(path);
        return figure.find() ? Optional.ofNullable(base.figures().get(figure.group(1)))
                .map(placed -> placed.value().note().shows().entry()) : Optional.empty();
    }

    /** All reasons, the gravest first; empty for an entry that nobody needs to touch. */
    List<Job.Why> of(Placed<? extends Reviewed> placed) {
        Reviewed entry = placed.value();
        List<Job.Why> why = new ArrayList<>();
        findings.getOrDefault(entry.id(), List.of()).forEach(finding -> finding(finding, why));
        labels(entry).forEach((day, names) -> why.add(new Job.Why(WorkReason.LABEL, String.join(", ", names)
                + ", last on " + day)));
        sources(entry).forEach(id -> superseded(id).ifPresent(detail ->
                why.add(new Job.Why(WorkReason.SUPERSEDED, detail))));
        base.offices().values().forEach(office -> office.value().requests().stream()
                .filter(request -> request.entry().equals(entry.id()))
                .forEach(request -> why.add(new Job.Why(WorkReason.ASKED, office.value().name() + ": "
                        + request.what()))));
        if (SignedFacts.changed(entry)) {
            why.add(new Job.Why(WorkReason.CHANGED, "signed " + entry.revised().map(LocalDate::toString)
                    .orElse("on no day") + entry.reviser().map(by -> " by " + by).orElse("")));
        }
        if (Due.isOfAge(entry, edition)) {
            last.ifPresent(ledger -> SignedWith.since(entry, base, ledger).forEach(detail -> why.add(
                    new Job.Why(WorkReason.BENEATH, detail + ", since edition " + ledger.year()))));
        } else {
            SignedWith.changes(entry, base, last).forEach(detail -> why.add(new Job.Why(WorkReason.BENEATH, detail
                    + ", since it was signed on " + entry.revised().map(LocalDate::toString).orElse("no day"))));
        }
        if (entry instanceof PestEntry pest) {
            moves.of(pest).forEach(detail -> why.add(new Job.Why(WorkReason.MOVED, detail)));
        }
        if (Due.isOfAge(entry, edition)) {
            why.add(new Job.Why(WorkReason.AGE, entry.revised().map(day -> "last read " + day)
                    .orElse("never read")));
        }
        why.sort(Comparator.comparing(Job.Why::reason));
        return why.stream().distinct().toList();
    }

    private static void finding(Finding finding, List<Job.Why> why) {
        WorkReason reason = WorkReason.of(finding.rule(), finding.severity() == Severity.ERROR);
        boolean telling = reason != WorkReason.FINDING || finding.severity() != Severity.INFO;
        if (telling && !TOLD.contains(finding.rule())) {
            String path = finding.span().file().path();
            String file = ENTRY_FILE.matcher(path).find() ? ""
                    : path.substring(path.lastIndexOf('/') + 1) + " ";
            why.add(new Job.Why(reason, file + "line " + finding.span().line() + ", " + finding.message()
                    + " [" + finding.rule() + "]"));
        }
    }

    /** Materials whose labels nobody looked at since the last edition, by the day on which somebody did. */
    private SortedMap<String, List<String>> labels(Reviewed entry) {
        SortedMap<String, List<String>> byDay = new TreeMap<>();
        materials(entry).stream().flatMap(id -> Optional.ofNullable(base.materials().get(id)).stream())
                .map(Placed::value).filter(this::isUnchecked).forEach(known -> byDay.computeIfAbsent(
                        known.labelChecked().map(LocalDate::toString).orElse("no day"), none -> new ArrayList<>())
                        .add(known.name()));
        return byDay;
    }

    private boolean isUnchecked(ActiveIngredient material) {
        Optional<LocalDate> checked = material.labelChecked();
        return checked.isEmpty()
                || checked.get().plusMonths(edition.maxAgeMonths()).isBefore(edition.issued())
                || edition.reReadAfter().filter(last -> !checked.get().isAfter(last)).isPresent();
    }

    private Optional<String> superseded(String source) {
        return Optional.ofNullable(base.sources().get(source)).map(Placed::value)
                .flatMap(known -> known.supersededBy().map(next -> brief(known) + " by "
                        + Optional.ofNullable(base.sources().get(next)).map(Placed::value)
                                .map(Reasons::brief).orElse(next)));
    }

    private static String brief(Source source) {
        return source.authors() + source.year().map(year -> " " + year).orElse("");
    }

    private static Set<String> materials(Reviewed entry) {
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

    private static Set<String> sources(Reviewed entry) {
        Set<String> ids = new TreeSet<>(entry.sources());
        if (entry instanceof PestEntry pest) {
            pest.thresholds().stream().map(Threshold::source).forEach(source -> source.ifPresent(ids::add));
        }
        return ids;
    }

    static boolean insecticide(Reviewed entry) {
        return !materials(entry).isEmpty();
    }

    static String name(Reviewed entry) {
        return entry instanceof PestEntry pest ? pest.names().common()
                : entry instanceof NaturalEnemy enemy ? enemy.names().common()
                : entry instanceof Practice practice ? practice.name() : entry.id();
    }
}
