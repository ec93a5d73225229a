package org.fieldfold.scouting.calendar;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * The calendar as a file that a telephone imports: iCalendar, RFC 5545. All entries are whole days and mark
 * nobody as busy.
 *
 * @param product who makes the file, as in {@code -//Example Extension//Scouting calendar//EN}
 * @param stamp the day on which the content was settled; never the clock's, so that the same content gives
 *     the same file
 */
public record CalendarFile(String product, LocalDate stamp, List<Entry> entries) {
    /** Octets in a line before it must be folded (RFC 5545, section 3.1). */
    private static final int FOLD = 75;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("uuuuMMdd", Locale.ROOT);

    public CalendarFile {
        entries = List.copyOf(entries);
    }

    /**
     * @param uid the same for the same entry in every issue of the file, different for every two entries
     * @param first first day
     * @param last last day, not before {@code first}
     * @param summary the line that the telephone shows
     * @param description what it shows when touched; may hold line breaks and may be empty
     * @param categories words to sort by
     */
    public record Entry(String uid, LocalDate first, LocalDate last, String summary, String description,
            List<String> categories) {
        public Entry {
            categories = List.copyOf(categories);
            if (uid.isBlank() || summary.isBlank()) {
                throw new IllegalArgumentException("a calendar entry needs a uid and a summary: " + uid + ", "
                        + summary);
            }
            if (last.isBefore(first)) {
                throw new IllegalArgumentException("an entry must not end before it begins: " + first + " to "
                        + last);
            }
        }
    }

    /** The whole file; lines end with CR LF. Written as UTF-8, type text/calendar. */
    public String text() {
        StringBuilder out = new StringBuilder();
        line(out, "BEGIN:VCALENDAR");
        line(out, "VERSION:2.0");
        line(out, "PRODID:" + escaped(product));
        line(out, "CALSCALE:GREGORIAN");
        for (Entry entry : entries) {
            line(out, "BEGIN:VEVENT");
            line(out, "UID:" + escaped(entry.uid()));
            line(out, "DTSTAMP:" + DAY.format(stamp) + "T000000Z");
            line(out, "DTSTART;VALUE=DATE:" + DAY.format(entry.first()));
            // the end is the first day that no longer belongs to it (section 3.6.1)
            line(out, "DTEND;VALUE=DATE:" + DAY.format(entry.last().plusDays(1)));
            line(out, "SUMMARY:" + escaped(entry.summary()));
            if (!entry.description().isEmpty()) {
                line(out, "DESCRIPTION:" + escaped(entry.description()));
            }
            if (!entry.categories().isEmpty()) {
                line(out, "CATEGORIES:" + entry.categories().stream().map(CalendarFile::escaped)
                        .collect(Collectors.joining(",")));
            }
            line(out, "TRANSP:TRANSPARENT");
            line(out, "END:VEVENT");
        }
        line(out, "END:VCALENDAR");
        return out.toString();
    }

    /**
     * Section 3.3.11: backslash, semicolon, comma and line break are escaped; other control characters go.
     */
    private static String escaped(String text) {
        StringBuilder safe = new StringBuilder();
        text.replace("\r\n", "\n").replace('\r', '\n').codePoints().forEach(c -> {
            if (c == '\n') {
                safe.append("\\n");
            } else if (c == '\\' || c == ';' || c == ',') {
                safe.append('\\').appendCodePoint(c);
            } else if (c >= ' ' && c != 0x7f || c == '\t') {
                safe.appendCodePoint(c);
            }
        });
        return safe.toString();
    }

    /** Folds at whole characters, so that no reader meets half of one. */
    private static void line(StringBuilder out, String line) {
        int octets = 0;
        for (int c : line.codePoints().toArray()) {
            String character = Character.toString(c);
            int size = character.getBytes(StandardCharsets.UTF_8).length;
            if (octets + size > FOLD) {
                out.append("\r\n ");
                octets = 1;
            }
            out.append(character);
            octets += size;
        }
        out.append("\r\n");
    }
}
