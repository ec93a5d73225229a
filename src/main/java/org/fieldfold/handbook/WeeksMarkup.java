package org.fieldfold.handbook;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.fieldfold.manuscript.Block;
import org.fieldfold.prose.Run;

/**
 * Writes a strip calendar as a table, a row an entry: the strip is for the eye, in columns of weeks whose
 * places are classes of the style sheet, and all that it shows stands beneath it in words.
 */
final class WeeksMarkup {
    /** Columns that the style sheet knows. */
    static final int COLUMNS = 40;
    private static final int WEEK = 7;
    /** Any year without a 29 February. */
    private static final int YEAR = 2027;

    private final Form form;
    private final Markup out;

    WeeksMarkup(Form form, Markup out) {
        this.form = form;
        this.out = out;
    }

    void write(Block.Weeks weeks, BlockMarkup blocks) {
        LocalDate first = LocalDate.of(YEAR, weeks.firstMonth(), 1);
        out.open("table", "class", "weeks").element("caption", weeks.title()).open("tbody").line();
        boolean months = true;
        for (Block.WeekRow row : weeks.rows()) {
            out.open("tr").open("th", "scope", "row");
            blocks.runs(java.util.List.of(Run.plain(row.name()).to(row.link())));
            out.close().open("td");
            if (months) {
                months(weeks, first);
                months = false;
            }
            strip(row, first);
            out.element("p", row.words());
            out.close().close().line();
        }
        out.close().close();
        if (!weeks.note().isEmpty()) {
            blocks.paragraph("small", weeks.note());
        }
    }

    private void months(Block.Weeks weeks, LocalDate first) {
        out.open("div", "class", "strip months", "aria-hidden", "true");
        for (int i = 0; i < weeks.months().size(); i++) {
            int from = column(first, first.plusMonths(i));
            int to = column(first, first.plusMonths(i + 1));
            out.element("i", weeks.months().get(i), "class", place(from, Math.max(from, to - 1)));
        }
        out.close();
    }

    private void strip(Block.WeekRow row, LocalDate first) {
        out.open("div", "class", "strip");
        row.looks().forEach(look -> out.element("i", "", "class", "o " + place(column(first,
                look.first().atYear(YEAR)), column(first, look.last().atYear(YEAR)))));
        for (Block.Stretch bar : row.bars()) {
            out.element("i", "", "class", "b " + place(column(first, bar.first().atYear(YEAR)),
                    column(first, bar.last().atYear(YEAR))));
            bar.usual().ifPresent(usual -> {
                int at = column(first, usual.atYear(YEAR));
                out.element("i", "", "class", "t s" + at);
            });
        }
        out.close();
    }

    private static String place(int from, int to) {
        return "s" + from + " n" + (to - from + 1);
    }

    /** The column of a day, 1 to {@link #COLUMNS}; what lies outside the strip is drawn at its end. */
    private static int column(LocalDate first, LocalDate day) {
        long week = Math.floorDiv(ChronoUnit.DAYS.between(first, day), WEEK);
        return (int) Math.max(1, Math.min(COLUMNS, week + 1));
    }
}
