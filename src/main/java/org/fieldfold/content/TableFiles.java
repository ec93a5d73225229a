package org.fieldfold.content;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.fieldfold.report.CsvReading;
import org.fieldfold.source.Finding;

/**
 * The files that a table is about: as they are, and as its cells change them. What was changed is read again as any
 * file of a base is read; what is found then, and was not before, is refused of the cell that brought it.
 */
final class TableFiles {
    /**
     * What a cell changed.
     *
     * @param path of the value in its file
     */
    private record Cell(CsvReading.Row row, String column, List<Object> path) {
    }

    /** A finding by the value that it is about, which stays where it is in the tree when the text moves. */
    private record Slip(List<Object> path, String message) {
        static Slip of(Finding finding, InPlace text) {
            return new Slip(text.path(finding.span().start()), finding.message());
        }
    }

    private final Path content;
    private final Map<String, InPlace> before = new HashMap<>();
    private final Map<String, InPlace> now = new HashMap<>();
    private final SortedMap<String, List<Cell>> cells = new TreeMap<>();

    TableFiles(Path content) {
        this.content = content;
    }

    /** The text of a file, as it is or as it was changed last. */
    InPlace text(String file) throws IOException, EditRefused {
        if (!now.containsKey(file)) {
            before.put(file, InPlace.of(file, Files.readAllBytes(content.resolve(file))));
            now.put(file, before.get(file));
        }
        return now.get(file);
    }

    /**
     * Keeps what a cell made of a file.
     *
     * @param path of the value that it changed
     */
    void keep(String file, InPlace text, CsvReading.Row row, String column, Object... path) {
        now.put(file, text);
        cells.computeIfAbsent(file, first -> new ArrayList<>()).add(new Cell(row, column, text.resolved(path)));
    }

    /** The bytes of each file that was changed. */
    SortedMap<String, byte[]> changed() {
        SortedMap<String, byte[]> changed = new TreeMap<>();
        cells.keySet().forEach(file -> changed.put(file, now.get(file).bytes()));
        return changed;
    }

    /** Refuses what would be a finding in a file and is none yet. */
    void judge(ImportedRows rows) throws IOException {
        if (cells.isEmpty()) {
            return;
        }
        List<ContentFile> listed = new Folder(content).files();
        References.Target entries = References.linked(listed);
        for (String path : cells.keySet()) {
            ContentFile file = listed.stream().filter(one -> one.file().equals(content.resolve(path))).findFirst()
                    .orElseThrow(() -> new NoSuchFileException(path));
            List<Finding> findings = findings(file, now.get(path), entries);
            if (!findings.isEmpty()) {
                List<Slip> known = new ArrayList<>();
                findings(file, before.get(path), entries).forEach(old -> known.add(Slip.of(old, before.get(path))));
                findings.removeIf(found -> known.remove(Slip.of(found, now.get(path))));
                findings.forEach(found -> refuse(path, found, rows));
            }
        }
    }

    private static List<Finding> findings(ContentFile file, InPlace text, References.Target entries) {
        FileReading reading = FileReading.held(file, text.bytes(), FileReading::of);
        List<Finding> findings = new ArrayList<>(reading.findings());
        reading.links().forEach(link -> entries.missing(link.place(), link.entry()).ifPresent(findings::add));
        return new ArrayList<>(findings.stream().distinct().sorted().toList());
    }

    /** It is laid to the cell that changed the value it is about or, of no one value, to the nearest. */
    private void refuse(String file, Finding found, ImportedRows rows) {
        List<Object> at = now.get(file).path(found.span().start());
        int near = cells.get(file).stream().mapToInt(cell -> common(cell.path(), at)).max().orElseThrow();
        List<Cell> nearest = cells.get(file).stream().filter(cell -> common(cell.path(), at) == near).toList();
        String why = found.message() + (found.hint().isEmpty() ? "" : "; " + found.hint());
        if (nearest.stream().map(cell -> cell.row().line()).distinct().count() == 1) {
            rows.refuse(nearest.get(0).row(), nearest.stream().map(Cell::column).toList(), why);
        } else {
            rows.refuse(file + " with these changes, line " + found.span().line() + ": " + why);
        }
    }

    private static int common(List<Object> one, List<Object> other) {
        int common = 0;
        while (common < Math.min(one.size(), other.size()) && one.get(common).equals(other.get(common))) {
            common++;
        }
        return common;
    }
}
