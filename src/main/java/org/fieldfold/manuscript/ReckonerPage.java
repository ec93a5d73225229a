package org.fieldfold.manuscript;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.fieldfold.entry.DegreeDayEvent;
import org.fieldfold.entry.Placed;
import org.fieldfold.prose.Run;
import org.fieldfold.scouting.decision.Recount;
import org.fieldfold.scouting.degreeday.DayTemperature;
import org.fieldfold.scouting.degreeday.HandSum;
import org.fieldfold.scouting.degreeday.HeatModel;
import org.fieldfold.scouting.degreeday.TemperatureUnit;
import org.fieldfold.scouting.geometry.Field;
import org.fieldfold.scouting.geometry.Hoop;
import org.fieldfold.scouting.geometry.LowTunnel;
import org.fieldfold.source.Span;

/**
 * Writes the reckoners as tables of usual cases. Where a script runs, each of them gets a form above its table that
 * reckons any other case.
 */
final class ReckonerPage {
    private final Register register;
    private final Span origin;

    ReckonerPage(Register register) {
        this.register = register;
        this.origin = register.base().edition().at("title");
    }

    Page page() {
        List<Page.Part> parts = new ArrayList<>();
        parts.add(new Page.Part("top", "", List.of(new Block.Title(
                List.of(Run.plain(register.say("book.page.reckoners"))),
                List.of(Run.plain(register.say("book.page.reckoners.why"))), origin))));
        parts.add(part("warmth", new HeatTables(register.phrases()).of(model(), origin)));
        parts.add(part("season", seasons()));
        parts.add(part("recount", recounts()));
        parts.add(part("cover", covers()));
        parts.add(part("net", List.of(nets(), noWidths())));
        parts.add(part("border", borders()));
        parts.add(part("waiting", new Block.Paragraph(Line.of().add(Run.plain(register.say("book.page.materials"))
                .to(Places.to(Places.MATERIALS))).runs(), List.of(), origin)));
        return new Page(Places.RECKONERS, Page.Kind.REFERENCE, register.say("book.page.reckoners"), Places.START,
                parts, origin);
    }

