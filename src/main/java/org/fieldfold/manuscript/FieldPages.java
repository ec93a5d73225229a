package org.fieldfold.manuscript;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.fieldfold.entry.Monitoring;
import org.fieldfold.entry.PerArea;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.SamplingUnit;
import org.fieldfold.prose.Run;
import org.fieldfold.scouting.Walk;
import org.fieldfold.scouting.geometry.CatchTest;
import org.fieldfold.scouting.geometry.Density;
import org.fieldfold.scouting.geometry.Field;
import org.fieldfold.scouting.geometry.FieldWalk;
import org.fieldfold.source.Span;

/** Writes how to walk a field, how many stops an area needs, and how a sprayer is measured with water. */
final class FieldPages {
    private static final List<Walk> WALKS = List.of(Walk.V, Walk.W, Walk.X, Walk.EDGE, Walk.ROWS);
    private static final double[] AREAS = {1, 2.5, 5, 10, 20, 50, 60, 100};
    /** Distances between nozzles or rows that one meets, inches. */
    private static final int[] SPACINGS = {10, 12, 14, 16, 18, 20, 22, 24, 30, 36, 40};
    private static final Field DRAWN = new Field(60, 100);

    private final Register register;
    private final Span origin;

    FieldPages(Register register) {
        this.register = register;
        this.origin = register.base().edition().at("title");
    }

    Page walks() {
        List<Block> top = new ArrayList<>(title("book.page.walks"));
        List<Block.Diagram> drawings = new ArrayList<>();
        WALKS.forEach(walk -> drawings.add(drawing(walk)));
        top.add(new Block.Diagrams(drawings, origin));
        top.add(new Block.Paragraph(List.of(Run.plain(register.say("walk.margin"))), List.of(), origin));
        List<Page.Part> parts = new ArrayList<>(List.of(new Page.Part("top", "", top)));
        List<Block> areas = areas();
        if (!areas.isEmpty()) {
            parts.add(new Page.Part("area", register.say("area.title"), areas));
        }
        return new Page(Places.WALKS, Page.Kind.REFERENCE, register.say("book.page.walks"), Places.START,
                parts, origin);
    }

    private Block.Diagram drawing(Walk walk) {
        int stops = walk == Walk.EDGE ? 12 : 10;
        FieldWalk way = FieldWalk.of(walk, DRAWN, 8, stops);
        String name = register.say("walk." + walk.name().toLowerCase(Locale.ROOT));
        return new Block.Diagram(name, register.say("walk.alt", name, stops), DRAWN.width(), DRAWN.length(),
                way.legs().stream().map(leg -> leg.stream().map(FieldPages::spot).toList()).toList(),
                way.stops().stream().map(FieldPages::spot).toList());
    }

    /** One enters at the lower left; drawings count from above. */
    private static Block.Spot spot(FieldWalk.Point point) {
        return new Block.Spot(point.across(), DRAWN.length() - point.along());
    }

    private List<Block> areas() {
        List<Block> blocks = new ArrayList<>();
        for (Placed<PestEntry> pest : register.base().pests().values()) {
            for (int i = 0; i < pest.value().monitoring().size(); i++) {
                Monitoring look = pest.value().monitoring().get(i);
                Span at = pest.at("monitoring", i, "per-area");
                look.perArea().ifPresent(area -> {
                    blocks.add(new Block.Heading(4, List.of(Run.strong(pest.value().names().common())
                            .to(Places.to(pest.value().id()) + "/count")), at));
                    blocks.add(perArea(area, register.say(look.unit() == SamplingUnit.TRAP ? "area.traps"
                            : "area.stops"), at));
                });
            }
        }
        return blocks;
    }

    /** How many of something areas need. */
    Block perArea(PerArea area, String what, Span at) {
        List<List<List<Run>>> rows = new ArrayList<>();
        area.density().ifPresent(density -> rows.addAll(rows(density)));
        String unit = register.say("area.up-to", register.phrases().word("area.unit", area.unit()));
        return new Block.Grid(register.say("area.caption", what),
                List.of(List.of(Run.strong(unit)), List.of(Run.strong(what))), rows, at);
    }

    private static List<List<List<Run>>> rows(Density density) {
        List<List<List<Run>>> rows = new ArrayList<>();
        for (int i = 0; i < AREAS.length; i++) {
            int number = density.on(AREAS[i]);
            // of areas that need the same number the largest says it
            if (i == AREAS.length - 1 || density.on(AREAS[i + 1]) != number) {
                rows.add(List.of(List.of(Run.plain(Figures.plain(AREAS[i]))),
                        List.of(Run.strong(String.valueOf(number)))));
            }
        }
        return rows;
    }

    /** Water only: what goes into it is on the label and nowhere else. */
    Page catchTest() {
        List<Block> top = new ArrayList<>(title("book.page.catch-test"));
        top.add(new Block.Notice(List.of(Run.strong(register.say("rates"))), origin));
        List<List<Run>> steps = new ArrayList<>();
        for (int step = 1; step <= 6; step++) {
            steps.add(List.of(Run.plain(register.say("catch.step." + step))));
        }
        top.add(new Block.Items(true, steps, origin));
        List<List<List<Run>>> rows = new ArrayList<>();
        Measures in = register.phrases().measures();
        for (int spacing : SPACINGS) {
            rows.add(List.of(List.of(Run.plain(in.inches(spacing))),
                    List.of(Run.strong(in.feet(CatchTest.stripFeet(spacing))))));
        }
        top.add(new Block.Grid(register.say("catch.caption"), List.of(
                List.of(Run.strong(register.say("catch.spacing"))),
                List.of(Run.strong(register.say("catch.feet")))), rows, origin));
        top.add(new Block.Paragraph(List.of(Run.plain(register.say("catch.why",
                Figures.rounded(CatchTest.SQUARE_FEET_PER_ACRE, 0),
                Figures.rounded(CatchTest.stripArea(), 1)))), List.of(), origin));
        return new Page(Places.CATCH_TEST, Page.Kind.REFERENCE, register.say("book.page.catch-test"),
                Places.START, List.of(new Page.Part("top", "", top)), origin);
    }

    private List<Block> title(String key) {
        return List.of(new Block.Title(List.of(Run.plain(register.say(key))),
                List.of(Run.plain(register.say(key + ".why"))), origin));
    }
}
