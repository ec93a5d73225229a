package org.fieldfold.content;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.fieldfold.report.Csv;
import org.fieldfold.report.CsvReading;

/**
 * A table that comes back: its columns by name, its rows each as wide as the first and each once, what it would
 * change and what of it was refused, with row and column.
 */
final class ImportedRows {
    /** Numbers of rows that are named one by one. */
    private static final int FEW = 5;

    private final CsvReading csv;
    private final Map<String, Integer> columns = new LinkedHashMap<>();
    /** What would change, by row and column. */
    private final Map<List<Object>, String> changes = new LinkedHashMap<>();
    private final List<String> refusals = new ArrayList<>();
    /** What was refused of rows, with their numbers. */
    private final Map<String, List<Integer>> ofRows = new LinkedHashMap<>();

    /** What is done with a row that is known. */
    interface Taken<R> {
        void row(CsvReading.Row line, R row) throws IOException, EditRefused;
    }

    /**
     * Reads the first row.
     *
     * @param known names of columns that may stand there
     * @param needed those of them that must
     */
    ImportedRows(CsvReading csv, Collection<String> known, Collection<String> needed) {
        this.csv = csv;
        if (csv.rows().isEmpty()) {
            refusals.add("expected a first row of column names, found an empty table");
            return;
        }
        List<String> names = csv.rows().get(0).cells();
        Map<Integer, String> strange = new LinkedHashMap<>();
        for (int i = 0; i < names.size(); i++) {
            String name = names.get(i).strip();
            if (!name.isEmpty() && !known.contains(name)) {
                strange.put(i + 1, "'" + name + "'");
            } else if (!name.isEmpty() && columns.putIfAbsent(name, i) != null) {
                refusals.add("row 1, column " + (i + 1) + ": expected the column '" + name + "' once, found it again");
            }
        }
        if (!strange.isEmpty()) {
            refusals.add("row 1, column " + strange.keySet().stream().map(String::valueOf)
                    .collect(Collectors.joining(", ")) + ": expected the columns " + String.join(", ", known)
                    + " and no other, found " + String.join(", ", strange.values()) + "; take "
                    + (strange.size() == 1 ? "it out" : "them out, if it is the right table"));
        }
        needed.stream().filter(name -> !columns.containsKey(name)).forEach(name ->
                refusals.add("row 1: expected the column '" + name + "', found none"));
    }

    /**
     * Goes through the other rows, unless the first was refused.
     *
     * @param rows what the base holds, by the words of its key columns
     * @param unknown what is said of a row that the base does not hold; its column with it
     * @param again what is said of one that stood there before
     */
    <R> void each(List<String> keys, Map<List<String>, R> rows, Function<List<String>, String> unknown,
            Function<List<String>, String> again, Taken<R> taken) throws IOException, EditRefused {
        if (!refusals.isEmpty()) {
            return;
        }
        Set<List<String>> seen = new HashSet<>();
        int width = csv.rows().get(0).cells().size();
        for (CsvReading.Row line : csv.rows().subList(1, csv.rows().size())) {
            if (line.cells().size() != width) {
                refuse(line, "expected " + width + " cells, found " + line.cells().size());
                continue;
            }
            List<String> key = keys.stream().map(name -> cell(line, name)).toList();
            R row = rows.get(key);
            if (row == null) {
                refuse(line, keys.get(keys.size() - 1), unknown.apply(key));
            } else if (!seen.add(key)) {
                refuse(line, again.apply(key));
            } else {
                taken.row(line, row);
            }
        }
    }

    /** The columns that stand there, in the order of the table. */
    List<String> columns() {
        return List.copyOf(columns.keySet());
    }

    /** What a cell means, with the line ends of the files; empty where its column does not stand there. */
    String cell(CsvReading.Row line, String column) {
        return columns.containsKey(column) ? Csv.meant(line.cells().get(columns.get(column))
                .replace("\r\n", "\n").replace('\r', '\n')).strip() : "";
    }

    /** Why a cell cannot stand in a file, when there is something in it that no spreadsheet shows. */
    static Optional<String> unseen(String value) {
        OptionalInt at = UnseenCharacters.next(value, 0);
        return at.isEmpty() ? Optional.empty() : Optional.of("expected text, found "
                + UnseenCharacters.named(value.codePointAt(at.getAsInt())));
    }

    void refuse(CsvReading.Row line, String column, String why) {
        refuse(line, List.of(column), why);
    }

    /** Refuses what several cells of a row come to together. */
    void refuse(CsvReading.Row line, List<String> names, String why) {
        names.forEach(name -> changes.remove(List.of(line.line(), name)));
        refuse(line, "column " + String.join(", ", names) + ": " + why);
    }

    /** Refuses what is of no one row. */
    void refuse(String why) {
        refusals.add(why);
    }

    private void refuse(CsvReading.Row line, String why) {
        ofRows.computeIfAbsent(why, none -> new ArrayList<>()).add(line.line());
    }

    /** The same of several rows is said once, as of a column of dates that a spreadsheet has written its own way. */
    private static String said(String why, List<Integer> rows) {
        if (rows.size() == 1) {
            return "row " + rows.get(0) + ", " + why;
        }
        String first = rows.stream().limit(FEW).map(String::valueOf).collect(Collectors.joining(", "));
        return "rows " + first + (rows.size() > FEW ? " and " + (rows.size() - FEW) + " more" : "") + ", " + why;
    }

    void change(CsvReading.Row line, String column, String what) {
        changes.put(List.of(line.line(), column), what + " (row " + line.line() + ")");
    }

    /** @param files as they were changed, which nothing is where something is refused */
    TableEdits edits(TableFiles files) throws IOException {
        files.judge(this);
        ofRows.forEach((why, rows) -> refusals.add(said(why, rows)));
        return new TableEdits(List.copyOf(changes.values()), refusals, refusals.isEmpty() ? files.changed()
                : new TreeMap<>());
    }
}
