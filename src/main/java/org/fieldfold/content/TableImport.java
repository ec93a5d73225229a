package org.fieldfold.content;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fieldfold.entry.Monitoring;
import org.fieldfold.report.CsvReading;
import org.fieldfold.source.SourceFile;
import org.fieldfold.source.Span;

/** Brings a table back from a spreadsheet: what differs goes into the files, what is not understood does not. */
final class TableImport {
    /** From so many ids on they are not listed. */
    private static final int MANY = 20;

    private final Table table;
    private final ImportedRows rows;
    private final boolean decimalCommas;

    private TableImport(Table table, ImportedRows rows, boolean decimalCommas) {
        this.table = table;
        this.rows = rows;
        this.decimalCommas = decimalCommas;
    }

    /** @param csv the table as it was read */
    static TableEdits edits(Table table, CsvReading csv) throws IOException, EditRefused {
        TableKind kind = table.kind();
        List<String> names = new ArrayList<>(kind.keys());
        kind.columns().forEach(column -> names.add(column.name()));
        ImportedRows rows = new ImportedRows(csv, names, kind.keys());
        Map<List<String>, TableRow> known = new LinkedHashMap<>();
        table.rows().forEach(row -> known.put(row.keys(), row));
        TableImport reading = new TableImport(table, rows, csv.separator() != ',');
        rows.each(kind.keys(), known, key -> "expected one of the " + kind.word() + " of the base, found '"
                + String.join("/", key) + "'; new ones are written in their file",
                key -> "expected each of the " + kind.word() + " once, found '" + known.get(key).shown()
                        + "' again", reading::row);
        return rows.edits(table.files());
    }

    private void row(CsvReading.Row line, TableRow row) throws IOException, EditRefused {
        for (String name : rows.columns()) {
            Optional<TableKind.Column> column = table.kind().column(name);
            if (column.isPresent()) {
                cell(line, row, column.get(), rows.cell(line, name));
            }
        }
    }

    private void cell(CsvReading.Row line, TableRow row, TableKind.Column column,
            String cell) throws IOException, EditRefused {
        InPlace text = table.files().text(row.file());
        Optional<String> old = row.value(column, text);
        Shape.Field field = table.kind().field(column);
        String value = meant(cell, field.shape());
        if (value.equals(old.orElse("")) || isSameNumber(value, old.orElse(""))) {
            return;
        }
        Optional<String> wrong = wrong(row, column, field, value);
        if (wrong.isPresent()) {
            rows.refuse(line, column.name(), wrong.get());
            return;
        }
        try {
            Object[] path = row.path(column, text);
            table.files().keep(row.file(), value.isEmpty() ? text.remove(path) : text.put(value, path), line,
                    column.name(), path);
            rows.change(line, column.name(), row.file() + ": " + row.shown() + ", " + column.name() + ": "
                    + old.map(was -> was.isEmpty() ? "''" : was).orElse("nothing") + " -> "
                    + (value.isEmpty() ? "nothing" : value));
        } catch (EditRefused refused) {
            rows.refuse(line, column.name(), refused.getMessage());
        }
    }

    /** What a value stands for: a decimal comma where commas divide no cells, a truth in any case. */
    private String meant(String value, Shape shape) {
        boolean number = shape == Shape.Plain.NUMBER || shape == Shape.Plain.INTEGER;
        return number && decimalCommas && value.matches("[0-9]+,[0-9]+") ? value.replace(',', '.')
                : shape == Shape.Plain.TRUTH && value.matches("(?i)true|false")
                        ? String.valueOf(value.matches("(?i)true")) : value;
    }

    private static boolean isSameNumber(String one, String other) {
        String number = "[0-9]+([.][0-9]+)?";
        return one.matches(number) && other.matches(number)
                && new BigDecimal(one).compareTo(new BigDecimal(other)) == 0;
    }

    /** Why a value cannot stand in a column. */
    private Optional<String> wrong(TableRow row, TableKind.Column column, Shape.Field field, String value) {
        if (value.isEmpty()) {
            boolean inside = column.path().size() > 1;
            return field.presence() == Shape.Presence.REQUIRED ? Optional.of("expected a value, found none"
                    + (inside ? "; take both ends out in the file" : "")) : Optional.empty();
        }
        Optional<String> unseen = ImportedRows.unseen(value);
        if (unseen.isPresent()) {
            return unseen;
        }
        SourceFile source = new SourceFile(row.file(), value);
        YamlNode.Scalar scalar = new YamlNode.Scalar(value, YamlNode.Style.PLAIN,
                new Span(source, 0, value.length()));
        ScalarReading.Reading reading = field.shape() instanceof Shape.Words words
                ? ScalarReading.word(words, scalar)
                : ScalarReading.read((Shape.Plain) field.shape(), scalar, field.range());
        if (reading.finding().isPresent()) {
            return reading.finding().map(finding -> finding.message() + (field.shape() == Shape.Plain.DATE
                    ? "; let the spreadsheet show the column as year-month-day" : ""));
        }
        Collection<String> ids = references(row, column.name());
        return ids.isEmpty() || ids.contains(value) ? Optional.empty()
                : Optional.of("expected " + (ids.size() > MANY ? "the id of a " + column.name() + " of the base"
                        : "one of " + String.join(", ", ids)) + ", found '" + value + "'"
                        + Nearest.to(value, ids).map(near -> "; did you mean '" + near + "'?").orElse(""));
    }

    private Collection<String> references(TableRow row, String column) {
        return switch (column) {
            case "crop" -> table.base().crops().keySet();
            case "source" -> table.base().sources().keySet();
            case "monitoring" -> table.base().pests().get(row.keys().get(0)).value().monitoring().stream()
                    .map(Monitoring::id).toList();
            default -> List.of();
        };
    }
}
