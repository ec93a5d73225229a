package org.fieldfold.manuscript;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.fieldfold.entry.EarlyStop;
import org.fieldfold.entry.Threshold;
import org.fieldfold.prose.Run;
import org.fieldfold.scouting.sequential.SequentialPlan;
import org.fieldfold.scouting.sequential.StopRow;
import org.fieldfold.scouting.sequential.StopTable;
import org.fieldfold.source.Span;

/** Writes a plan for stopping early as whole numbers: looked at, let be at most, act at least. */
final class StopTables {
    /** Rows of the form that a full panel gets; fewer decisions make no decision worse. */
    private static final int FEW = 3;

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
        String when = threshold.when().map(words -> " (" + words + ")").orElse("");
        int more = threshold.stopEarly().orElseThrow().step();
        List<List<List<Run>>> rows = table.rows().stream().map(StopTables::row).toList();
        List<List<List<Run>>> few = few(rows);
        return new Block.Grid(phrases.say("plan.caption", counted + when, more),
                List.of(head("plan.looked"), head("plan.let-be"), head("plan.act")), rows,
                few.size() < rows.size() ? few : List.of(), true, origin);
    }

    private List<Run> head(String key) {
        return List.of(Run.strong(phrases.say(key)));
    }

    private static List<List<Run>> row(StopRow row) {
        return List.of(List.of(Run.plain(String.valueOf(row.units()))), cell(row.stopLow(), false),
                cell(row.stopHigh(), true));
    }

    private static List<Run> cell(OptionalInt total, boolean act) {
        String words = total.isPresent() ? String.valueOf(total.getAsInt()) : "–";
        return List.of(act ? Run.strong(words) : Run.plain(words));
    }

    /** Every second, third ... row, the last one always. */
    private static List<List<List<Run>>> few(List<List<List<Run>>> rows) {
        int step = (rows.size() + FEW - 1) / FEW;
        List<List<List<Run>>> few = new ArrayList<>();
        for (int i = (rows.size() - 1) % step; i < rows.size(); i += step) {
            few.add(rows.get(i));
        }
        return few;
    }
}
