package org.fieldfold;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Optional;
import org.fieldfold.content.BaseLoader;
import org.fieldfold.content.KeptReadings;
import org.fieldfold.content.LoadedBase;
import org.fieldfold.kept.Kept;
import org.fieldfold.kept.Key;
import org.fieldfold.kept.Program;

/**
 * What a build takes from earlier ones, and what it leaves for later ones: first what was understood of the
 * base's files, then what was made of it. An issued edition is made of its content alone, whatever lies beside
 * it: it takes and leaves nothing.
 */
final class EarlierBuilds {
    private EarlierBuilds() {
    }

    /** What this build may take; nothing where it can't be told what the program is. */
    static Kept of(Compiler.Request request) {
        return request.anew() ? Kept.nothing() : Program.of(Compiler.class)
                .map(program -> Kept.in(request.kept(), program)).orElseGet(Kept::nothing);
    }

    /** Reads a base; files that are as they were when an earlier build read them are not read again. */
    static LoadedBase read(Path content, Kept kept) throws IOException {
        if (!kept.isKeeping() || mayBeIssued(content)) {
            return BaseLoader.load(content);
        }
        KeptReadings readings = readings(content, kept);
        LoadedBase loaded = readings.load(content);
        if (!readings.isAsWritten()) {
            kept.leave(key(content, kept), readings.bytes());
        }
        return loaded;
    }

    /** Asked before the base is read; where it cannot be told, the answer costs time only. */
    static boolean mayBeIssued(Path content) {
        return BaseLoader.year(content).map(year ->
                Files.exists(Ledgers.file(content, year), LinkOption.NOFOLLOW_LINKS)).orElse(true);
    }

    /** What earlier builds understood of a base. */
    static KeptReadings readings(Path content, Kept kept) {
        return kept.left(key(content, kept)).map(KeptReadings::new).orElseGet(KeptReadings::new);
    }

    private static Optional<Key> key(Path content, Kept kept) {
        return kept.key("readings", content.toAbsolutePath().normalize().toString());
    }
}
