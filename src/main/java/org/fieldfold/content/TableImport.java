package org.fieldfold.content;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.fieldfold.entry.Monitoring;
import org.fieldfold.report.Csv;
import org.fieldfold.report.CsvReading;
import org.fieldfold.source.SourceFile;
import org.fieldfold.source.Span;

/** Brings a table back from a spreadsheet: what differs goes into the files, what is not understood does not. */
final class TableImport {
    private final Table table;
    private final CsvReading csv;
    private final Map<Integer, TableKind.Column> columns = new LinkedHashMap<>();
    private final Map<String, Integer> keyColumns = new LinkedHashMap<>();
    private final List<String> changes = new ArrayList<>();
    private final List<String> refusals = new ArrayList<>();
    private final Set<String> touched = new HashSet<>();

    private TableImport(Table table, CsvReading csv) {
        this.table = table;
        this.csv = csv;
    }

    /** @param csv the table as it was read */
    static TableEdits edits(Table table, CsvReading csv) throws IOException, EditRefused {
        TableImport reading = new TableImport(table, csv);
        reading.head();
        if (reading.refusals.isEmpty()) {
            reading.body();
        }
        SortedMap<String, byte[]> files = new TreeMap<>();
        for (String file : reading.touched) {
            files.put(file, table.text(file).bytes());
        }
        return new TableEdits(reading.changes, reading.refusals,
                reading.refusals.isEmpty() ? files : new TreeMap<>());
    }

    private void head() {
        if (csv.rows().isEmpty()) {
            refusals.add("expected a first row of column names, found an empty table");
            return;
        }
        List<String> names = csv.rows().get(0).cells();
        for (int i = 0; i < names.size(); i++) {
            String name = names.get(i).strip();
            Optional<TableKind.Column> column = table.kind().column(name);
            if (column.isPresent() && !columns.containsValue(column.get())) {
                columns.put(i, column.get());
            } else if (table.kind().keys().contains(name) && !keyColumns.containsKey(name)) {
                keyColumns.put(name, i);
            } else if (!name.isEmpty()) {
                List<String> known = new ArrayList<>(table.kind().keys());
                table.kind().columns().forEach(one -> known.add(one.name()));
                refusals.add("row 1, column " + (i + 1) + ": expected each of " + String.join(", ", known)
                        + " at most once, found '" + name + "'");
            }
        }
        table.kind().keys().stream().filter(key -> !keyColumns.containsKey(key)).forEach(key ->
                refusals.add("row 1: expected the column '" + key + "', found none"));
    }

    private void body() throws IOException, EditRefused {
        Map<List<String>, TableRow> known = new LinkedHashMap<>();
        table.rows().forEach(row -> known.put(row.keys(), row));
        Set<List<String>> seen = new HashSet<>();
        int width = csv.rows().get(0).cells().size();
        for (CsvReading.Row line : csv.rows().subList(1, csv.rows().size())) {
            if (line.cells().size() != width) {
                refuse(line, "expected " + width + " cells, found " + line.cells().size());
                continue;
            }
            List<String> keys = table.kind().keys().stream()
                    .map(key -> Csv.meant(line.cells().get(keyColumns.get(key)).strip())).toList();
            TableRow row = known.get(keys);
            if (row == null) {
                refuse(line, "column " + table.kind().keys().get(table.kind().keys().size() - 1)
                        + ": expected one of the " + table.kind().word() + " of the base, found '"
                        + String.join("/", keys) + "'; new ones are written in their file");
            } else if (!seen.add(keys)) {
                refuse(line, "expected each of the " + table.kind().word() + " once, found '" + row.shown()
                        + "' again");
            } else {
                for (Map.Entry<Integer, TableKind.Column> column : columns.entrySet()) {
                    cell(line, row, column.getValue(), line.cells().get(column.getKey()));
                }
            }
        }
    }

    private void refuse(CsvReading.Row line, String why) {
        refusals.add("row " + line.line() + ", " + why);
    }

    private void cell(CsvReading.Row line, TableRow row, TableKind.Column column,
            String cell) throws IOException, EditRefused {
        InPlace text = table.text(row.file());
        Optional<String> old = row.value(column, text);
        Shape.Field field = table.kind().field(column);
        String value = meant(cell, field.shape());
        if (value.equals(old.orElse("")) || isSameNumber(value, old.orElse(""))) {
            return;
        }
        Optional<String> wrong = wrong(row, column, field, value);
        if (wrong.isPresent()) {
            refuse(line, "column " + column.name() + ": " + wrong.get());
            return;
        }
        try {
            Object[] path = row.path(column, text);
            table.keep(row.file(), value.isEmpty() ? text.remove(path) : text.put(value, path));
            touched.add(row.file());
            changes.add(row.file() + ": " + row.shown() + ", " + column.name() + ": "
                    + old.map(was -> was.isEmpty() ? "''" : was).orElse("nothing") + " -> "
                    + (value.isEmpty() ? "nothing" : value) + " (row " + line.line() + ")");
        } catch (EditRefused refused) {
            refuse(line, "column " + column.name() + ": " + refused.getMessage());
        }
    }

    /** What a cell stands for: line ends as in the files, a decimal comma where commas divide no cells. */
    private String meant(String cell, Shape shape) {
        String value = Csv.meant(cell.replace("\r\n", "\n").replace('\r', '\n')).strip();
        boolean number = shape == Shape.Plain.NUMBER || shape == Shape.Plain.INTEGER;
        return number && csv.separator() != ',' && value.matches("[0-9]+,[0-9]+") ? value.replace(',', '.')
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
        OptionalInt unseen = UnseenCharacters.next(value, 0);
        if (unseen.isPresent()) {
            return Optional.of("expected text, found " + UnseenCharacters.named(value.codePointAt(
                    unseen.getAsInt())));
        }
        SourceFile source = new SourceFile(row.file(), value);
        YamlNode.Scalar scalar = new YamlNode.Scalar(value, YamlNode.Style.PLAIN,
                new Span(source, 0, value.length()));
        ScalarReading.Reading reading = field.shape() instanceof Shape.Words words
                ? ScalarReading.word(words, scalar)
                : ScalarReading.read((Shape.Plain) field.shape(), scalar, field.range());
        if (reading.finding().isPresent()) {
            return reading.finding().map(finding -> finding.message());
        }
        Collection<String> ids = references(row, column.name());
        return ids.isEmpty() || ids.contains(value) ? Optional.empty()
                : Optional.of("expected one of " + String.join(", ", ids) + ", found '" + value + "'");
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
