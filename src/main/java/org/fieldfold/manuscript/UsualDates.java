package org.fieldfold.manuscript;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fieldfold.calendar.Calendars;
import org.fieldfold.calendar.Expected;
import org.fieldfold.calendar.Place;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.UnderPlastic;
import org.fieldfold.prose.Run;
import org.fieldfold.source.Span;

/** Writes when an entry's events usually come: near each station, in the open and under plastic. */
final class UsualDates {
    private final Register register;
    private final Calendars calendars;
    private final CalendarWords words;
    private final Span origin;

    UsualDates(Register register, Calendars calendars, Placed<PestEntry> placed) {
        this.register = register;
        this.calendars = calendars;
        this.words = new CalendarWords(register.phrases());
        this.origin = placed.at("monitoring");
    }

    /** Nothing for an entry without degree-day events. */
    List<Block> blocks(PestEntry entry) {
        List<Place> places = calendars.places();
        List<Expected> events = calendars.events(entry, false, calendars.region());
        List<Block> blocks = new ArrayList<>();
        boolean dated = events.stream().anyMatch(event -> event.dates().isPresent());
        if (dated) {
            blocks.add(table(entry, places, events));
            blocks.add(paragraph(words.estimate(calendars.region(), false).isEmpty() ? ""
                    : register.say("book.weeks.estimate", places.size(), calendars.region().firstYear(),
                            calendars.region().lastYear()) + " " + register.say("weeks.field-decides")));
            plastic().ifPresent(sentence -> blocks.add(paragraph(sentence)));
        }
        for (Expected event : events) {
            if (event.waitsForBiofix()) {
                blocks.add(new Block.Paragraph(Line.of().strong(Phrases.capital(event.event().event()) + " ")
                        .plain(words.undated(event)).runs(), List.of(), origin));
            }
        }
        return blocks;
    }

    private Block table(PestEntry entry, List<Place> places, List<Expected> events) {
        List<List<Run>> header = new ArrayList<>();
        header.add(List.of(Run.strong(register.say("book.warmth.event"))));
        places.forEach(place -> header.add(List.of(Run.strong(place.stations().get(0).name())
                .to(Places.to(Places.weeks(place.stations().get(0).id()))))));
        List<List<List<Run>>> rows = new ArrayList<>();
        for (int i = 0; i < events.size(); i++) {
            if (events.get(i).dates().isPresent()) {
                String name = events.get(i).event().event();
                rows.add(row(name, i, false, entry, places));
                if (calendars.knowsPlastic()) {
                    rows.add(row(register.say("book.weeks.plastic", name), i, true, entry, places));
                }
            }
        }
        return new Block.Grid(register.say("book.weeks.usual-dates"), header, rows, origin);
    }

    private List<List<Run>> row(String name, int event, boolean underPlastic, PestEntry entry,
            List<Place> places) {
        List<List<Run>> row = new ArrayList<>();
        row.add(List.of(Run.strong(name)));
        for (Place place : places) {
            row.add(calendars.events(entry, underPlastic, place).get(event).dates().map(this::cell)
                    .orElse(List.of(Run.plain("–"))));
        }
        return row;
    }

    private List<Run> cell(org.fieldfold.scouting.calendar.EventDates dates) {
        Phrases phrases = register.phrases();
        if (dates.median().isEmpty()) {
            return List.of(Run.plain(words.dates(dates)));
        }
        Line line = Line.of().strong(phrases.day(dates.median().get()));
        line.plain(" (" + register.say("weeks.span.short", dates.early().map(phrases::shortDay).orElse("–"),
                dates.late().map(phrases::shortDay).orElse(register.say("book.weeks.never"))) + ")");
        if (dates.notReached() > 0 || dates.unknown() > 0) {
            line.plain(" " + words.years(dates));
        }
        return line.runs();
    }

    private Optional<String> plastic() {
        Optional<UnderPlastic> gain = register.base().edition().value().underPlastic();
        return gain.filter(known -> calendars.knowsPlastic()).map(known -> register.say(
                "book.weeks.plastic.why", gain(known.byDay(), known), gain(known.byNight(), known),
                register.phrases().day(known.from()), register.phrases().day(known.until())));
    }

    private String gain(double degrees, UnderPlastic known) {
        return register.phrases().measures().gain(degrees, known.unit().scale());
    }

    private Block paragraph(String sentence) {
        return new Block.Paragraph(List.of(Run.plain(sentence)), List.of(), origin);
    }
}
