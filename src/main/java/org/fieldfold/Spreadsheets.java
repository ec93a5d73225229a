package org.fieldfold;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.fieldfold.content.EditRefused;
import org.fieldfold.content.TableEdits;
import org.fieldfold.content.TableKind;
import org.fieldfold.content.Tables;
import org.fieldfold.entry.ContentBase;

/** Tables of the base as files for a spreadsheet. */
public final class Spreadsheets {
    private static final int LARGEST = 5 << 20;

    private interface Work<T> {
        T on(ContentBase base) throws IOException, EditRefused;
    }

    private Spreadsheets() {
    }

    /** Writes a table. */
    public static void export(Path content, TableKind kind, Path file) throws IOException, Editions.Refused {
        write(file, work(content, base -> Tables.export(content, base, kind)));
    }

    /**
     * Writes the texts of a language.
     *
     * @return how many texts have no place in a file of the language yet, and so are not in the table
     */
    public static int exportTranslations(Path content, String language,
            Path file) throws IOException, Editions.Refused {
        Tables.Translations table = work(content, base -> Tables.translations(content, base, language));
        write(file, table.csv());
        return table.placeless();
    }

    private static byte[] bytes(Path file) throws IOException, Editions.Refused {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(LARGEST + 1);
            if (bytes.length > LARGEST) {
                throw new Editions.Refused("expected a table of at most " + (LARGEST >> 20) + " MiB, found more in "
                        + file + "; divide it into several, each with the first row");
            }
            return bytes;
        }
    }

    /**
     * Says what a table would change, and changes it where that is asked and nothing in it is refused.
     *
     * @param apply whether files are changed
     */
    public static TableEdits edits(Path content, TableKind kind, Path file,
            boolean apply) throws IOException, Editions.Refused {
        byte[] csv = bytes(file);
        return made(content, work(content, base -> Tables.edits(content, base, kind, csv)), apply);
    }

    /** The same with the texts of a language. */
    public static TableEdits editTranslations(Path content, String language, Path file,
            boolean apply) throws IOException, Editions.Refused {
        byte[] csv = bytes(file);
        return made(content, work(content, base -> Tables.edits(content, base, language, csv)), apply);
    }

    private static <T> T work(Path content, Work<T> work) throws IOException, Editions.Refused {
        try {
            return work.on(Editions.base(Compiler.check(content, Optional.empty())));
        } catch (EditRefused refused) {
            throw new Editions.Refused(refused.getMessage());
        }
    }

    private static void write(Path file, String csv) throws IOException {
        WholeFile.write(file, csv.getBytes(StandardCharsets.UTF_8));
    }

    private static TableEdits made(Path content, TableEdits edits, boolean apply) throws IOException {
        if (apply) {
            for (Map.Entry<String, byte[]> edited : edits.files().entrySet()) {
                WholeFile.write(content.resolve(edited.getKey()), edited.getValue());
            }
        }
        return edits;
    }
}
