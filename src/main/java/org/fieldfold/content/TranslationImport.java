package org.fieldfold.content;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.fieldfold.report.CsvReading;
import org.fieldfold.translation.Matching;

/**
 * Brings a table of translations back: what differs goes into the files of the language with the hash of the
 * base text that stood beside it, what is not understood does not.
 */
final class TranslationImport {
    private final TranslationTable table;
    private final ImportedRows csv;

    private TranslationImport(TranslationTable table, ImportedRows csv) {
        this.table = table;
        this.csv = csv;
    }

    static TableEdits edits(TranslationTable table, CsvReading csv) throws IOException, EditRefused {
        ImportedRows rows = new ImportedRows(csv, TranslationTable.COLUMNS, TranslationTable.COLUMNS.stream()
                .filter(name -> !name.equals(TranslationTable.STATE)).toList());
        TranslationImport reading = new TranslationImport(table, rows);
        Map<List<String>, TranslationTable.Row> known = new LinkedHashMap<>();
        table.rows().forEach(row -> known.put(row.key(), row));
        rows.each(List.of(TranslationTable.FILE, TranslationTable.PATH), known,
                key -> "expected a text of the base that has its place in language " + table.language()
                        + ", found '" + String.join(": ", key) + "'; export the table again",
                key -> "expected each text once, found '" + String.join(": ", key) + "' again", reading::row);
        return rows.edits(table.files());
    }

    private void row(CsvReading.Row line, TranslationTable.Row row) throws IOException, EditRefused {
        String now = row.pair().text().words().strip();
        String was = row.translation();
        String is = csv.cell(line, TranslationTable.TRANSLATION);
        String state = csv.cell(line, TranslationTable.STATE).toLowerCase(Locale.ROOT);
        boolean confirmed = row.pair().state() == Matching.State.DUE && state.equals("current");
        if (!spaced(csv.cell(line, TranslationTable.BASE)).equals(spaced(now))) {
            csv.refuse(line, TranslationTable.BASE, "expected the text as it is now, “" + ScalarReading.cut(
                    spaced(now)) + "”, found another; export the table again");
        } else if (!state.isEmpty() && !state.equals(row.state()) && is.equals(was) && !confirmed) {
            csv.refuse(line, TranslationTable.STATE, "expected '" + row.state() + "'"
                    + (row.pair().state() == Matching.State.DUE ? ", or 'current' once it is looked at" : "")
                    + ", found '" + state + "'");
        } else if (!is.equals(was) || confirmed) {
            Optional<String> wrong = wrong(row, is);
            if (wrong.isPresent()) {
                csv.refuse(line, TranslationTable.TRANSLATION, wrong.get());
            } else {
                write(line, row, was, is);
            }
        }
    }

    private void write(CsvReading.Row line, TranslationTable.Row row, String was,
            String is) throws IOException {
        boolean same = is.equals(was);
        String file = table.path(row);
        String column = same ? TranslationTable.STATE : TranslationTable.TRANSLATION;
        try {
            InPlace text = table.files().text(file).set(row.pair().text().hash(), row.place(), "of");
            table.files().keep(file, same ? text : text.put(is, row.place(), "text"), line, column, row.place(),
                    same ? "of" : "text");
            csv.change(line, column, file + ": " + row.place() + ": " + (same ? "looked at, current"
                    : (was.isEmpty() ? "nothing" : shown(was)) + " -> " + shown(is)));
        } catch (EditRefused refused) {
            csv.refuse(line, column, refused.getMessage());
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
        return ImportedRows.unseen(value);
    }
}
