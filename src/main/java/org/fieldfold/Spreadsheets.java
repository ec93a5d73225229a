package org.fieldfold;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.fieldfold.content.EditRefused;
import org.fieldfold.content.TableEdits;
import org.fieldfold.content.TableKind;
import org.fieldfold.content.Tables;

/** Tables of the base as files for a spreadsheet. */
public final class Spreadsheets {
    private Spreadsheets() {
    }

    /** Writes a table. */
    public static void export(Path content, TableKind kind, Path file) throws IOException, Editions.Refused {
        try {
            String csv = Tables.export(content,
                    Editions.base(Compiler.check(content, Optional.empty())), kind);
            WholeFile.write(file, csv.getBytes(StandardCharsets.UTF_8));
        } catch (EditRefused refused) {
            throw new Editions.Refused(refused.getMessage());
        }
    }

    /**
     * Says what a table would change, and changes it where that is asked and nothing in it is refused.
     *
     * @param apply whether files are changed
     */
    public static TableEdits edits(Path content, TableKind kind, Path file,
            boolean apply) throws IOException, Editions.Refused {
        try {
            TableEdits edits = Tables.edits(content,
                    Editions.base(Compiler.check(content, Optional.empty())), kind, Files.readAllBytes(file));
            if (apply) {
                for (Map.Entry<String, byte[]> edited : edits.files().entrySet()) {
                    WholeFile.write(content.resolve(edited.getKey()), edited.getValue());
                }
            }
            return edits;
        } catch (EditRefused refused) {
            throw new Editions.Refused(refused.getMessage());
        }
    }
}
