package org.fieldfold.edition;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The record of an issued edition: every fact of every entry, who stood behind it, and the hashes of every
 * file that was built.
 *
 * <p>Its seal is a hash over all the rest. It finds a ledger that was changed by hand or damaged. It does not
 * prove anything against somebody who changes a ledger and computes the seal anew; against that only helps
 * what they cannot reach: the next ledger, which repeats this seal, and a copy of the seal kept elsewhere.
 *
 * @param issuedOn the day on which it was issued
 * @param version of Fieldfold that built it
 * @param follows the edition before it, with its seal
 * @param outputs SHA-256 of each file of the build, by path
 */
public record Ledger(int year, LocalDate issuedOn, String version, Optional<Follows> follows,
        Snapshot facts, SortedMap<String, String> outputs) {
    /** The edition before, and the seal of its ledger. */
    public record Follows(int year, String seal) {
    }

    /** A ledger as it was read, and whether its seal holds. */
    public record Read(Ledger ledger, boolean sound) {
    }

    /** The hash over everything in it. */
    public String seal() {
        return body().sha256();
    }

    /** The file: indented JSON, ending in the seal. */
    public String text() {
        return Fact.group("ledger", body(), "seal-sha256", Fact.word(seal())).json();
    }

    /**
     * Reads a ledger's file.
     *
     * @return empty when it is no ledger at all
     */
    public static Optional<Read> read(String text) {
        return FactReading.read(text).flatMap(file -> {
            try {
                Fact.Group body = file.group("ledger");
                Ledger ledger = of(body);
                return Optional.of(new Read(ledger,
                        file.word("seal-sha256").equals(Optional.of(body.sha256()))));
            } catch (DateTimeException | NumberFormatException | java.util.NoSuchElementException broken) {
                return Optional.empty();
            }
        });
    }

    private Fact.Group body() {
        SortedMap<String, Fact> kinds = new TreeMap<>();
        facts.records().forEach((kind, byId) -> {
            SortedMap<String, Fact> records = new TreeMap<>();
            byId.forEach((id, known) -> records.put(id, Fact.group("facts", known.facts(),
                    "facts-sha256", Fact.word(known.facts().sha256()), "signed", known.signature())));
            kinds.put(kind, new Fact.Group(records));
        });
        SortedMap<String, Fact> files = new TreeMap<>();
        outputs.forEach((path, hash) -> files.put(path, Fact.word(hash)));
        SortedMap<String, Fact> body = new TreeMap<>(Fact.group("edition", Fact.word(year), "issued-on",
                Fact.word(issuedOn), "fieldfold", Fact.word(version), "records", new Fact.Group(kinds),
                "outputs", new Fact.Group(files)).facts());
        follows.ifPresent(before -> body.put("follows", Fact.group("edition", Fact.word(before.year()),
                "seal-sha256", Fact.word(before.seal()))));
        return new Fact.Group(body);
    }

    private static Ledger of(Fact.Group body) {
        SortedMap<String, SortedMap<String, Snapshot.Known>> kinds = new TreeMap<>();
        body.group("records").facts().forEach((kind, records) -> {
            SortedMap<String, Snapshot.Known> byId = new TreeMap<>();
            Fact.Group group = body.group("records").group(kind);
            group.facts().keySet().forEach(id -> byId.put(id, new Snapshot.Known(
                    group.group(id).group("facts"), group.group(id).group("signed"))));
            kinds.put(kind, byId);
        });
        SortedMap<String, String> outputs = new TreeMap<>();
        body.group("outputs").facts().keySet()
                .forEach(path -> outputs.put(path, body.group("outputs").word(path).orElse("")));
        Fact.Group follows = body.group("follows");
        return new Ledger(Integer.parseInt(body.word("edition").orElseThrow()),
                LocalDate.parse(body.word("issued-on").orElseThrow()), body.word("fieldfold").orElse(""),
                follows.word("edition").map(year -> new Follows(Integer.parseInt(year),
                        follows.word("seal-sha256").orElse(""))),
                new Snapshot(kinds), outputs);
    }
}
