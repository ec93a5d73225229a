package org.fieldfold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.util.CompatibilityHints;
import org.fieldfold.calendar.Calendars;
import org.fieldfold.calendar.Expected;
import org.fieldfold.calendar.GuideCalendar;
import org.fieldfold.content.BaseLoader;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.manuscript.Phrases;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The offices' calendar files of the shipped base, read by a reader that is not ours, in its strict mode. */
class OfficeCalendarsTest {
    private static ContentBase base;
    private static Map<String, byte[]> files;
    private static final Map<String, Calendar> READ = new LinkedHashMap<>();

    @BeforeAll
    static void writeAndRead() throws Exception {
        base = BaseLoader.load(Path.of("content")).base().orElseThrow();
        files = OfficeCalendars.in(base, new Calendars(base), Phrases.in("en"));
        CompatibilityHints.setHintEnabled(CompatibilityHints.KEY_RELAXED_PARSING, false);
        CompatibilityHints.setHintEnabled(CompatibilityHints.KEY_RELAXED_VALIDATION, false);
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            READ.put(file.getKey(), new CalendarBuilder().build(new StringReader(
                    new String(file.getValue(), StandardCharsets.UTF_8))));
        }
    }

    @Test
    void everyOfficeHasOneForEachGuideThatItHandsOut() {
        assertTrue(files.containsKey("offices/hazel-ridge/onion-family.en.ics"), files.keySet().toString());
        assertEquals(base.offices().values().stream().filter(office ->
                office.value().languages().contains("en")).mapToInt(office -> office.value().guides().isEmpty()
                ? base.guides().size() : office.value().guides().size()).sum(), files.size());
    }

    @Test
    void allAreValidAndWholeDaysWithoutAlarms() {
        READ.forEach((path, calendar) -> {
            assertFalse(calendar.validate().hasErrors(), path + calendar.validate());
            assertEquals(calendar.getComponents().size(), events(calendar).size(), path);
            for (VEvent event : events(calendar)) {
                assertTrue(event.getDateTimeStart().getDate() instanceof LocalDate, path);
                assertTrue(event.getAlarms().isEmpty(), path);
                assertTrue(event.getDescription().getValue().contains("Demonstration, not advice"), path);
                assertFalse(event.getCategories().isEmpty(), path);
            }
        });
    }

    @Test
    void idsDifferWithinAFileAndStampsAreTheEditionsDay() {
        READ.forEach((path, calendar) -> {
            TreeSet<String> ids = new TreeSet<>();
            for (VEvent event : events(calendar)) {
                assertTrue(ids.add(event.getUid().map(Uid::getValue).orElseThrow()), path + ids);
                assertEquals("20270115T000000Z", event.<DtStamp>getDateTimeStamp().getValue(), path);
            }
        });
        assertTrue(new String(files.get("offices/hazel-ridge/onion-family.en.ics"), StandardCharsets.UTF_8)
                .replace("\r\n ", "").contains(
                        "UID:onion-family.onion-maggot.event-1.hazel-ridge.2027@handbook.marrowvalley.example"));
    }

    @Test
    void theDaysAreThoseOfTheStation() {
        Calendars calendars = new Calendars(base);
        GuideCalendar onions = calendars.of(base.guides().get("onion-family").value(),
                calendars.near(base.offices().get("hazel-ridge").value()));
        Expected flight = onions.rows().get(1).events().get(0);
        VEvent event = events(READ.get("offices/hazel-ridge/onion-family.en.ics")).stream()
                .filter(one -> one.getSummary().getValue().equals("Onion maggot: first flight")).findFirst()
                .orElseThrow();
        assertEquals(flight.bar().orElseThrow().first().atYear(2027), event.getDateTimeStart().getDate());
        assertEquals(flight.bar().orElseThrow().last().atYear(2027).plusDays(1),
                event.getDateTimeEnd().getDate());
        String said = event.getDescription().getValue();
        for (String part : List.of("Estimate from temperatures at Hazel Ridge, 2006 to 2025.",
                "It came in all 20 years.", "in the row decides")) {
            assertTrue(said.contains(part), said);
        }
    }

    @Test
    void linesEndInCarriageReturnAndLineFeed() {
        files.values().forEach(bytes -> {
            String text = new String(bytes, StandardCharsets.UTF_8);
            assertEquals(text.chars().filter(c -> c == '\n').count(), text.split("\r\n", -1).length - 1);
        });
    }

    private static List<VEvent> events(Calendar calendar) {
        return calendar.getComponents(Component.VEVENT);
    }
}
