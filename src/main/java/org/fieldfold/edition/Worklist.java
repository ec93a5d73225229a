package org.fieldfold.edition;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Edition;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Reviewed;
import org.fieldfold.entry.Reviewer;
import org.fieldfold.report.Csv;
import org.fieldfold.source.Finding;

/**
 * What is to be done before the edition is issued: by risk to the reader, gravest first.
 *
 * @param entries how many there are
 * @param unsigned how many of them are still to be signed
 * @param byHand how many of the others were signed without a hash, so that a later edit is not found
 * @param reviewers who may sign, in the order of the edition
 */
public record Worklist(int year, int entries, int unsigned, int byHand, List<String> reviewers, List<Job> jobs) {
    /** Stands for a reviewer where nobody signed yet. */
    public static final String NOBODY = "nobody yet";

    private static final Comparator<Job> GRAVEST = Comparator
            .comparing((Job job) -> job.reasons().get(0).reason())
            .thenComparing(Job::insecticide, Comparator.reverseOrder())
            .thenComparing(job -> -job.reasons().size())
            .thenComparing(job -> job.lastRead().orElse(LocalDate.MIN)).thenComparing(Job::id);

    public Worklist {
        jobs = List.copyOf(jobs);
    }

    /**
     * The worklist of a base.
     *
     * @param findings of every check, whatever their severity
     */
    public static Worklist of(ContentBase base, List<Finding> findings, Rereadings rereadings) {
        Edition edition = base.edition().value();
        Reasons reasons = new Reasons(base, findings);
        List<Job> jobs = new ArrayList<>();
        for (Placed<? extends Reviewed> placed : base.reviewed()) {
            Reviewed entry = placed.value();
            List<Job.Why> why = reasons.of(entry, rereadings.of(entry));
            if (!why.isEmpty()) {
                jobs.add(new Job(entry.id(), Reasons.name(entry), placed.spans().file().path(),
                        entry.reviser(), entry.revised(), rereadings.isDue(entry),
                        Reasons.insecticide(entry), why));
            }
        }
        jobs.sort(GRAVEST);
        return new Worklist(edition.year(), base.reviewed().size(), rereadings.due(), rereadings.byHand(),
                edition.reviewers().stream().map(Reviewer::id).toList(), jobs);
    }

    /** The jobs of each reviewer, gravest first; what nobody signed yet stands last. */
    public Map<String, List<Job>> byReviewer() {
        Map<String, List<Job>> by = new LinkedHashMap<>();
        reviewers.forEach(reviewer -> by.put(reviewer, new ArrayList<>()));
        jobs.forEach(job -> by.computeIfAbsent(job.reviewer().orElse(NOBODY), none -> new ArrayList<>())
                .add(job));
        by.values().removeIf(List::isEmpty);
        return by;
    }

    /** The same for one reviewer. */
    public Worklist of(String reviewer) {
        return new Worklist(year, entries, unsigned, byHand, reviewers, jobs.stream()
                .filter(job -> job.reviewer().equals(Optional.of(reviewer))).toList());
    }

    /** One sentence on how far the winter has come. */
    public String progress() {
        return "edition " + year + ": " + (entries - unsigned) + " of " + entries + " entries signed, "
                + unsigned + " still to be signed" + (byHand == 0 ? "" : "; " + byHand + " signed by hand, so "
                + "that a later edit is not found");
    }

    public String text() {
        StringBuilder out = new StringBuilder(progress()).append('\n');
        byReviewer().forEach((reviewer, of) -> {
            out.append('\n').append(reviewer).append(" (").append(of.size()).append(")\n");
            of.forEach(job -> out.append("  ").append(job.id()).append(job.unsigned() ? "  [to sign]" : "")
                    .append("  last read ").append(job.lastRead().map(LocalDate::toString).orElse("never"))
                    .append('\n').append(reasons(job)));
        });
        return out.toString();
    }

    private static String reasons(Job job) {
        StringBuilder out = new StringBuilder();
        job.reasons().forEach(why -> out.append("      ").append(why.reason() == WorkReason.AGE
                ? why.reason().words() : why.sentence()).append('\n'));
        return out.toString();
    }

    /** A row a reason, for a spreadsheet. */
    public String csv() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("risk", "reviewer", "entry", "name", "to sign", "last read", "reason", "detail",
                "file"));
        int rank = 0;
        for (Job job : jobs) {
            rank++;
            for (Job.Why why : job.reasons()) {
                rows.add(List.of(String.valueOf(rank), job.reviewer().orElse(""), job.id(), job.name(),
                        job.unsigned() ? "yes" : "no", job.lastRead().map(LocalDate::toString).orElse(""),
                        why.reason().words(), why.detail(), job.file()));
            }
        }
        return Csv.write(rows);
    }
}
