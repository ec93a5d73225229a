package org.fieldfold;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Supplier;
import org.fieldfold.edition.Change;
import org.fieldfold.edition.Comparison;
import org.fieldfold.edition.Ledger;
import org.fieldfold.edition.Snapshot;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Placed;
import org.fieldfold.output.OutputFile;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Span;

/** Holds a base to the ledger of its own year: an issued edition is built again as it was, or not at all. */
final class Reissue {
    private Reissue() {
    }

    /**
     * Facts that are not those of the ledger; none when the year was not issued yet.
     *
     * @param facts of the base, for when they are needed
     */
    static List<Finding> facts(ContentBase base, Ledgers ledgers, Supplier<Snapshot> facts) {
        int year = base.edition().value().year();
        Optional<Ledger> issued = ledgers.of(year);
        if (issued.isEmpty()) {
            return List.of();
        }
        Snapshot now = facts.get();
        if (now.equals(issued.get().facts())) {
            return List.of();
        }
        List<Finding> findings = new ArrayList<>();
        Comparison comparison = Comparison.of("edition " + year, issued.get().facts(), "the content", now);
        comparison.changes().forEach(change -> findings.add(finding(place(base, change), year,
                issued.get(), change.sentence())));
        if (findings.isEmpty()) {
            findings.add(finding(base.edition().at("year"), year, issued.get(),
                    "another year, date, or signature"));
        }
        return findings;
    }

    private static Finding finding(Span place, int year, Ledger ledger, String found) {
        return Finding.error(place, "issued-facts-differ", "expected edition " + year
                + " as it was issued on " + ledger.issuedOn() + ", found " + found,
                "put it back, or open the next edition with "
                + "'fieldfold edition open " + (year + 1) + "' and change it there");
    }

    /** The record's place; for one that is gone, the edition's. */
    private static Span place(ContentBase base, Change change) {
        Map<String, ? extends Placed<?>> records = switch (change.kind()) {
            case "pests" -> base.pests();
            case "enemies" -> base.enemies();
            case "practices" -> base.practices();
            case "materials" -> base.materials();
            case "crops" -> base.crops();
            case "sources" -> base.sources();
            case "guides" -> base.guides();
            case "offices" -> base.offices();
            case "figures" -> base.figures();
            case "chapters" -> base.chapters();
            default -> Map.of();
        };
        Placed<?> placed = records.get(change.id());
        return placed == null ? base.edition().at("year") : placed.at();
    }

    /** A build of an issued year that is not the build that was issued. */
    static List<Finding> bytes(ContentBase base, Ledgers ledgers, List<OutputFile> files, boolean proof) {
        int year = base.edition().value().year();
        Span place = base.edition().at("year");
        Optional<Ledger> issued = ledgers.of(year);
        if (issued.isEmpty()) {
            return List.of();
        }
        if (proof) {
            return List.of(Finding.error(place, "issued-bytes-differ", "expected edition " + year
                    + " as it was issued, found a proof of it",
                    "leave out --proof, or open the next edition"));
        }
        List<String> differ = differing(issued.get().outputs(), hashes(files));
        String version = issued.get().version();
        return differ.isEmpty() ? List.of() : List.of(Finding.error(place, "issued-bytes-differ",
                "expected the files of edition " + year + " as they were issued on " + issued.get().issuedOn()
                + ", found " + differ.size() + " that differ: " + String.join(", ",
                differ.subList(0, Math.min(5, differ.size()))) + (differ.size() > 5 ? " and others" : ""),
                version.equals(Compiler.VERSION) ? "build it with the Fieldfold and the fonts that issued it"
                        : "build it with Fieldfold " + version + ", which issued it; this is "
                                + Compiler.VERSION));
    }

    /** The manifest is not in it: it lists all others, and so cannot list itself. */
    static SortedMap<String, String> hashes(List<OutputFile> files) {
        SortedMap<String, String> hashes = new TreeMap<>();
        files.stream().filter(file -> !file.path().equals("manifest.json"))
                .forEach(file -> hashes.put(file.path(), file.sha256()));
        return hashes;
    }

    private static List<String> differing(Map<String, String> was, Map<String, String> is) {
        TreeSet<String> paths = new TreeSet<>(was.keySet());
        paths.addAll(is.keySet());
        return paths.stream().filter(path -> !Optional.ofNullable(was.get(path))
                .equals(Optional.ofNullable(is.get(path)))).toList();
    }
}
