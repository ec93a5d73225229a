package org.fieldfold.content;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeMap;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.report.CsvReading;

/** Tables of a content base, out to a spreadsheet and back in. */
public final class Tables {
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    /**
     * A table of translations.
     *
     * @param placeless texts that have no place in a file of the language, and so no row
     */
    public record Translations(String csv, int placeless) {
    }

    private interface Edits {
        TableEdits of(CsvReading csv) throws IOException, EditRefused;
    }

    private Tables() {
    }

    /**
     * A table as CSV with a byte-order mark, without which spreadsheets take it for another encoding.
     *
     * @throws EditRefused when a file of it is not sound
     */
    public static String export(Path content, ContentBase base, TableKind kind) throws IOException,
            EditRefused {
        return BYTE_ORDER_MARK + new Table(content, base, kind).csv();
    }

    /**
     * The texts of a language in the same form: file, path, base text, translation, state.
     *
     * @throws EditRefused when the language is not begun
     */
    public static Translations translations(Path content, ContentBase base,
            String language) throws EditRefused {
        TranslationTable table = new TranslationTable(content, base, language);
        return new Translations(BYTE_ORDER_MARK + table.csv(), table.placeless());
    }

    /**
     * What a table from a spreadsheet would change; no file is touched.
     *
     * @throws EditRefused when a file of the base is not sound
     */
    public static TableEdits edits(Path content, ContentBase base, TableKind kind,
            byte[] csv) throws IOException, EditRefused {
        return read(csv, rows -> TableImport.edits(new Table(content, base, kind), rows));
    }

    /**
     * What a table of translations would change in the files of its language; no file is touched.
     *
     * @throws EditRefused when the language is not begun, or a file of it is not sound
     */
    public static TableEdits edits(Path content, ContentBase base, String language,
            byte[] csv) throws IOException, EditRefused {
        TranslationTable table = new TranslationTable(content, base, language);
        return read(csv, rows -> TranslationImport.edits(table, rows));
    }

    private static TableEdits read(byte[] csv, Edits edits) throws IOException, EditRefused {
        try {
            return edits.of(CsvReading.read(StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(csv))
                    .toString()));
        } catch (CharacterCodingException other) {
            return refused("expected UTF-8, found another encoding; save the table as 'CSV UTF-8'");
        } catch (CsvReading.Unreadable broken) {
            return refused(broken.getMessage());
        }
    }

    private static TableEdits refused(String why) {
        return new TableEdits(List.of(), List.of(why), new TreeMap<>());
    }
}
