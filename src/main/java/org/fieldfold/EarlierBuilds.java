package org.fieldfold;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.fieldfold.check.KeptFindings;
import org.fieldfold.content.BaseLoader;
import org.fieldfold.content.KeptReadings;
import org.fieldfold.content.LoadedBase;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.kept.Kept;
import org.fieldfold.kept.Key;
import org.fieldfold.kept.Program;
import org.fieldfold.report.FileHashes;
import org.fieldfold.source.Finding;

/**
 * What a build takes from earlier ones, and what it leaves for later ones: first what was understood of the
 * base's files and what rules found, then what was made of it. An issued edition is made of its
 * content alone, whatever lies beside it: it takes and leaves nothing.
 */
final class EarlierBuilds {
    private EarlierBuilds() {
    }

    /** What this build may take; nothing where it can't be told what the program is. */
    static Kept of(Compiler.Request request) {
        return request.anew() ? Kept.nothing() : Program.of(Compiler.class)
                .map(program -> Kept.in(request.kept(), program)).orElseGet(Kept::nothing);
    }

    /** What those who only look may take, and leave, where builds have kept something; nothing where none have. */
    static Kept beside(Path out) {
        Path kept = new Compiler.Request(out, out, Optional.empty(), false, false).kept();
        return !Files.isDirectory(kept, LinkOption.NOFOLLOW_LINKS) ? Kept.nothing() : Program.of(Compiler.class)
                .map(program -> Kept.in(kept, program)).orElseGet(Kept::nothing);
    }

    /**
     * Reads a base; files that are as they were when an earlier build read them are not read again.
     *
     * @param hashes of files that were looked at already
     */
    static LoadedBase read(Path content, Kept kept, FileHashes hashes) throws IOException {
        if (!kept.isKeeping() || mayBeIssued(content)) {
            return BaseLoader.load(content);
        }
        KeptReadings readings = readings(content, kept);
        LoadedBase loaded = readings.load(content, hashes);
        if (!readings.isAsWritten()) {
            kept.leave(key("readings", content, kept), readings.bytes());
        }
        return loaded;
    }

    /** Asked before the base is read; where it cannot be told, the answer costs time only. */
    static boolean mayBeIssued(Path content) {
        return Ledgers.mayBeIn(content) && BaseLoader.year(content).map(year ->
                Files.exists(Ledgers.file(content, year), LinkOption.NOFOLLOW_LINKS)).orElse(true);
    }

    /** What earlier builds understood of a base. */
    static KeptReadings readings(Path content, Kept kept) {
        return kept.left(key("readings", content, kept)).map(KeptReadings::new).orElseGet(KeptReadings::new);
    }

    /** Holds a base to the rules; a rule is not put again where all that it read is as an earlier build read it. */
    static Judging judging(Path content, Kept kept) {
        return !kept.isKeeping() || mayBeIssued(content) ? Judging.ANEW : new Judging() {
            @Override
            public List<Finding> rules(LoadedBase loaded, ContentBase base, LocalDate asOf) {
                Optional<Key> key = key("findings as of " + asOf, content, kept);
                KeptFindings findings = kept.left(key).map(KeptFindings::new).orElseGet(KeptFindings::new);
                List<Finding> found = findings.check(base, asOf, KeptJudging.hashes(loaded));
                if (!findings.asked().isEmpty()) {
                    findings.bytes().ifPresent(bytes -> kept.leave(key, bytes));
                }
                return found;
            }
        };
    }

    static Optional<Key> key(String what, Path content, Kept kept) {
        return kept.key(what, content.toAbsolutePath().normalize().toString());
    }
}
