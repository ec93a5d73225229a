package org.fieldfold.handbook;

import java.util.List;
import java.util.stream.Stream;
import org.fieldfold.manuscript.Block;
import org.fieldfold.prose.Run;

/** Writes tables. */
final class GridMarkup {
    /** So many letters of a cell fit beside eight others on the narrowest telephone. */
    private static final int SHORT = 4;
    private static final int MOST = 9;

    private final Form form;
    private final Markup out;
    private final BlockMarkup blocks;

    GridMarkup(Form form, Markup out, BlockMarkup blocks) {
        this.form = form;
        this.out = out;
        this.blocks = blocks;
    }

    /**
     * A table of few columns or of mere numbers stays a table everywhere. Of any other, on a narrow screen, a row
     * becomes a list in which each cell says its column's name.
     */
    void write(Block.Grid grid) {
        boolean numbers = isNumbers(grid);
        boolean wide = grid.header().size() > 3 && !numbers;
        out.open("table", "class", (numbers ? "numbers" : wide ? "wide" : "narrow") + system(grid)).open("caption");
        blocks.text(grid.caption());
        out.close().open("thead").open("tr");
        for (List<Run> cell : grid.header()) {
            out.open("th", "scope", "col");
            blocks.runs(cell);
            out.close();
        }
        out.close().close().open("tbody");
        for (List<List<Run>> row : grid.rows()) {
            out.open("tr");
            for (int i = 0; i < row.size(); i++) {
                if (wide) {
                    listed(i == 0 ? "" : BlockMarkup.words(grid.header().get(i)), row.get(i));
                } else if (numbers && i == 0) {
                    cell("th", row.get(i), "scope", "row");
                } else {
                    cell("td", row.get(i));
                }
            }
            out.close().line();
        }
        out.close().close();
    }

    private static boolean isNumbers(Block.Grid grid) {
        return grid.header().size() > 3 && grid.header().size() <= MOST
                && Stream.concat(Stream.of(grid.header()), grid.rows().stream()).flatMap(List::stream)
                        .allMatch(cell -> BlockMarkup.words(cell).length() <= SHORT);
    }

    /** A table of temperatures names their unit in its corner. */
    private static String system(Block.Grid grid) {
        String corner = BlockMarkup.words(grid.header().get(0));
        return corner.equals("°C") ? " in-m" : corner.equals("°F") ? " in-c" : "";
    }

    private void cell(String tag, List<Run> runs, String... attributes) {
        out.open(tag, attributes);
        blocks.runs(runs);
        out.close();
    }

    /** The first cell of a row is the row's own name, and is told no other. */
    private void listed(String column, List<Run> runs) {
        if (column.isEmpty()) {
            out.open("td");
        } else {
            form.column(column).ifPresentOrElse(kind -> out.open("td", "class", kind),
                    () -> out.open("td", "data-column", column));
        }
        cell("div", runs);
        out.close();
    }
}
