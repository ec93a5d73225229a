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
        List<FileReading> readings = listed.files().parallelStream().map(read).toList();
        Assembly assembly = new Assembly(readings);
        Optional<ContentBase> base = assembly.base();
        List<Finding> findings = new ArrayList<>(listed.findings());
        readings.forEach(reading -> findings.addAll(reading.findings()));
        findings.addAll(assembly.findings());
        if (readings.stream().noneMatch(reading -> reading.file().kind() == FileKind.EDITION)) {
            findings.add(FormRule.MISSING_FILE.at(
                    Span.startOf(new SourceFile(listed.shown("edition.yaml"), "")),
                    "expected the file edition.yaml in the content base, found none",
                    "add it, or point --content at the folder that has it"));
        }
        base.ifPresent(known -> findings.addAll(new References(known, assembly).findings()));
        return new LoadedBase(base, findings.stream().distinct().sorted().toList(),
                readings.stream().map(FileReading::input)
                        .sorted(java.util.Comparator.comparing(InputFile::path)).toList());
    }
}
