package org.fieldfold.scouting.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** RFC 5545 by its own words, and read back by a reader that is not ours. */
class CalendarFileTest {
    private static final LocalDate STAMP = LocalDate.of(2027, 1, 15);

    private static CalendarFile file(String summary, String description) {
        return new CalendarFile("-//Example Extension//Scouting calendar//EN", STAMP, List.of(
                new CalendarFile.Entry("moth-2027@office.example", LocalDate.of(2027, 4, 28),
                        LocalDate.of(2027, 5, 20), summary, description, List.of("Apple", "a, b"))));
    }

    @Test
    void theWholeFile() {
        assertEquals("BEGIN:VCALENDAR\r\nVERSION:2.0\r\n"
                + "PRODID:-//Example Extension//Scouting calendar//EN\r\n"
                + "CALSCALE:GREGORIAN\r\nBEGIN:VEVENT\r\nUID:moth-2027@office.example\r\n"
                + "DTSTAMP:20270115T000000Z\r\nDTSTART;VALUE=DATE:20270428\r\nDTEND;VALUE=DATE:20270521\r\n"
                + "SUMMARY:Moths\\, first flight\r\nDESCRIPTION:An estimate\\;\\nlook anyway\r\n"
                + "CATEGORIES:Apple,a\\, b\r\nTRANSP:TRANSPARENT\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n",
                file("Moths, first flight", "An estimate;\nlook anyway").text());
    }

    @Test
    void nonsenseIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> file(" ", ""));
        assertThrows(IllegalArgumentException.class,
                () -> new CalendarFile.Entry("a", STAMP, STAMP.minusDays(1), "b", "", List.of()));
    }
}
