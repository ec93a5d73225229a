package org.fieldfold;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
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
import org.fieldfold.content.InputFile;
import org.fieldfold.edition.Comparison;
import org.fieldfold.edition.Snapshot;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.manuscript.News;
import org.fieldfold.output.OutputFolder;
import org.fieldfold.report.Sha256;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Severity;

/**
 * Office packs: each a folder of its own, {@code packs-<year>/<office>/}, that is there whole or not at all. A
 * run that was stopped goes on where it was, because a pack says what it was made from.
 */
public final class Packs {
    /** Says what a pack was made from; of no use to the office, so it is not in the zip. */
    static final String MADE_FROM = ".made-from";

    private Packs() {
    }

    /**
     * What is asked for.
     *
     * @param again whether to make packs anew that are there already
     */
    public record Request(Path content, Path out, Optional<LocalDate> asOf, boolean proof, OfficeChoice which,
            boolean again) {
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
     */
    public record Packed(Optional<Path> folder, int made, int kept, int left, int sheets,
            List<Finding> findings) {
    }

    /** Checks the base and makes packs, until {@code stop} says so: what is begun then is finished. */
    public static Packed pack(Request request, Progress progress, BooleanSupplier stop) throws IOException {
        Compiler.Checked checked = Compiler.check(request.content(), request.asOf());
        List<Finding> findings = new ArrayList<>(checked.findings());
        if (checked.base().isEmpty() || !request.proof() && hasError(findings)) {
            return new Packed(Optional.empty(), 0, 0, 0, 0, findings);
        }
        ContentBase base = checked.base().get();
        int year = base.edition().value().year();
        PackRoom room = new PackRoom(base, News.of(checked.ledgers().before(year).map(last -> Comparison.of(
                "edition " + last.year(), last.facts(), "edition " + year, Snapshot.of(base)))),
                request.proof());
        findings.addAll(room.findings());
        if (!request.proof() && hasError(findings)) {
            Collections.sort(findings);
            return new Packed(Optional.empty(), 0, 0, 0, 0, findings);
        }
        Path folder = request.out().resolve("packs-" + year);
        Run run = new Run(room, folder, request, shared(checked.inputs(), room, request.proof()), checked.inputs(),
                request.which().of(base.offices().keySet()));
        run.all(progress, stop);
        findings.addAll(run.findings);
        Collections.sort(findings);
        return new Packed(Optional.of(folder), run.made.get(), run.kept.get(),
                run.offices.size() - run.made.get() - run.kept.get(), run.sheets.get(), findings);
    }

    private static boolean hasError(List<Finding> findings) {
        return findings.stream().anyMatch(finding -> finding.severity() == Severity.ERROR);
    }

    /** What the packs of all offices are made from. */
    private static String shared(List<InputFile> inputs, PackRoom room, boolean proof) {
        StringBuilder text = new StringBuilder(Compiler.VERSION).append(' ').append(proof).append(' ')
                .append(room.characters()).append('\n');
        inputs.stream().filter(file -> !file.path().contains("/offices/")).sorted(
                (a, b) -> a.path().compareTo(b.path())).forEach(file -> text.append(file.sha256()).append(' ')
                .append(file.path().substring(file.path().indexOf('/') + 1)).append('\n'));
        return text.toString();
    }

    /** One run over the chosen offices. */
    private static final class Run {
        private final PackRoom room;
        private final Path folder;
        private final Request request;
        private final String shared;
        private final List<InputFile> inputs;
        private final List<String> offices;
        private final ConcurrentSkipListSet<Finding> findings = new ConcurrentSkipListSet<>();
        private final AtomicInteger done = new AtomicInteger();
        private final AtomicInteger made = new AtomicInteger();
        private final AtomicInteger kept = new AtomicInteger();
        private final AtomicInteger sheets = new AtomicInteger();

        Run(PackRoom room, Path folder, Request request, String shared, List<InputFile> inputs,
                List<String> offices) {
            this.room = room;
            this.folder = folder;
            this.request = request;
            this.shared = shared;
            this.inputs = inputs.stream().filter(file -> file.path().contains("/offices/")).toList();
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
                String from = madeFrom(office);
                Path mark = folder.resolve(office).resolve(MADE_FROM);
                if (!request.again() && Files.exists(mark) && Files.readString(mark).equals(from)) {
                    kept.incrementAndGet();
                    return;
                }
                List<Finding> found = new ArrayList<>();
                SortedMap<String, byte[]> files = room.pack(office, found);
                findings.addAll(found);
                if (request.proof() || !hasError(found)) {
                    publish(office, files, from);
                }
            } catch (IOException failed) {
                throw new UncheckedIOException(failed);
            }
        }

        private void publish(String office, SortedMap<String, byte[]> files, String from) throws IOException {
            try (OutputFolder pack = OutputFolder.open(folder, office)) {
                for (var file : files.entrySet()) {
                    pack.write(file.getKey(), file.getValue());
                }
                pack.write(MADE_FROM, from.getBytes(StandardCharsets.UTF_8));
                pack.publish();
            }
            made.incrementAndGet();
            sheets.addAndGet((int) files.keySet().stream().filter(name -> name.endsWith(".pdf")).count());
        }

        private String madeFrom(String office) {
            StringBuilder text = new StringBuilder(shared);
            inputs.stream().filter(file -> file.path().endsWith("/offices/" + office + ".yaml")).forEach(file ->
                    text.append(file.sha256()).append(' ').append(file.path()
                            .substring(file.path().indexOf('/') + 1)).append('\n'));
            return Sha256.of(text.toString().getBytes(StandardCharsets.UTF_8)) + "\n";
        }
    }
}
