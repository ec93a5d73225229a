package org.fieldfold;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.fieldfold.content.InputFile;
import org.fieldfold.kept.Kept;
import org.fieldfold.kept.Key;
import org.fieldfold.output.OutputFile;
import org.fieldfold.output.OutputFolder;
import org.fieldfold.output.Publication;
import org.fieldfold.output.Published;
import org.fieldfold.report.FileHashes;
import org.fieldfold.report.FitRow;
import org.fieldfold.source.Finding;

/**
 * What the last build in a folder was made of, told from the files of the content base alone: when they and the
 * program are the same, and what was published still stands, there is nothing to do.
 */
final class LastBuild {
    private static final String MANIFEST = "manifest.json";

    private final Compiler.Request request;
    private final ContentFiles content;
    private final FileHashes hashes;
    private final Kept kept;
    private final Optional<Key> key;

    private LastBuild(Compiler.Request request, ContentFiles content, FileHashes hashes, Kept kept) {
        this.request = request;
        this.content = content;
        this.hashes = hashes;
        this.kept = kept;
        this.key = kept.key("what came of a build",
                request.content().toAbsolutePath().normalize().toString(), request.asOf(), request.proof(),
                content.hashes(), content.others());
    }

    /**
     * What came of a build, but for where it is.
     *
     * @param manifest hash of what it says of itself
     * @param files of which it could have been told that they need not be made
     */
    private record Outcome(int year, String manifest, List<Finding> findings, List<FitRow> fit,
            List<String> languages, int files) {
    }

    /** Empty when everything is to be made, or when it can't be told what the program or the base is. */
    static Optional<LastBuild> of(Compiler.Request request, Kept kept) {
        if (!kept.isKeeping()) {
            return Optional.empty();
        }
        try {
            FileHashes hashes = kept.left(EarlierBuilds.key("hashes", request.content(), kept)).map(FileHashes::new)
                    .orElseGet(FileHashes::new);
            return Optional.of(new LastBuild(request, ContentFiles.in(request.content(), hashes), hashes, kept));
        } catch (IOException | UncheckedIOException | SecurityException unread) {
            return Optional.empty();
        }
    }

    /** Of the files of the base, which were looked at. */
    FileHashes hashes() {
        return hashes;
    }

    /** What it would come to, when there is nothing to do. */
    Optional<Compiler.Built> built() {
        return kept.recall(key, Outcome.class).flatMap(outcome -> published(kept, outcome.year())
                .filter(last -> isOf(last, outcome) && last.stands(request.out(), String.valueOf(outcome.year())))
                .map(last -> built(outcome, last)));
    }

    private static boolean isOf(Publication last, Outcome outcome) {
        return last.files().stream().anyMatch(file -> file.path().equals(MANIFEST)
                && file.sha256().equals(outcome.manifest()));
    }

    private Compiler.Built built(Outcome outcome, Publication last) {
        Path folder = request.out().resolve(String.valueOf(outcome.year()));
        return new Compiler.Built(Optional.of(folder), last.files().stream().map(Published::file).toList(),
                List.copyOf(outcome.findings()), List.copyOf(outcome.fit()),
                Compiler.whereToLook(folder, outcome.languages()), new Compiler.Work(0, outcome.files()), true);
    }

    /** The files of the last build of a year in this folder, as this program wrote them. */
    static Optional<Publication> published(Kept kept, int year) {
        return kept.recall(kept.key("last published", year), Publication.class);
    }

    /** Says what has been published, for the next build. */
    static void published(Kept kept, int year, OutputFolder folder) {
        kept.say(kept.key("last published", year), folder.published());
    }

    /** Says what came of a build, if it was of what was found. */
    void say(Kept of, List<InputFile> inputs, int year, Compiler.Built built, List<String> languages) {
        hashes.bytes().ifPresent(bytes -> of.leave(EarlierBuilds.key("hashes", request.content(), kept), bytes));
        Optional<OutputFile> manifest = built.outputs().stream().filter(file -> file.path().equals(MANIFEST))
                .findFirst();
        if (manifest.isPresent() && content.holds(inputs, request.content())) {
            of.say(key, new Outcome(year, manifest.get().sha256(), built.findings(),
                    built.fit(), languages,
                    built.work().made() + built.work().taken()));
        }
    }
}
