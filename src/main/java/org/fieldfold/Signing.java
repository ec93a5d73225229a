package org.fieldfold;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fieldfold.content.EditRefused;
import org.fieldfold.content.InPlace;
import org.fieldfold.content.Nearest;
import org.fieldfold.edition.Change;
import org.fieldfold.edition.Comparison;
import org.fieldfold.edition.Fact;
import org.fieldfold.edition.Ledger;
import org.fieldfold.edition.SignedFacts;
import org.fieldfold.edition.SignedWith;
import org.fieldfold.edition.Snapshot;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Edition;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Reviewed;
import org.fieldfold.entry.Reviewer;

/** Signs entries that were re-read: date, name and hash of what was read in the file, every other byte as it was. */
public final class Signing {
    private final Path content;
    private final Compiler.Checked checked;
    private final ContentBase base;
    private final Edition edition;
    /** Made when somebody states that an entry is unchanged. */
    private Optional<Snapshot> now = Optional.empty();

    private Signing(Path content, Compiler.Checked checked) throws Editions.Refused {
        this.content = content;
        this.checked = checked;
        this.base = Editions.base(checked);
        this.edition = base.edition().value();
    }

    /**
     * Signs entries.
     *
     * @param by id of a reviewer of the edition
     * @param carriedOver whether the reviewer states that nothing changed since the last edition
     * @param today the day that is written
     * @return the files that were changed
     * @throws Editions.Refused when one of them may not be signed so; then none is
     */
    public static List<Path> sign(Path content, List<String> ids, String by, boolean carriedOver,
            LocalDate today) throws IOException, Editions.Refused {
        Signing signing = new Signing(content, Compiler.check(content, Optional.empty()));
        signing.mayBeSigned(by, today);
        for (String id : ids) {
            signing.file(id);
            if (carriedOver) {
                signing.isUnchanged(id);
            }
        }
        List<Path> files = new ArrayList<>();
        for (String id : ids) {
            files.add(signing.write(id, by, carriedOver, today));
        }
        return files;
    }

    private void mayBeSigned(String by, LocalDate today) throws Editions.Refused {
        if (edition.reviewers().stream().map(Reviewer::id).noneMatch(by::equals)) {
            throw new Editions.Refused("expected a reviewer of edition.yaml, one of "
                    + edition.reviewers().stream().map(Reviewer::id).collect(Collectors.joining(", "))
                    + ", found '" + by + "'");
        }
        if (checked.ledgers().of(edition.year()).isPresent()) {
            throw new Editions.Refused("edition " + edition.year() + " is issued; what is signed now belongs "
                    + "to the next: 'fieldfold edition open " + (edition.year() + 1) + "' first");
        }
        Optional<LocalDate> last = edition.reReadAfter();
        if (last.filter(day -> !today.isAfter(day)).isPresent()) {
            throw new Editions.Refused("expected a day after " + last.get() + ", which edition.yaml has as "
                    + "'re-read-after': what was signed until then is due again, found " + today
                    + "; look at the date of this machine");
        }
    }

    /** The file of an entry. */
    private Path file(String id) throws Editions.Refused {
        String folder = base.pests().containsKey(id) ? "pests"
                : base.enemies().containsKey(id) ? "natural-enemies"
                : base.practices().containsKey(id) ? "practices" : "";
        if (folder.isEmpty()) {
            List<String> known = base.reviewed().stream().map(entry -> entry.value()).map(Reviewed::id)
                    .toList();
            throw new Editions.Refused("expected the id of a pest, natural enemy or practice, found '" + id
                    + "'" + (base.unread().containsKey(id) ? ", whose file could not be read; 'fieldfold "
                            + "check' says why"
                            : Nearest.to(id, known).map(near -> "; did you mean '" + near + "'?")
                                    .orElse("")));
        }
        return content.resolve(folder).resolve(id + ".yaml");
    }

    private Reviewed entry(String id) {
        return base.reviewed().stream().map(Placed::value).map(Reviewed.class::cast)
                .filter(entry -> entry.id().equals(id)).findFirst().orElseThrow();
    }

    private Snapshot now() {
        if (now.isEmpty()) {
            now = Optional.of(Snapshot.of(base));
        }
        return now.get();
    }

    /** 'Carried over unchanged' is a statement: it is only taken when it is true. */
    private void isUnchanged(String id) throws Editions.Refused {
        Ledger last = checked.ledgers().before(edition.year()).orElseThrow(() -> new Editions.Refused(
                "expected an edition issued before " + edition.year() + " to carry '" + id
                + "' over from, found none"));
        List<String> changes = changed(now(), last, base, entry(id));
        if (!changes.isEmpty()) {
            throw new Editions.Refused("expected '" + id + "' unchanged since edition " + last.year()
                    + ", found " + String.join("; ", changes) + "; re-read it with that, then sign it without "
                    + "--carried-over");
        }
    }

    /**
     * What of one entry, or of what stands with it on paper, differs from a ledger; the whole bases are compared only
     * where something does.
     */
    static List<String> changed(Snapshot now, Ledger last, ContentBase base, Reviewed entry) {
        List<String> changes = new ArrayList<>();
        for (String kind : List.of("pests", "enemies", "practices")) {
            Optional<Snapshot.Known> is = now.get(kind, entry.id());
            Optional<Fact.Group> was = last.facts().get(kind, entry.id()).map(Snapshot.Known::facts);
            if (is.isPresent() && !was.equals(is.map(Snapshot.Known::facts))) {
                Comparison.of("", last.facts(), "", now).changes().stream()
                        .filter(change -> change.id().equals(entry.id()) && change.kind().equals(kind))
                        .map(Change::what).forEach(changes::add);
            }
        }
        changes.addAll(SignedWith.since(entry, base, last));
        return changes;
    }

    private Path write(String id, String by, boolean carriedOver,
            LocalDate today) throws IOException, Editions.Refused {
        Path file = file(id);
        try {
            InPlace text = InPlace.of(file.toString(), Files.readAllBytes(file))
                    .put(today.toString(), "revised").put(by, "reviser")
                    .put(SignedFacts.hash(entry(id)), "signed-facts");
            Optional<String> with = SignedWith.of(entry(id), base);
            text = with.isPresent() ? text.put(with.get(), "signed-with") : text.remove("signed-with");
            text = carriedOver ? text.put("true", "carried-over") : text.remove("carried-over");
            WholeFile.write(file, text.bytes());
            return file;
        } catch (EditRefused refused) {
            throw new Editions.Refused(refused.getMessage());
        }
    }
}
