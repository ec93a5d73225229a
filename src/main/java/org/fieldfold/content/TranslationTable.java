package org.fieldfold.content;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Translation;
import org.fieldfold.report.Csv;
import org.fieldfold.translation.BaseTexts;
import org.fieldfold.translation.Matching;

/** The texts of one language as a table: base text, translation and how it stands, row by row. */
final class TranslationTable {
    static final String FILE = "file";
    static final String PATH = "path";
    static final String BASE = "base text";
    static final String TRANSLATION = "translation";
    static final String STATE = "state";
    static final List<String> COLUMNS = List.of(FILE, PATH, BASE, TRANSLATION, STATE);

    /**
     * One text.
     *
     * @param file of the base, without its ending
     * @param place path under which its translation stands
     */
    record Row(String file, Matching.Pair pair, String place) {
        List<String> key() {
            return List.of(file, pair.text().path());
        }

        /** The words as they stand in the file; none where there are none yet. */
        String translation() {
            return pair.passage().flatMap(Translation.Passage::words).map(words -> words.markdown().strip())
                    .orElse("");
        }

        /** Whether another text has the same words, and the translation stands under that one's path. */
        boolean borrowed() {
            return !place.equals(pair.text().path());
        }

        String state() {
            return pair.state().name().toLowerCase(Locale.ROOT);
        }
    }

    private final String language;
    private final List<Row> rows = new ArrayList<>();
    private int placeless;
    private final TableFiles files;

    /** @throws EditRefused when nothing is translated into the language yet */
    TranslationTable(Path content, ContentBase base, String language) throws EditRefused {
        this.files = new TableFiles(content);
        this.language = language;
        Translation known = base.translations().get(language);
        if (known == null) {
            throw new EditRefused("expected a language that is begun, one of "
                    + base.translations().keySet().stream().collect(Collectors.joining(", ")) + ", found '"
                    + language + "'; 'fieldfold draft translation " + language + "' begins one");
        }
        BaseTexts.of(base).forEach((file, texts) -> Matching.of(texts,
                Optional.ofNullable(known.files().get(file)).map(Translation.Page::passages).orElse(List.of()))
                .pairs().forEach(pair -> row(file, pair)));
    }

    private void row(String file, Matching.Pair pair) {
        if (pair.passage().isPresent()) {
            rows.add(new Row(file, pair, pair.passage().get().path()));
        } else if (!pair.text().optional()) {
            placeless++;
        }
    }

    String language() {
        return language;
    }

    List<Row> rows() {
        return rows;
    }

    /** How many texts have no place in a file of the language, and so no row. */
    int placeless() {
        return placeless;
    }

    String path(Row row) {
        return language + "/" + row.file() + ".yaml";
    }

    TableFiles files() {
        return files;
    }

    /** The whole table as a spreadsheet reads it; cells that could act are made harmless. */
    String csv() {
        List<List<String>> lines = new ArrayList<>();
        lines.add(COLUMNS);
        for (Row row : rows) {
            lines.add(List.of(row.file(), row.pair().text().path(), row.pair().text().words().strip(),
                    row.translation(), row.state()));
        }
        return Csv.write(lines);
    }
}
