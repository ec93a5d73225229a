package org.fieldfold.edition;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Control;
import org.fieldfold.entry.NaturalEnemy;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Practice;
import org.fieldfold.entry.Reviewed;
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
    private final Map<String, List<Finding>> findings = new HashMap<>();

    Reasons(ContentBase base, List<Finding> all) {
        this.base = base;
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

    /**
     * All reasons, the gravest first; empty for an entry that nobody needs to touch.
     *
     * @param rereading those that the entry and what it leans on give
     */
    List<Job.Why> of(Reviewed entry, Rereading rereading) {
        List<Job.Why> why = new ArrayList<>();
        findings.getOrDefault(entry.id(), List.of()).forEach(finding -> finding(finding, why));
        base.offices().values().forEach(office -> office.value().requests().stream()
                .filter(request -> request.entry().equals(entry.id()))
                .forEach(request -> why.add(new Job.Why(WorkReason.ASKED, office.value().name() + ": "
                        + request.what()))));
        why.addAll(rereading.why());
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

    static boolean insecticide(Reviewed entry) {
        return entry instanceof PestEntry pest
                && pest.controls().stream().anyMatch(Control.Insecticide.class::isInstance);
    }

    static String name(Reviewed entry) {
        return entry instanceof PestEntry pest ? pest.names().common()
                : entry instanceof NaturalEnemy enemy ? enemy.names().common()
                : entry instanceof Practice practice ? practice.name() : entry.id();
    }
}
