package org.fieldfold.fold;

import java.util.List;

/**
 * How a sheet becomes a folded piece: its panels, its folds in order, its cuts. It is only what the folder
 * does; what follows from it is derived by {@link Imposition}.
 *
 * @param landscape whether the sheet is laid with its long edge level
 * @param columns widths of the columns in proportion, before any is narrowed to be tucked in
 * @param rows heights of the rows in proportion
 * @param oneSided whether only the side of the cover is printed
 * @param leafed whether the piece is leafed through like a book; otherwise it is opened fold after fold
 * @param head the edge of the sheet, as laid, that is uppermost for a reader of the folded piece
 * @param trims edges of the folded piece that are cut off, seen as it lies when the last fold is made
 */
public record FoldScheme(String id, String title, boolean landscape, List<Integer> columns,
        List<Integer> rows, boolean oneSided, boolean leafed, Head head,
        List<FoldStep> steps, List<Cut> cuts, List<Head> trims) {
    /** An edge of the sheet or of the folded piece, as it lies before the folder. */
    public enum Head {
        TOP, RIGHT, BOTTOM, LEFT;

        Heading heading() {
            return Heading.values()[ordinal()];
        }
    }

    /** More panels a way than this are no pocket piece, and would make the pile too costly to prove. */
    static final int MOST_PANELS = 32;

    public FoldScheme {
        if (!id.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
            throw new IllegalArgumentException("a scheme's id is of small letters, digits and hyphens: '"
                    + id + "'");
        }
        if (title.isBlank()) {
            throw new IllegalArgumentException("scheme " + id + " needs a title");
        }
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        steps = List.copyOf(steps);
        cuts = List.copyOf(cuts);
        trims = List.copyOf(trims);
        if (columns.isEmpty() || rows.isEmpty() || columns.size() * rows.size() > MOST_PANELS) {
            throw new IllegalArgumentException("scheme " + id + ": expected 1 to " + MOST_PANELS
                    + " panels, found " + columns.size() + " columns and " + rows.size() + " rows");
        }
        for (int proportion : columns) {
            requireProportion(id, proportion);
        }
        for (int proportion : rows) {
            requireProportion(id, proportion);
        }
    }

    private static void requireProportion(String id, int proportion) {
        if (proportion < 1 || proportion > 1000) {
            throw new IllegalArgumentException("scheme " + id + ": proportions are 1 to 1000: " + proportion);
        }
    }

    /** How many lines run this way between the panels. */
    int lines(Axis axis) {
        return (axis == Axis.UPRIGHT ? columns : rows).size() - 1;
    }

    /** Refuses a line that the sheet does not have. */
    void require(GridLine line) {
        if (line.index() > lines(line.axis())) {
            throw new FoldException("line " + line + " does not exist: there are " + columns.size()
                    + " columns and " + rows.size() + " rows");
        }
    }
}
