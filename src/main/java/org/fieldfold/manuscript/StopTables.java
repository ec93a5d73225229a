package org.fieldfold.manuscript;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Function;
import org.fieldfold.entry.EarlyStop;
import org.fieldfold.entry.Threshold;
import org.fieldfold.prose.Run;
import org.fieldfold.scouting.sequential.SequentialPlan;
import org.fieldfold.scouting.sequential.StopRow;
import org.fieldfold.scouting.sequential.StopTable;
import org.fieldfold.source.Span;

/** Writes a plan for stopping early as whole numbers: looked at, let be at most, act at least. */
final class StopTables {
    /** Decisions that stand side by side on a panel; more stand beneath each other. */
    private static final int MOST_COLUMNS = 6;

    private final Phrases phrases;

    StopTables(Phrases phrases) {
        this.phrases = phrases;
    }

    /**
     * The table of a threshold's plan; none where there is no plan, or one that must not be printed.
     *
     * @param counted what is added up
     */
    List<Block> of(Threshold threshold, String counted, Span origin) {
        return threshold.stopEarly().flatMap(EarlyStop::plan).flatMap(SequentialPlan::table)
                .<List<Block>>map(table -> List.of(grid(threshold, table, counted, origin)))
                .orElse(List.of());
    }

    private Block grid(Threshold threshold, StopTable table, String counted, Span origin) {
        int more = threshold.stopEarly().orElseThrow().step();
        String caption = threshold.when().map(when -> phrases.say("plan.caption.when", when, more))
                .orElseGet(() -> phrases.say("plan.caption", more));
        List<StopRow> rows = table.rows();
        return rows.size() <= MOST_COLUMNS ? new Block.Grid(caption,
                across("plan.looked", rows, row -> OptionalInt.of(row.units()), true),
                List.of(across("plan.let-be", rows, StopRow::stopLow, false),
                        across("plan.act", rows, StopRow::stopHigh, true)), List.of(), true, origin)
                : new Block.Grid(caption, List.of(head("plan.looked"), head("plan.let-be"), head("plan.act")),
                        rows.stream().map(StopTables::row).toList(), List.of(), true, origin);
    }

    /** The whole table in three columns, as a page has room for it. */
    Block page(Threshold threshold, StopTable table, String counted, Span origin) {
        String when = threshold.when().map(words -> " (" + words + ")").orElse("");
        return new Block.Grid(phrases.say("plan.caption.page", counted + when,
                threshold.stopEarly().orElseThrow().step()),
                List.of(head("plan.looked"), head("plan.let-be"), head("plan.act")),
                table.rows().stream().map(StopTables::row).toList(), origin);
    }

    private List<List<Run>> across(String key, List<StopRow> rows, Function<StopRow, OptionalInt> number,
            boolean strong) {
        List<List<Run>> cells = new ArrayList<>();
        cells.add(head(key));
        rows.forEach(row -> cells.add(cell(number.apply(row), strong)));
        return cells;
    }

    private List<Run> head(String key) {
        return List.of(Run.strong(phrases.say(key)));
    }

    private static List<List<Run>> row(StopRow row) {
        return List.of(List.of(Run.plain(String.valueOf(row.units()))), cell(row.stopLow(), false),
                cell(row.stopHigh(), true));
    }

    private static List<Run> cell(OptionalInt total, boolean strong) {
        String words = total.isPresent() ? String.valueOf(total.getAsInt()) : "–";
        return List.of(strong ? Run.strong(words) : Run.plain(words));
    }
}
