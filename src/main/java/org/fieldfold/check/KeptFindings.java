package org.fieldfold.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.source.Finding;
import org.fieldfold.trace.KeptResults;
import org.fieldfold.trace.Sources;

/**
 * The findings of a base from one state of it to the next: a rule is put again only where something that it
 * read is no longer the same. No rule says what it leans on; it is put to a base that notes what is read.
 */
public final class KeptFindings {
    private final KeptResults<List<Finding>> kept = new KeptResults<>();
    private Optional<byte[]> written;
    private Optional<LocalDate> day = Optional.empty();
    private SortedMap<String, Integer> asked = new TreeMap<>();

    /** None are known yet. */
    public KeptFindings() {
        this.written = Optional.empty();
    }

    /**
     * Those that an earlier process wrote down.
     *
     * @param bytes of {@link #bytes} by the very same program, and of the same day of reference; of any others
     *     nothing is known
     */
    public KeptFindings(byte[] bytes) {
        this.written = Optional.of(bytes);
    }

    /** The findings of the last check, to be known in a later process; empty before the first. */
    public synchronized Optional<byte[]> bytes() {
        return day.map(asOf -> kept.bytes(new FindingForm(Map.of())));
    }

    /**
     * The same as {@link Rulebook#check}, in less time.
     *
     * @param hashes of the files that the base was read from, by path
     */
    public synchronized List<Finding> check(ContentBase base, LocalDate asOf, Map<String, String> hashes) {
        written.ifPresent(bytes -> kept.goOn(bytes, new FindingForm(Sources.of(base))));
        written = Optional.empty();
        day = Optional.of(asOf);
        SortedMap<String, Integer> asked = new TreeMap<>();
        KeptResults<List<Finding>>.Round round = kept.round(base, hashes);
        List<Finding> findings = Rulebook.questions(base).parallel().flatMap(question ->
                round.take(question.name(), asOf.toString(), read -> ask(question, read, asOf, asked)).stream())
                .sorted().toList();
        round.end();
        this.asked = asked;
        return findings;
    }

    private static List<Finding> ask(Question question, ContentBase base, LocalDate asOf,
            SortedMap<String, Integer> asked) {
        List<Finding> found = new ArrayList<>();
        question.ask(base, asOf, found::add);
        synchronized (asked) {
            question.rules().forEach(rule -> asked.merge(rule.id(), 1, Integer::sum));
        }
        return List.copyOf(found);
    }

    /** How often each rule was put by the last check, by its id: once to the base, or to so many subjects. */
    public synchronized SortedMap<String, Integer> asked() {
        return asked;
    }
}
