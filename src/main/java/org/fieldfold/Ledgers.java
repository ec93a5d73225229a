package org.fieldfold;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.fieldfold.edition.Ledger;
import org.fieldfold.source.Finding;
import org.fieldfold.source.SourceFile;
import org.fieldfold.source.Span;

/**
 * The ledgers of a content base, by year, and what is wrong with them.
 *
 * @param folder where they lie
 */
record Ledgers(Path folder, SortedMap<Integer, Ledger> byYear, List<Finding> findings) {
    private static final String FOLDER = "issued";
    private static final int LARGEST = 32 << 20;

    Ledgers {
        byYear = Collections.unmodifiableSortedMap(byYear);
        findings = List.copyOf(findings);
    }

    /** Reads {@code issued/<year>.json} of a content base. A damaged ledger is a finding and is not used. */
    static Ledgers in(Path content) throws IOException {
        return of(content, files(content));
    }

    /** The files of ledgers with their bytes; without them where it is none that may be read. */
    static SortedMap<Path, Optional<byte[]>> files(Path content) throws IOException {
        Path folder = content.resolve(FOLDER);
        SortedMap<Path, Optional<byte[]>> found = new TreeMap<>();
        if (Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
            try (DirectoryStream<Path> files =
                    Files.newDirectoryStream(folder, "[0-9][0-9][0-9][0-9].json")) {
                for (Path file : files) {
                    found.put(file, Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
                            && Files.size(file) <= LARGEST ? Optional.of(Files.readAllBytes(file))
                            : Optional.empty());
                }
            }
        }
        return found;
    }

    /** @param files of a content base, as {@link #files} found them */
    static Ledgers of(Path content, SortedMap<Path, Optional<byte[]>> files) {
        Path folder = content.resolve("issued");
        SortedMap<Integer, Ledger> byYear = new TreeMap<>();
        List<Finding> findings = new ArrayList<>();
        files.forEach((file, bytes) -> read(file, bytes, byYear, findings));
        chain(folder, byYear, findings);
        return new Ledgers(folder, byYear, findings.stream().sorted().toList());
    }

    private static void read(Path file, Optional<byte[]> bytes, SortedMap<Integer, Ledger> byYear,
            List<Finding> findings) {
        if (bytes.isEmpty()) {
            findings.add(altered(file, "expected a ledger's file, found a link or a file of another size",
                    "take it from version control again"));
            return;
        }
        Optional<Ledger.Read> read = Ledger.read(new String(bytes.get(), StandardCharsets.UTF_8));
        String year = file.getFileName().toString().replace(".json", "");
        if (read.isEmpty() || !String.valueOf(read.get().ledger().year()).equals(year)) {
            findings.add(altered(file, "expected the ledger of edition " + year + ", found none",
                    "take it from version control again"));
        } else if (!read.get().sound()) {
            findings.add(altered(file, "expected a ledger as it was written on "
                    + read.get().ledger().issuedOn() + ", found that it was changed since: its seal is not "
                    + "the hash of what it says", "take it from version control again"));
        } else {
            byYear.put(read.get().ledger().year(), read.get().ledger());
        }
    }

    /** Each ledger repeats the seal of the one before it: an old one that was sealed anew is found so. */
    private static void chain(Path folder, SortedMap<Integer, Ledger> byYear, List<Finding> findings) {
        byYear.values().forEach(ledger -> ledger.follows().ifPresent(before -> {
            Ledger known = byYear.get(before.year());
            if (known != null && !known.seal().equals(before.seal())) {
                findings.add(altered(folder.resolve(before.year() + ".json"), "expected the ledger that the "
                        + "one of " + ledger.year() + " names, with the seal " + brief(before.seal())
                        + ", found one with the seal " + brief(known.seal()),
                        "take it from version control again"));
            }
        }));
    }

    private static Finding altered(Path file, String message, String hint) {
        Path base = file.toAbsolutePath().normalize();
        String shown = base.subpath(Math.max(0, base.getNameCount() - 3), base.getNameCount()).toString()
                .replace('\\', '/');
        return Finding.error(Span.startOf(new SourceFile(shown, "")), "ledger-altered", message, hint);
    }

    /** As much of a seal as people compare by eye. */
    static String brief(String seal) {
        return seal.substring(0, Math.min(12, seal.length()));
    }

    Optional<Ledger> of(int year) {
        return Optional.ofNullable(byYear.get(year));
    }

    /** The last edition issued before a year. */
    Optional<Ledger> before(int year) {
        SortedMap<Integer, Ledger> earlier = byYear.headMap(year);
        return earlier.isEmpty() ? Optional.empty() : Optional.of(earlier.get(earlier.lastKey()));
    }

    Path file(int year) {
        return folder.resolve(year + ".json");
    }

    /** Whether a content base has a place for ledgers. */
    static boolean mayBeIn(Path content) {
        return Files.exists(content.resolve(FOLDER), LinkOption.NOFOLLOW_LINKS);
    }

    /** Where the ledger of a year lies in a content base, if there is one. */
    static Path file(Path content, int year) {
        return content.resolve(FOLDER).resolve(year + ".json");
    }
}
