package org.fieldfold.manuscript;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.fieldfold.calendar.Expected;
import org.fieldfold.calendar.Place;
import org.fieldfold.entry.Station;
import org.fieldfold.scouting.calendar.CalendarLine;
import org.fieldfold.scouting.calendar.EventDates;

/** What is said about days in a calendar: always that they are estimates, from where, and from which years. */
record CalendarWords(Phrases phrases) {
    /** Where the estimates come from, as a sentence; empty without stations. */
    String estimate(Place place, boolean underPlastic) {
        if (place.stations().isEmpty()) {
            return "";
        }
        String years = phrases.say("weeks.years", place.firstYear(), place.lastYear());
        String from = place.isOneStation()
                ? phrases.say("weeks.estimate", place.stations().get(0).name(), years)
                : phrases.say("weeks.estimate.region", place.stations().stream().map(Station::name)
                        .collect(Collectors.joining(", ")), years);
        return underPlastic ? from + " " + phrases.say("weeks.estimate.plastic") : from;
    }

    /** The three dates, as far as there are such, in one line. */
    String dates(EventDates dates) {
        if (dates.median().isEmpty()) {
            return phrases.say(dates.reached() == 0 ? "weeks.never" : "weeks.seldom", dates.reached(),
                    dates.years());
        }
        List<String> parts = new ArrayList<>();
        parts.add(phrases.say("weeks.usual", phrases.day(dates.median().get())));
        dates.early().ifPresent(day -> parts.add(phrases.say(dates.fewYears() ? "weeks.first" : "weeks.early",
                phrases.day(day))));
        if (dates.late().isPresent()) {
            parts.add(phrases.say(dates.fewYears() ? "weeks.last" : "weeks.late",
                    phrases.day(dates.late().get())));
        } else {
            parts.add(phrases.say("weeks.late.never"));
        }
        return String.join("; ", parts);
    }

    /** How many years the dates rest on, and how many were left out. */
    String years(EventDates dates) {
        String reached = dates.notReached() == 0 ? phrases.say("weeks.reached.all", dates.years())
                : phrases.say("weeks.reached", dates.reached(), dates.years());
        return dates.unknown() == 0 ? reached : reached + " "
                + phrases.count("weeks.left-out", dates.unknown(), dates.unknown());
    }

    /** A bar or a window from its first day to its last. */
    String span(CalendarLine line) {
        return phrases.say("weeks.span", phrases.day(line.first()), phrases.day(line.last()));
    }

    /** The same in few letters. */
    String shortSpan(CalendarLine line) {
        return phrases.say("weeks.span.short", phrases.shortDay(line.first()),
                phrases.shortDay(line.last()));
    }

    /** A third of a month, as people say it: early June. */
    String third(MonthDay day) {
        String part = day.getDayOfMonth() <= 10 ? "early" : day.getDayOfMonth() <= 20 ? "mid" : "late";
        return phrases.say("weeks.third." + part, phrases.say("month." + day.getMonthValue()));
    }

    /** Why an event has no date; empty when it has one. */
    String undated(Expected expected) {
        return expected.dates().isPresent() ? "" : expected.waitsForBiofix()
                ? phrases.say("weeks.biofix", expected.event().biofix().orElse("–"))
                : phrases.say("weeks.no-station");
    }
}
