package org.fieldfold.content;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Edition;
import org.fieldfold.source.Finding;
import org.fieldfold.source.SourceFile;
import org.fieldfold.source.Span;

/**
 * Reads a content base. Whatever is in its files, it never throws for it: what is wrong becomes a finding.
 */
public final class BaseLoader {
    /** Of all files together: each takes some 200 bytes of memory. Twice what a region of 2,600 entries has. */
    static final long MOST_VALUES = 2_000_000;
    /** So many files are read at once: what the last of them hold may lie beyond the limit. */
    private static final int AT_ONCE = 8;

    private BaseLoader() {
    }

    /**
     * Reads the whole base, going on after each problem.
     *
     * @param folder with {@code edition.yaml} in it
     * @throws IOException when the folder itself is not there or cannot be listed
     */
    public static LoadedBase load(Path folder) throws IOException {
        return load(folder, FileReading::read);
    }

    /** The year of a base's edition, from its own file alone; empty when that cannot be understood. */
    public static Optional<Integer> year(Path folder) {
        Path file = folder.resolve("edition.yaml");
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            return Optional.empty();
        }
        FileReading reading = FileReading.read(new ContentFile("edition.yaml", file, FileKind.EDITION,
                "edition"));
        return reading.records().values().stream().findFirst()
                .map(edition -> ((Edition) edition.value()).year());
    }

    /** @param read makes a reading of one file; several threads call it */
    static LoadedBase load(Path folder, Function<ContentFile, FileReading> read) throws IOException {
        Folder listed = new Folder(folder);
        List<FileReading> readings = read(listed.files(), read);
        Assembly assembly = new Assembly(readings);
        Optional<ContentBase> base = assembly.base();
        List<Finding> findings = new ArrayList<>(listed.findings());
        readings.forEach(reading -> findings.addAll(reading.findings()));
        findings.addAll(assembly.findings());
        if (listed.files().stream().noneMatch(file -> file.kind() == FileKind.EDITION)) {
            findings.add(FormRule.MISSING_FILE.at(
                    Span.startOf(new SourceFile(listed.shown("edition.yaml"), "")),
                    "expected the file edition.yaml in the content base, found none",
                    "add it, or point --content at the folder that has it"));
        }
        base.ifPresent(known -> findings.addAll(new References(known, assembly).findings()));
        return new LoadedBase(base, FewFindings.ofAll(findings.stream().distinct().sorted().toList()),
                readings.stream().map(FileReading::input)
                        .sorted(java.util.Comparator.comparing(InputFile::path)).toList());
    }

    /** In order, so that the same files are read whoever reads them first; beyond the limit none is. */
    private static List<FileReading> read(List<ContentFile> files, Function<ContentFile, FileReading> read) {
        int most = FewFindings.ofEach(files.size());
        List<FileReading> readings = new ArrayList<>();
        long values = 0;
        for (int from = 0; from < files.size() && values <= MOST_VALUES; from += AT_ONCE) {
            for (FileReading reading : files.subList(from, Math.min(files.size(), from + AT_ONCE)).parallelStream()
                    .map(read).map(each -> each.first(most)).toList()) {
                boolean before = values <= MOST_VALUES;
                values += reading.values();
                if (values <= MOST_VALUES) {
                    readings.add(reading);
                } else if (before) {
                    readings.add(reading.refused(FormRule.TOO_MANY_FILES, "expected at most " + MOST_VALUES
                            + " values in all files together, found more", "split the content base; this file and "
                            + "those behind it are not read"));
                }
            }
        }
        return readings;
    }
}
