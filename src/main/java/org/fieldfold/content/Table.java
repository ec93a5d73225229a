package org.fieldfold.content;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.report.Csv;

/** A table of the base, read from its files, for a spreadsheet and back. */
final class Table {
    private final ContentBase base;
    private final TableKind kind;
    private final TableFiles files;

    Table(Path content, ContentBase base, TableKind kind) {
        this.base = base;
        this.kind = kind;
        this.files = new TableFiles(content);
    }

    ContentBase base() {
        return base;
    }

    TableKind kind() {
        return kind;
    }

    /** Every record of it, in the order of their files. */
    List<TableRow> rows() {
        List<TableRow> rows = new ArrayList<>();
        if (kind == TableKind.MATERIALS) {
            base.materials().keySet().forEach(id ->
                    rows.add(new TableRow(kind, "active-ingredients.yaml", List.of(id))));
            return rows;
        }
        base.pests().forEach((entry, pest) -> {
            String file = "pests/" + entry + ".yaml";
            if (kind == TableKind.THRESHOLDS) {
                pest.value().thresholds().forEach(threshold ->
                        rows.add(new TableRow(kind, file, List.of(entry, threshold.id()))));
            } else {
                pest.value().monitoring().forEach(look ->
                        rows.add(new TableRow(kind, file, List.of(entry, look.id()))));
            }
        });
        return rows;
    }

    TableFiles files() {
        return files;
    }

    /** The whole table as a spreadsheet reads it; cells that could act are made harmless. */
    String csv() throws IOException, EditRefused {
        List<List<String>> lines = new ArrayList<>();
        List<String> head = new ArrayList<>(kind.keys());
        kind.columns().forEach(column -> head.add(column.name()));
        lines.add(head);
        for (TableRow row : rows()) {
            InPlace text = files.text(row.file());
            List<String> cells = new ArrayList<>(row.keys());
            kind.columns().forEach(column -> cells.add(row.value(column, text).orElse("")));
            lines.add(cells);
        }
        return Csv.write(lines);
    }
}
