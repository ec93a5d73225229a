package org.fieldfold.scouting.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.component.VEvent;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.StringLength;

/** RFC 5545 by its own words, and read back by a reader that is not ours. */
class CalendarFileProperties {
    private static final LocalDate STAMP = LocalDate.of(2027, 1, 15);

    private static CalendarFile file(String summary, String description) {
        return new CalendarFile("-//Example Extension//Scouting calendar//EN", STAMP, List.of(
                new CalendarFile.Entry("moth-2027@office.example", LocalDate.of(2027, 4, 28),
                        LocalDate.of(2027, 5, 20), summary, description, List.of())));
    }

    // section 3.1: no line longer than 75 octets without its break; section 3.3.11: escapes
    @Property(tries = 50)
    void anotherReaderReadsWhatWasWritten(
            @ForAll @StringLength(min = 1, max = 200) @CharRange(from = ' ', to = '~')
            @CharRange(from = '¡', to = 'ɏ') @CharRange(from = '一', to = '丏') String words)
            throws java.io.IOException, ParserException {
        // this reader takes the end of an escaped backslash and a letter n, or a break, for one escape
        Assume.that(!(words + "\n").matches("(?s).*\\\\[nN\n].*"));
        String summary = "x" + words + "x";
        // the reader drops blanks at the beginning of a value, hence a letter there
        String description = "x" + words + "\n" + words + ".";
        String text = file(summary, description).text();
        for (String line : text.split("\r\n")) {
            assertTrue(line.getBytes(StandardCharsets.UTF_8).length <= 75, line);
        }
        Calendar calendar = new CalendarBuilder().build(new StringReader(text));
        VEvent event = calendar.<VEvent>getComponents(Component.VEVENT).get(0);
        assertEquals(summary, event.getSummary().getValue());
        assertEquals(description, event.getDescription().getValue());
        assertEquals(LocalDate.of(2027, 4, 28), event.getDateTimeStart().getDate());
        assertEquals(LocalDate.of(2027, 5, 21), event.getDateTimeEnd().getDate());
        assertTrue(calendar.validate().getEntries().isEmpty(), calendar.validate().toString());
    }
}
