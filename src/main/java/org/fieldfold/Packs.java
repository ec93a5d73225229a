package org.fieldfold;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import org.fieldfold.edition.Comparison;
import org.fieldfold.edition.Snapshot;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.kept.Kept;
import org.fieldfold.pdf.Press;
import org.fieldfold.manuscript.News;
import org.fieldfold.output.CutOff;
import org.fieldfold.output.OutputFolder;
import org.fieldfold.report.FileHashes;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Severity;

/**
 * Office packs: each a folder of its own, {@code packs-<year>/<office>/}, that is there whole or not at all. A
 * run that was stopped goes on where it was, because a pack says what it was made from.
 */
public final class Packs {
    private Packs() {
    }

    /**
     * What is asked for.
     *
     * @param again whether to make packs anew that are there already
     */
    public record Request(Path content, Path out, Optional<LocalDate> asOf, boolean proof, OfficeChoice which,
            boolean again) {
        /** What else a pack depends on, and whether one may be made. */
        private String asked() {
            return asOf + " " + proof;
        }
    }

    /** Hears how far the work is. Several threads may tell. */
    public interface Progress {
        /** @param made how many of {@code done} were made; the others were there already */
        void at(int done, int made, int of);
    }

    /**
     * What came of it.
     *
     * @param folder of all packs; empty when errors stood and nothing was made
     * @param made packs made
     * @param kept packs that were there already, made from the same
     * @param left packs that were not made: the run was stopped, or an error stands at the office
     * @param unchanged whether nothing has changed since all packs were made, so that nothing was read
     */
    public record Packed(Optional<Path> folder, int made, int kept, int left, int sheets,
            List<Finding> findings, boolean unchanged) {
        private static Packed refused(List<Finding> findings) {
            return new Packed(Optional.empty(), 0, 0, 0, 0, findings, false);
        }
    }

    /** Checks the base and makes packs, until {@code stop} says so: what is begun then is finished. */
    public static Packed pack(Request request, Progress progress, BooleanSupplier stop) throws IOException {
        ContentFiles content = ContentFiles.in(request.content(), new FileHashes());
        putBack(request.out());
        Optional<Packed> unchanged = request.again() ? Optional.empty() : unchanged(request, content);
        if (unchanged.isPresent()) {
            return unchanged.get();
        }
        Compiler.Checked checked = Compiler.check(request.content(), request.asOf());
        List<Finding> findings = new ArrayList<>(checked.findings());
        if (checked.base().isEmpty() || !request.proof() && hasError(findings)) {
            return Packed.refused(findings);
        }
        ContentBase base = checked.base().get();
        int year = base.edition().value().year();
        Press press = PrintRoom.of(base, Kept.nothing()).press();
        List<Finding> unprintable = FigureProof.of(base, press, Kept.nothing());
        if (!unprintable.isEmpty()) {
            findings.addAll(unprintable);
            Collections.sort(findings);
            return Packed.refused(findings);
        }
        PackRoom room = new PackRoom(base, press, News.of(checked.ledgers().before(year).map(last -> Comparison.of(
                "edition " + last.year(), last.facts(), "edition " + year, Snapshot.of(base)))),
                request.proof());
        findings.addAll(room.findings());
        if (!request.proof() && hasError(findings)) {
            Collections.sort(findings);
            return Packed.refused(findings);
        }
        Path folder = request.out().resolve("packs-" + year);
        MadeFrom from = MadeFrom.of(checked.inputs(), room.characters(), request.proof());
        Run run = new Run(room, folder, request, from, request.which().of(base.offices().keySet()));
        run.all(progress, stop);
        findings.addAll(run.findings);
        Collections.sort(findings);
        if (!hasError(findings) && content.holds(checked.inputs(), request.content())) {
            from.remember(folder, content, request.asked());
        }
        return new Packed(Optional.of(folder), run.made.get(), run.kept.get(),
                run.offices.size() - run.made.get() - run.kept.get(), run.sheets.get(), findings,
                false);
    }

    private static void putBack(Path out) throws IOException {
        if (Files.isDirectory(out)) {
            try (DirectoryStream<Path> years = Files.newDirectoryStream(out, "packs-*")) {
                years.forEach(CutOff::putBack);
            }
        }
    }

    private static boolean hasError(List<Finding> findings) {
        return findings.stream().anyMatch(finding -> finding.severity() == Severity.ERROR);
    }

    /** Told from the hashes of files alone; after a run with errors they have to be said again. */
    private static Optional<Packed> unchanged(Request request, ContentFiles content) throws IOException {
        if (!Files.isDirectory(request.out())) {
            return Optional.empty();
        }
        List<String> offices = request.which().of(content.offices());
        try (DirectoryStream<Path> years = Files.newDirectoryStream(request.out(), "packs-*")) {
            for (Path folder : years) {
                Optional<MadeFrom> from = MadeFrom.known(folder, content, request.asked());
                if (from.isPresent() && areThere(offices, folder, from.get())) {
                    return Optional.of(new Packed(Optional.of(folder), 0, offices.size(), 0, 0, List.of(), true));
                }
            }
        }
        return Optional.empty();
    }

    private static boolean areThere(List<String> offices, Path folder, MadeFrom from) throws IOException {
        for (String office : offices) {
            if (!from.isThere(folder, office)) {
                return false;
            }
        }
        return true;
    }

    /** One run over the chosen offices. */
    private static final class Run {
        private final PackRoom room;
        private final Path folder;
        private final Request request;
        private final MadeFrom from;
        private final List<String> offices;
        private final ConcurrentSkipListSet<Finding> findings = new ConcurrentSkipListSet<>();
        private final AtomicInteger done = new AtomicInteger();
        private final AtomicInteger made = new AtomicInteger();
        private final AtomicInteger kept = new AtomicInteger();
        private final AtomicInteger sheets = new AtomicInteger();

        Run(PackRoom room, Path folder, Request request, MadeFrom from, List<String> offices) {
            this.room = room;
            this.folder = folder;
            this.request = request;
            this.from = from;
            this.offices = offices;
        }

        void all(Progress progress, BooleanSupplier stop) throws IOException {
            try {
                offices.parallelStream().forEach(office -> {
                    if (!stop.getAsBoolean()) {
                        one(office);
                        progress.at(done.incrementAndGet(), made.get(), offices.size());
                    }
                });
            } catch (UncheckedIOException failed) {
                throw failed.getCause();
            }
        }

        private void one(String office) {
            try {
                if (!request.again() && from.isThere(folder, office)) {
                    kept.incrementAndGet();
                    return;
                }
                List<Finding> found = new ArrayList<>();
                SortedMap<String, byte[]> files = room.pack(office, found);
                findings.addAll(found);
                if (request.proof() || !hasError(found)) {
                    publish(office, files);
                }
            } catch (IOException failed) {
                throw new UncheckedIOException(failed);
            }
        }

        private void publish(String office, SortedMap<String, byte[]> files) throws IOException {
            try (OutputFolder pack = OutputFolder.open(folder, office)) {
                for (var file : files.entrySet()) {
                    pack.writeUnlisted(file.getKey(), file.getValue());
                }
                pack.writeUnlisted(MadeFrom.NAME, from.of(office).getBytes(StandardCharsets.UTF_8));
                pack.publish();
            }
            made.incrementAndGet();
            sheets.addAndGet((int) files.keySet().stream().filter(name -> name.endsWith(".pdf")).count());
        }
    }
}
