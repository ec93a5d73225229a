package org.fieldfold.manuscript;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.fieldfold.entry.DegreeDayEvent;
import org.fieldfold.prose.Run;
import org.fieldfold.scouting.degreeday.HeatModel;
import org.fieldfold.scouting.degreeday.PocketHeatTable;
import org.fieldfold.scouting.degreeday.TemperatureUnit;
import org.fieldfold.source.Span;

/** Writes the degree-days of a day by its lowest and highest temperature, for a sum by pencil. */
final class HeatTables {
    private static final int COLUMNS = 7;
    private static final int ROWS = 9;

    private final Phrases phrases;

    HeatTables(Phrases phrases) {
        this.phrases = phrases;
    }

    /** One table for each model among the events that ask for one. */
    List<Block> of(List<DegreeDayEvent> events, Span origin) {
        return events.stream().filter(DegreeDayEvent::asksForTable).map(DegreeDayEvent::model)
                .flatMap(Optional::stream).distinct().flatMap(model -> of(model, origin).stream()).toList();
    }

    /** In the unit that a reader wants; in both, one table after the other. */
    List<Block> of(HeatModel model, Span origin) {
        Measures measures = phrases.measures();
        TemperatureUnit first = measures.tableUnit(model.unit());
        Block own = grid(model.in(first), origin);
        return measures.both() ? List.of(own, grid(model.in(Measures.other(first)), origin)) : List.of(own);
    }

    private Block grid(HeatModel model, Span origin) {
        int step = model.unit() == TemperatureUnit.FAHRENHEIT ? 5 : 3;
        int base = (int) Math.rint(model.lower() / step) * step;
        PocketHeatTable table = PocketHeatTable.of(model, base - 2 * step, base + (COLUMNS - 3) * step,
                base + step, base + ROWS * step, step);
        List<List<Run>> header = new ArrayList<>();
        header.add(List.of(Run.strong(model.unit().symbol())));
        table.minima().forEach(low -> header.add(List.of(Run.strong(low.toString()))));
        List<List<List<Run>>> rows = new ArrayList<>();
        List<List<List<Run>>> few = new ArrayList<>();
        for (int row = 0; row < table.maxima().size(); row++) {
            List<List<Run>> cells = new ArrayList<>();
            cells.add(List.of(Run.strong(table.maxima().get(row).toString())));
            for (int column = 0; column < table.minima().size(); column++) {
                OptionalInt cell = table.whole(row, column);
                cells.add(List.of(Run.plain(cell.isPresent() ? String.valueOf(cell.getAsInt()) : "")));
            }
            rows.add(cells);
            if (row % 2 == 0) {
                few.add(cells);
            }
        }
        return new Block.Grid(caption(model), header, rows, few, true, origin);
    }

    private String caption(HeatModel model) {
        String lower = Measures.degrees(model.lower(), model.unit());
        return model.upper().isEmpty() ? phrases.say("heat.caption", lower)
                : phrases.say("heat.caption.upper", lower,
                        Measures.degrees(model.upper().getAsDouble(), model.unit()));
    }
}