    private Page.Part part(String key, List<Block> tables) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraph(List.of(Run.plain(register.say("reckon." + key + ".why"))), List.of(), origin));
        blocks.addAll(tables);
        return new Page.Part(key, register.say("reckon." + key), blocks);
    }

    private Page.Part part(String key, Block table) {
        return part(key, List.of(table));
    }

    /** That of the first event in the base, or else 50 °F and a single sine. */
    private HeatModel model() {
        return register.pestsById()
                .flatMap(pest -> pest.monitoring().stream()).flatMap(look -> look.season().stream())
                .flatMap(season -> season.events().stream()).map(DegreeDayEvent::model)
                .flatMap(java.util.Optional::stream).findFirst()
                .orElse(HeatModel.singleSine(TemperatureUnit.FAHRENHEIT, 50));
    }

    /** Five days by hand, the third of them missing, in the unit that a reader wants, or in both. */
    private List<Block> seasons() {
        Measures measures = register.phrases().measures();
        HeatModel model = model();
        TemperatureUnit first = measures.tableUnit(model.unit());
        Block own = season(model.in(first));
        return measures.both() ? List.of(own, season(model.in(Measures.other(first)))) : List.of(own);
    }

    /** In three columns, which a telephone has room for. */
    private Block season(HeatModel model) {
        boolean metric = model.unit() == TemperatureUnit.CELSIUS;
        double[][] temperatures = metric ? new double[][] {{6, 18}, {9, 21}, {}, {12, 25}, {11, 19}}
                : new double[][] {{43, 64}, {48, 70}, {}, {54, 77}, {52, 66}};
        LocalDate start = LocalDate.of(register.base().edition().value().year(), 5, 1);
        List<DayTemperature> days = new ArrayList<>();
        List<List<List<Run>>> rows = new ArrayList<>();
        for (int i = 0; i < temperatures.length; i++) {
            String day = register.phrases().shortDay(MonthDay.from(start.plusDays(i)));
            if (temperatures[i].length == 0) {
                rows.add(row(register.say("reckon.season.missing", day), "", ""));
                continue;
            }
            double min = temperatures[i][0];
            double max = temperatures[i][1];
            days.add(new DayTemperature(start.plusDays(i), min, max));
            HandSum sum = HandSum.of(model, model.unit(), days, start);
            String total = tenths(sum.total());
            rows.add(row(register.say("reckon.season.row", day, Figures.plain(min), Figures.plain(max)),
                    tenths(model.degreeDays(min, max)), sum.missing() > 0
                            ? register.say("reckon.season.least", total) : total));
        }
        return new Block.Grid(register.say("reckon.season.caption", Measures.degrees(model.lower(), model.unit())),
                head("season", 3), rows, origin);
    }

    /** Of whom a net cannot be reckoned, and why. */
    private Block noWidths() {
        String names = register.base().pests().values().stream().map(Placed::value)
                .filter(pest -> pest.netBody().isEmpty()).map(pest -> pest.names().common())
                .collect(Collectors.joining(", "));
        return new Block.Paragraph(List.of(Run.plain(register.say("reckon.net.unknown", names))), List.of(), origin);
    }

    private Block recounts() {
        List<List<List<Run>>> rows = new ArrayList<>();
        for (int[] counts : new int[][] {{10, 12}, {10, 15}, {10, 20}, {10, 30}, {10, 5}}) {
            Recount two = new Recount(counts[0], counts[1], 3);
            OptionalDouble doubling = two.doublingDays();
            rows.add(row(register.say("reckon.recount.row", counts[0], counts[1]),
                    Math.round(100 * StrictMath.expm1(two.growth())) + " %",
                    doubling.isPresent() ? tenths(doubling.getAsDouble()) : "–"));
        }
        return new Block.Grid(register.say("reckon.recount.caption"), head("recount", 3), rows, origin);
    }

    private Block covers() {
        List<List<List<Run>>> rows = new ArrayList<>();
        for (int width = 2; width <= 5; width++) {
            LowTunnel tunnel = new LowTunnel(new Hoop.Semicircle(width), 50, 4, 1, 1);
            rows.add(row(String.valueOf(width), tenths(tunnel.stock()), tenths(tunnel.sheetWidth()) + " × "
                    + tenths(tunnel.sheetLength())));
        }
        return new Block.Grid(register.say("reckon.cover.caption"), head("cover", 3), rows, origin);
    }

    private Block nets() {
        List<List<List<Run>>> rows = new ArrayList<>();
        register.base().pests().values().stream().map(Placed::value).forEach(pest -> pest.netBody()
                .ifPresent(body -> rows.add(List.of(List.of(Run.plain(pest.names().common())
                        .to(Places.to(pest.id()))), List.of(Run.plain(
                                register.phrases().measures().largestHole(body.largestHoleMm())))))));
        return new Block.Grid(register.say("reckon.net.caption"), head("net", 2), rows, origin);
    }

    private Block borders() {
        List<List<List<Run>>> rows = new ArrayList<>();
        for (int side : new int[] {50, 100, 200, 400}) {
            Field field = new Field(side, side);
            rows.add(row(side + " × " + side, tenths(field.borderFor(0.1)), tenths(field.borderFor(0.2))));
        }
        return new Block.Grid(register.say("reckon.border.caption"), head("border", 3), rows, origin);
    }

    private List<List<Run>> head(String key, int columns) {
        List<List<Run>> head = new ArrayList<>();
        for (int column = 1; column <= columns; column++) {
            head.add(List.of(Run.strong(register.say("reckon." + key + "." + column))));
        }
        return head;
    }

    private static List<List<Run>> row(String... cells) {
        return java.util.Arrays.stream(cells).map(cell -> List.of(Run.plain(cell))).toList();
    }

    private static String tenths(double number) {
        return Figures.plain(Math.rint(number * 10) / 10);
    }
}
