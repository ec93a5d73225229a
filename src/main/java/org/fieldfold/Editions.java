package org.fieldfold;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.fieldfold.content.EditRefused;
import org.fieldfold.content.InPlace;
import org.fieldfold.edition.Comparison;
import org.fieldfold.edition.Due;
import org.fieldfold.edition.Ledger;
import org.fieldfold.edition.Rereadings;
import org.fieldfold.edition.Snapshot;
import org.fieldfold.edition.Worklist;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Edition;

/** Years: opening the next, listing those that were issued, and what changed between them. */
public final class Editions {
    private Editions() {
    }

    /** Something that was asked for and is not done; the message says why, and what to do. */
    public static final class Refused extends Exception {
        Refused(String message) {
            super(message);
        }
    }

    /**
     * Moves {@code edition.yaml} on to another year: its year, dates and addresses, every other byte staying.
     * All entries are due from then on.
     *
     * @return what was changed, a line each
     */
    public static List<String> open(Path content, int year) throws IOException, Refused {
        Compiler.Checked checked = Compiler.check(content, Optional.empty());
        Edition edition = base(checked).edition().value();
        if (year <= edition.year()) {
            throw new Refused("expected a year after " + edition.year() + ", which stands in edition.yaml, "
                    + "found " + year);
        }
        Optional<Ledger> issued = checked.ledgers().of(edition.year());
        LocalDate last = issued.map(Ledger::issuedOn).filter(day -> day.isAfter(edition.issued()))
                .orElse(edition.issued());
        SortedMap<String, String> values = new TreeMap<>();
        int years = year - edition.year();
        values.put("year", String.valueOf(year));
        values.put("issued", edition.issued().plusYears(years).toString());
        values.put("valid-from", edition.validFrom().plusYears(years).toString());
        values.put("valid-until", edition.validUntil().plusYears(years).toString());
        values.put("re-read-after", last.toString());
        values.put("handbook", moved(edition.handbook(), edition.year(), year));
        values.put("title", moved(edition.title(), edition.year(), year));
        List<String> lines = edit(content.resolve("edition.yaml"), values);
        if (issued.isEmpty()) {
            lines.add("edition " + edition.year() + " was never issued here: there is no ledger of it to "
                    + "compare with");
        }
        return lines;
    }

    /** Text with one year in the place of another, where it stands as a number of its own. */
    private static String moved(String text, int from, int to) {
        return text.replaceAll("(?<![0-9])" + from + "(?![0-9])", String.valueOf(to));
    }

    private static List<String> edit(Path file,
            SortedMap<String, String> values) throws IOException, Refused {
        List<String> lines = new ArrayList<>();
        try {
            InPlace text = InPlace.of(file.getFileName().toString(), Files.readAllBytes(file));
            for (var value : values.entrySet()) {
                Optional<String> old = text.value(value.getKey());
                if (!old.equals(Optional.of(value.getValue()))) {
                    text = text.put(value.getValue(), value.getKey());
                    lines.add(value.getKey() + ": " + old.map(was -> was + " -> ").orElse("")
                            + value.getValue());
                }
            }
            WholeFile.write(file, text.bytes());
            return lines;
        } catch (EditRefused refused) {
            throw new Refused(refused.getMessage());
        }
    }

    /**
     * What changed between two years, or between a year and the content as it is.
     *
     * @param from empty for the last edition that was issued before {@code to}
     * @param to empty for the content as it is
     */
    public static Comparison compare(Path content, Optional<Integer> from,
            Optional<Integer> to) throws IOException, Refused {
        Compiler.Checked checked = Compiler.check(content, Optional.empty());
        ContentBase base = base(checked);
        int year = to.orElse(base.edition().value().year());
        Ledger before = from.isPresent() ? ledger(checked, from.get())
                : checked.ledgers().before(year).orElseThrow(() -> new Refused("expected an edition issued "
                        + "before " + year + " to compare with, found none"));
        boolean present = to.isEmpty() || checked.ledgers().of(year).isEmpty()
                && year == base.edition().value().year();
        return present
                ? Comparison.of("edition " + before.year(), before.facts(),
                        base.edition().value().year() + " as it stands", Snapshot.of(base))
                : Comparison.of("edition " + before.year(), before.facts(), "edition " + year,
                        ledger(checked, year).facts());
    }

    private static Ledger ledger(Compiler.Checked checked, int year) throws Refused {
        Optional<Ledger> ledger = checked.ledgers().of(year);
        if (ledger.isEmpty() && Files.exists(checked.ledgers().file(year))) {
            throw new Refused("expected the ledger of edition " + year + " as it was written, found that "
                    + checked.ledgers().file(year) + " was changed since; take it from version control or from a copy "
                    + "again");
        }
        return ledger.orElseThrow(() -> new Refused("expected the ledger of edition "
                + year + ", found " + (checked.ledgers().byYear().isEmpty() ? "none at all"
                : "those of " + checked.ledgers().byYear().keySet().stream().map(String::valueOf)
                        .collect(Collectors.joining(", ")))));
    }

    /** What is to be done before the edition is issued. */
    public static Worklist worklist(Path content, Optional<LocalDate> asOf) throws IOException, Refused {
        Compiler.Checked checked = Compiler.check(content, asOf);
        ContentBase base = base(checked);
        return Worklist.of(base, checked.findings(), Rereadings.of(base,
                checked.ledgers().before(base.edition().value().year())));
    }

    /** The editions that were issued and the one that is open, a line each. */
    public static List<String> list(Path content) throws IOException, Refused {
        Compiler.Checked checked = Compiler.check(content, Optional.empty());
        List<String> lines = new ArrayList<>();
        checked.ledgers().byYear().values().forEach(ledger -> lines.add(ledger.year() + "  issued "
                + ledger.issuedOn() + "  " + dates(ledger) + "  " + ledger.facts().signatures() + "  "
                + ledger.outputs().size() + " files  seal " + Ledgers.brief(ledger.seal())));
        checked.ledgers().findings().forEach(finding ->
                lines.add(finding.span().file().path() + "  " + finding.message()));
        Edition edition = base(checked).edition().value();
        if (checked.ledgers().of(edition.year()).isEmpty()) {
            lines.add(edition.year() + "  open, planned for " + edition.issued() + "  holds "
                    + edition.validFrom() + " to " + edition.validUntil() + "  "
                    + Snapshot.of(base(checked)).signatures() + ", " + Due.in(base(checked)).size()
                    + " still due");
        }
        return lines;
    }

    private static String dates(Ledger ledger) {
        var edition = ledger.facts().get("edition", "edition").orElseThrow().facts();
        return "holds " + edition.word("valid-from").orElse("") + " to "
                + edition.word("valid-until").orElse("");
    }

    static ContentBase base(Compiler.Checked checked) throws Refused {
        return checked.base().orElseThrow(() -> new Refused("expected an edition.yaml that can be read, "
                + "found " + checked.findings().stream().findFirst().map(finding -> finding.message()).orElse("none")
                + "; 'fieldfold check' says more"));
    }
}
