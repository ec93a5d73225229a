package org.fieldfold.scouting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Days between treatments by trap catch. A row holds from its lower limit, included, up to its upper limit,
 * not included, so that no catch is in two rows.
 *
 * @param rows in order of catch
 */
public record IntervalTable(List<Row> rows) {
    public IntervalTable {
        rows = List.copyOf(rows);
        if (rows.isEmpty()) {
            throw new IllegalArgumentException("an interval table needs a row");
        }
    }

    /**
     * @param from lowest catch of the row, included
     * @param to catch at which the next row begins; infinite in the last
     * @param everyDays days between treatments; 0 for none needed
     */
    public record Row(double from, double to, int everyDays) {
        public Row {
            Expect.atLeast(0, everyDays, "days between treatments");
            if (!(from >= 0 && to > from)) {
                throw new IllegalArgumentException("a row must run from a catch to a higher one, found "
                        + Expect.plain(from) + " to " + Expect.plain(to));
            }
        }
    }

    /** The row that holds {@code caught}; empty where the table has a hole. Of two rows the later counts. */
    public Optional<Row> row(double caught) {
        return rows.stream().filter(row -> caught >= row.from && caught < row.to)
                .reduce((first, later) -> later);
    }

    /**
     * What is wrong with the rows, in plain words: holes, overlaps, and an interval that grows with the
     * catch.
     */
    public List<String> faults() {
        List<String> faults = new ArrayList<>();
        for (int i = 1; i < rows.size(); i++) {
            Row before = rows.get(i - 1);
            Row row = rows.get(i);
            if (row.from > before.to) {
                faults.add("no row holds a catch from " + Expect.plain(before.to) + " to "
                        + Expect.plain(row.from));
            } else if (row.from < before.to) {
                faults.add("two rows hold a catch of " + Expect.plain(row.from));
            }
            if (before.everyDays > 0 && (row.everyDays == 0 || row.everyDays > before.everyDays)) {
                faults.add("a higher catch must not mean a longer interval: " + before.everyDays
                        + " days, then " + row.everyDays + " from " + Expect.plain(row.from));
            }
        }
        return List.copyOf(faults);
    }
}
