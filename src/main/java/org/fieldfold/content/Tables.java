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
    private Tables() {
    }

    /**
     * A table as CSV with a byte-order mark, without which spreadsheets take it for another encoding.
     *
     * @throws EditRefused when a file of it is not sound
     */
    public static String export(Path content, ContentBase base, TableKind kind) throws IOException,
            EditRefused {
        return "\uFEFF" + new Table(content, base, kind).csv();
    }

    /**
     * What a table from a spreadsheet would change; no file is touched.
     *
     * @throws EditRefused when a file of the base is not sound
     */
    public static TableEdits edits(Path content, ContentBase base, TableKind kind,
            byte[] csv) throws IOException, EditRefused {
        try {
            String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(csv)).toString();
            return TableImport.edits(new Table(content, base, kind), CsvReading.read(text));
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
