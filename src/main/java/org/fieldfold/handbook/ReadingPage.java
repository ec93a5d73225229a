package org.fieldfold.handbook;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.fieldfold.entry.Edition;
import org.fieldfold.report.Reading;
import org.fieldfold.report.ReadingRow;

/** For the specialist: how easy the guides are to read, and which sentences make them hard. */
public final class ReadingPage {
    private final Markup out = new Markup();

    private ReadingPage() {
    }

    /**
     * The page as a file, self-contained and without script.
     *
     * @param languages what was measured in each
     */
    public static byte[] write(Edition edition, List<Reading> languages, boolean proof) {
        ReadingPage page = new ReadingPage();
        ReviewHead.open(page.out, edition, "Plain language", "By the length of sentences and words alone. "
                + "English: the school grade of Kincaid, 8 or lower is wanted. Spanish: the ease of "
                + "Fernández Huerta, 60 or higher is wanted. A long name counts as hard: it is for you to "
                + "judge.", proof);
        languages.forEach(page::language);
        page.out.close().close();
        return new Frame("en").inline("Plain language of edition " + edition.year(),
                Sheet.read("handbook.css") + Sheet.read("review.css"), page.out.toString());
    }

    private void language(Reading reading) {
        String measure = reading.language().equals("es") ? "Ease" : "Grade";
        out.open("section", "class", "part").element("h2", "Language " + reading.language()).line();
        table("Guides as a whole", reading.guides(), "Guide", measure, "Texts that are harder");
        table("Texts that are harder, the hardest first", reading.texts(), "Text", measure,
                "Its hardest sentence");
        out.close().line();
    }

    private void table(String caption, List<ReadingRow> rows, String... columns) {
        if (rows.isEmpty()) {
            out.element("p", caption + ": none.").line();
            return;
        }
        out.open("table").element("caption", caption).open("thead").open("tr");
        for (String column : columns) {
            out.element("th", column, "scope", "col");
        }
        out.close().close().open("tbody").line();
        for (ReadingRow row : rows) {
            out.open("tr", "class", row.plain() ? "easy" : "tight").element("td", row.what())
                    .element("td", BigDecimal.valueOf(row.measure()).setScale(1, RoundingMode.HALF_UP)
                            .toPlainString()).element("td", row.hard()).close().line();
        }
        out.close().close().line();
    }
}
