package org.fieldfold.content;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.fieldfold.report.Csv;
import org.fieldfold.report.CsvReading;
import org.fieldfold.source.Finding;
import org.fieldfold.source.SourceFile;
import org.fieldfold.source.Span;
import org.fieldfold.translation.Matching;

/**
 * Brings a table of translations back: what differs goes into the files of the language with the hash of the
 * base text that stood beside it, what is not understood does not.
 */
final class TranslationImport {
    private final TranslationTable table;
    private final CsvReading csv;
    private final Map<String, Integer> columns = new LinkedHashMap<>();
    private final List<String> changes = new ArrayList<>();
    private final List<String> refusals = new ArrayList<>();
    private final SortedMap<String, byte[]> files = new TreeMap<>();

    private TranslationImport(TranslationTable table, CsvReading csv) {
        this.table = table;
        this.csv = csv;
    }

    static TableEdits edits(TranslationTable table, CsvReading csv) throws IOException, EditRefused {
        TranslationImport reading = new TranslationImport(table, csv);
        reading.head();
        if (reading.refusals.isEmpty()) {
            reading.body();
        }
        return new TableEdits(reading.changes, reading.refusals,
                reading.refusals.isEmpty() ? reading.files : new TreeMap<>());
    }

    private void head() {
        List<String> names = csv.rows().isEmpty() ? List.of() : csv.rows().get(0).cells();
        for (int i = 0; i < names.size(); i++) {
            String name = names.get(i).strip();
            if (!name.isEmpty() && (!TranslationTable.COLUMNS.contains(name)
                    || columns.putIfAbsent(name, i) != null)) {
                refusals.add("row 1, column " + (i + 1) + ": expected each of "
                        + String.join(", ", TranslationTable.COLUMNS) + " at most once, found '" + name + "'");
            }
        }
        TranslationTable.COLUMNS.stream().filter(name -> !name.equals(TranslationTable.STATE))
                .filter(name -> !columns.containsKey(name)).forEach(name ->
                refusals.add("row 1: expected the column '" + name + "', found none"));
    }

    private void body() throws IOException, EditRefused {
        Map<List<String>, TranslationTable.Row> known = new LinkedHashMap<>();
        table.rows().forEach(row -> known.put(row.key(), row));
        Set<List<String>> seen = new HashSet<>();
        int width = csv.rows().get(0).cells().size();
        for (CsvReading.Row line : csv.rows().subList(1, csv.rows().size())) {
            if (line.cells().size() != width) {
                refuse(line, "expected " + width + " cells, found " + line.cells().size());
                continue;
            }
            List<String> key = List.of(cell(line, TranslationTable.FILE), cell(line, TranslationTable.PATH));
            TranslationTable.Row row = known.get(key);
            if (row == null) {
                refuse(line, TranslationTable.PATH, "expected a text of the base that has its place in language "
                        + table.language() + ", found '" + String.join(": ", key)
                        + "'; export the table again");
            } else if (!seen.add(key)) {
                refuse(line, "expected each text once, found '" + String.join(": ", key) + "' again");
            } else {
                row(line, row);
            }
        }
    }

    private void refuse(CsvReading.Row line, String column, String why) {
        refuse(line, "column " + column + ": " + why);
    }

    private void refuse(CsvReading.Row line, String why) {
        refusals.add("row " + line.line() + ", " + why);
    }

    private String cell(CsvReading.Row line, String column) {
        return columns.containsKey(column) ? Csv.meant(line.cells().get(columns.get(column))
                .replace("\r\n", "\n").replace('\r', '\n')).strip() : "";
    }

    private void row(CsvReading.Row line, TranslationTable.Row row) throws IOException, EditRefused {
        String now = row.pair().text().words().strip();
        String was = row.translation();
        String is = cell(line, TranslationTable.TRANSLATION);
        String state = cell(line, TranslationTable.STATE).toLowerCase(Locale.ROOT);
        boolean confirmed = row.pair().state() == Matching.State.DUE && state.equals("current");
        if (!spaced(cell(line, TranslationTable.BASE)).equals(spaced(now))) {
            refuse(line, TranslationTable.BASE, "expected the text as it is now, “" + ScalarReading.cut(
                    spaced(now)) + "”, found another; export the table again");
        } else if (!state.isEmpty() && !state.equals(row.state()) && is.equals(was) && !confirmed) {
            refuse(line, TranslationTable.STATE, "expected '" + row.state() + "'"
                    + (row.pair().state() == Matching.State.DUE ? ", or 'current' once it is looked at" : "")
                    + ", found '" + state + "'");
        } else if (!is.equals(was) || confirmed) {
            Optional<String> wrong = wrong(row, is);
            if (wrong.isPresent()) {
                refuse(line, TranslationTable.TRANSLATION, wrong.get());
            } else {
                write(line, row, was, is);
            }
        }
    }

    private void write(CsvReading.Row line, TranslationTable.Row row, String was,
            String is) throws IOException {
        try {
            InPlace text = table.text(row).set(row.pair().text().hash(), row.place(), "of");
            text = is.equals(was) ? text : text.put(is, row.place(), "text");
            table.keep(row, text);
            files.put(table.path(row), text.bytes());
            changes.add(table.path(row) + ": " + row.place() + ": " + (is.equals(was) ? "looked at, current"
                    : (was.isEmpty() ? "nothing" : shown(was)) + " -> " + shown(is)) + " (row " + line.line()
                    + ")");
        } catch (EditRefused refused) {
            refuse(line, TranslationTable.TRANSLATION, refused.getMessage());
        }
    }

    private static String shown(String words) {
        return ScalarReading.cut(spaced(words));
    }

    private static String spaced(String words) {
        return words.strip().replaceAll("\\s+", " ");
    }

    /** Why a translation cannot stand in its file. */
    private static Optional<String> wrong(TranslationTable.Row row, String value) {
        if (row.borrowed()) {
            return Optional.of("expected a text with a translation of its own, found that it shares the one of '"
                    + row.place() + "', which has the same words; change it there");
        }
        if (value.isEmpty()) {
            return Optional.of("expected a translation, found none; one is taken out in its file");
        }
        if (row.pair().text().oneLine() && value.indexOf('\n') >= 0) {
            return Optional.of("expected words on one line, found several lines");
        }
        List<Finding> findings = new ArrayList<>();
        YamlNode.Scalar scalar = new YamlNode.Scalar(value, YamlNode.Style.QUOTED,
                new Span(new SourceFile(row.file(), value), 0, value.length()));
        TextReading.slip(scalar).ifPresent(findings::add);
        new TextReading().prose(scalar, findings);
        return findings.stream().map(Finding::message).findFirst();
    }
}
