package org.fieldfold.manuscript;

import java.time.temporal.IsoFields;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.fieldfold.calendar.Calendars;
import org.fieldfold.calendar.GuideCalendar;
import org.fieldfold.calendar.Place;
import org.fieldfold.entry.Guide;
import org.fieldfold.entry.Office;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Station;
import org.fieldfold.prose.Run;
import org.fieldfold.scouting.calendar.CalendarWeek;
import org.fieldfold.source.Span;

/** Writes when to look: a page to choose the station, and a page for each, by crop and by week. */
final class WeeksPages {
    private final Register register;
    private final Calendars calendars;
    private final CalendarWords words;
    private final Span origin;

    WeeksPages(Register register, Calendars calendars) {
        this.register = register;
        this.calendars = calendars;
        this.words = new CalendarWords(register.phrases());
        this.origin = register.base().edition().at("title");
    }

    List<Page> pages() {
        List<Page> pages = new ArrayList<>();
        pages.add(choice());
        calendars.places().forEach(place -> pages.add(station(place, place.stations().get(0))));
        return pages;
    }

    private Page choice() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Title(List.of(Run.plain(register.say("weeks"))),
                List.of(Run.plain(register.say("book.door.weeks.why"))), origin));
        List<Block.Tile> tiles = calendars.places().stream().map(place -> place.stations().get(0))
                .map(station -> new Block.Tile(Places.to(Places.weeks(station.id())), Optional.empty(),
                        register.say("book.weeks.near", station.name()),
                        List.of(Run.plain(offices(station))))).toList();
        blocks.add(tiles.isEmpty() ? paragraph(register.say("weeks.no-station") + ".")
                : new Block.Tiles(tiles, origin));
        return new Page(Places.WEEKS, Page.Kind.WEEKS, register.say("weeks"), Places.START,
                List.of(new Page.Part("top", "", blocks)), origin);
    }

    private String offices(Station station) {
        return calendars.officesNear(station).stream().map(Office::county).collect(Collectors.joining(", "));
    }

    private Block paragraph(String sentence) {
        return new Block.Paragraph(List.of(Run.plain(sentence)), List.of(), origin);
    }

    private Page station(Place place, Station station) {
        List<Block> top = new ArrayList<>();
        String name = register.say("weeks.near", station.name());
        top.add(new Block.Title(List.of(Run.plain(name)),
                List.of(Run.plain(register.say("book.weeks.for", offices(station)))), origin));
        top.add(new Block.Notice(List.of(Run.strong(words.estimate(place, false)),
                Run.plain(" " + register.say("weeks.key") + " " + register.say("weeks.by-stages"))), origin));
        List<Page.Part> parts = new ArrayList<>();
        parts.add(new Page.Part("top", "", top));
        List<Block> guides = guides(place);
        if (!guides.isEmpty()) {
            parts.add(new Page.Part("guides", register.say("book.weeks.by-guide"), guides));
        }
        weeks(calendars.ofAll(place)).ifPresent(list ->
                parts.add(new Page.Part("weeks", register.say("book.weeks.by-week"), List.of(list))));
        return new Page(Places.weeks(station.id()), Page.Kind.WEEKS, name, Places.WEEKS, parts, origin);
    }

    /** A strip for each guide, as these go by crops and by how they are grown; then what no guide has. */
    private List<Block> guides(Place place) {
        WeeksWriter strips = new WeeksWriter(register.phrases(), false);
        List<Block> blocks = new ArrayList<>();
        Set<String> shown = new HashSet<>();
        for (Placed<Guide> guide : register.base().guides().values()) {
            GuideCalendar calendar = calendars.of(guide.value(), place);
            calendar.rows().forEach(row -> shown.add(row.entry().id()));
            strips.block(guide.value().title(), calendar, origin).ifPresent(strip -> {
                blocks.add(strip);
                if (calendar.underPlastic() && calendar.hasEstimates()) {
                    blocks.add(paragraph(register.say("weeks.estimate.plastic")));
                }
                blocks.add(new Block.Downloads(List.of(new Block.Download(CalendarDownloads.name(place,
                        guide.value()), register.say("book.weeks.file", guide.value().title()))), origin));
            });
        }
        GuideCalendar all = calendars.ofAll(place);
        strips.block(register.say("book.weeks.others"), new GuideCalendar(place, false, all.rows().stream()
                .filter(row -> !shown.contains(row.entry().id())).toList()), origin).ifPresent(blocks::add);
        return blocks;
    }

    /**
     * Week by week what begins and what is usual; what only goes on is left to the strips, as it would be the
     * same long list in every week.
     */
    private Optional<Block> weeks(GuideCalendar calendar) {
        List<List<List<Run>>> rows = new ArrayList<>();
        Set<List<Object>> before = Set.of();
        for (GuideCalendar.Week week : calendar.weeks(register.base().edition().value().year())) {
            Line line = Line.of();
            for (GuideCalendar.Thing thing : week.things()) {
                if (!before.contains(known(thing)) && thing.phase() != CalendarWeek.Phase.LATE) {
                    line.plain(line.isEmpty() ? "" : " · ");
                    thing(thing, line);
                }
            }
            before = week.things().stream().map(WeeksPages::known).collect(Collectors.toSet());
            if (!line.isEmpty()) {
                CalendarWeek days = week.week();
                rows.add(List.of(List.of(Run.strong(register.say("book.weeks.week",
                        days.monday().get(IsoFields.WEEK_OF_WEEK_BASED_YEAR))), Run.plain(" "
                        + register.say("book.weeks.from", register.phrases().day(
                                java.time.MonthDay.from(days.monday()))))), line.runs()));
            }
        }
        return rows.isEmpty() ? Optional.empty() : Optional.of(new Block.Grid(
                register.say("book.weeks.caption"), List.of(head("book.weeks.column"),
                head("book.weeks.expected")), rows, origin));
    }

    /** What tells it from all others of the same calendar, in which an entry has one row. */
    private static List<Object> known(GuideCalendar.Thing thing) {
        return List.of(thing.row().entry().id(), thing.event(), thing.phase());
    }

    private void thing(GuideCalendar.Thing thing, Line line) {
        String id = thing.row().entry().id();
        line.strong(register.name(id));
        line.plain(": " + (thing.event().isEmpty() ? register.say("book.weeks.begin")
                : thing.event().get() + ", " + register.phrases().word("book.weeks", thing.phase())));
    }

    private List<Run> head(String key) {
        return List.of(Run.strong(register.say(key)));
    }
}
