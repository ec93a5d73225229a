package org.fieldfold.content;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fieldfold.scouting.degreeday.DayTemperature;
import org.fieldfold.source.Finding;
import org.fieldfold.source.SourceFile;
import org.fieldfold.source.Span;

/** The rows of a weather file, read one by one; a row with a slip is left out, with a finding. */
final class WeatherRows {
    private static final String HEADING = "date,min,max";
    /**
     * Between the coldest and the hottest air ever measured on the ground there are fewer degrees than here.
     */
    private static final double COLDEST = -90;
    private static final double HOTTEST = 60;
    /** No station is as old, and a slip in a year must not ask for room for millions of days. */
    private static final int MOST_YEARS = 300;
    private static final int MOST_FINDINGS = 50;

    private final SourceFile file;
    private final List<Finding> findings = new ArrayList<>();
    private final List<DayTemperature> days = new ArrayList<>();
    private LocalDate last = LocalDate.MIN;

    WeatherRows(SourceFile file) {
        this.file = file;
        if (!file.lineText(1).strip().equals(HEADING)) {
            report(1, 0, file.lineText(1).length(), "expected the heading " + HEADING + ", found '"
                    + ScalarReading.cut(file.lineText(1)) + "'", "write " + HEADING + " in the first line");
        }
        for (int line = 2; line <= file.lineCount() && findings.size() < MOST_FINDINGS; line++) {
            String row = file.lineText(line);
            if (!row.isBlank()) {
                row(line, row);
            }
        }
    }

    List<Finding> findings() {
        return findings;
    }

    /** In the order of the file, each day once, in °C. */
    List<DayTemperature> days() {
        return days;
    }

    private void row(int line, String row) {
        int first = row.indexOf(',');
        int second = row.indexOf(',', first + 1);
        if (first < 0 || second < 0 || row.indexOf(',', second + 1) >= 0) {
            report(line, 0, row.length(), "expected three values, date, minimum and maximum, found '"
                    + ScalarReading.cut(row) + "'",
                            "write them as in 2026-05-01,4.5,17.2; leave a missing day out");
            return;
        }
        Optional<LocalDate> date = date(row.substring(0, first).strip());
        OptionalDouble min = degrees(line, row, first + 1, second);
        OptionalDouble max = degrees(line, row, second + 1, row.length());
        if (date.isEmpty()) {
            findings.add(FormRule.BAD_DATE.at(at(line, 0, first), "expected a date as in 2026-11-30, found '"
                    + ScalarReading.cut(row.substring(0, first)) + "'",
                            "write year-month-day of a day that exists"));
        } else if (!date.get().isAfter(last)) {
            report(line, 0, first, "expected a day later than that of the row above, found " + date.get(),
                    "sort the rows by date, each day once");
        } else if (first().map(day -> date.get().getYear() - day.getYear() >= MOST_YEARS).orElse(false)) {
            report(line, 0, first, "expected a day within " + MOST_YEARS + " years of the first one, found "
                    + date.get(), "mend the year");
        } else if (min.isPresent() && max.isPresent()) {
            last = date.get();
            add(line, row, new Day(date.get(), min.getAsDouble(), max.getAsDouble()), first);
        }
    }

    private Optional<LocalDate> first() {
        return days.stream().findFirst().map(DayTemperature::date);
    }

    private record Day(LocalDate date, double min, double max) {
    }

    private void add(int line, String row, Day day, int first) {
        if (day.min > day.max) {
            report(line, first + 1, row.length(), "expected a minimum not above the maximum, found " + day.min
                    + " and " + day.max, "exchange the two, or leave the day out");
        } else {
            days.add(new DayTemperature(day.date, day.min, day.max));
        }
    }

    private static Optional<LocalDate> date(String value) {
        if (value.length() != 10 || value.charAt(4) != '-' || value.charAt(7) != '-') {
            return Optional.empty();
        }
        try {
            return Optional.of(LocalDate.of(digits(value, 0, 4), digits(value, 5, 7), digits(value, 8, 10)));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private static int digits(String value, int from, int to) {
        int number = 0;
        for (int i = from; i < to; i++) {
            int digit = value.charAt(i) - '0';
            if (digit < 0 || digit > 9) {
                return -1;
            }
            number = number * 10 + digit;
        }
        return number;
    }

    private OptionalDouble degrees(int line, String row, int from, int to) {
        String value = row.substring(from, to).strip();
        OptionalDouble tenths = tenths(value);
        if (tenths.isPresent()) {
            return tenths;
        }
        YamlNode.Scalar scalar = new YamlNode.Scalar(value, YamlNode.Style.PLAIN, at(line, from, to));
        ScalarReading.Reading reading = ScalarReading.read(Shape.Plain.NUMBER, scalar,
                new Shape.Range(COLDEST, HOTTEST));
        reading.finding().ifPresent(findings::add);
        return reading.value().isPresent() ? OptionalDouble.of((double) reading.value().get())
                : OptionalDouble.empty();
    }

    /** The usual value, as in -3.5 or 12: read by hand, as there are tens of thousands in a base. */
    private static OptionalDouble tenths(String value) {
        int sign = value.startsWith("-") ? 1 : 0;
        int point = value.indexOf('.');
        int whole = point < 0 ? value.length() : point;
        if (whole <= sign || whole - sign > 2 || point >= 0 && value.length() != point + 2) {
            return OptionalDouble.empty();
        }
        int units = digits(value, sign, whole);
        int tenth = point < 0 ? 0 : digits(value, point + 1, value.length());
        double degrees = (units * 10 + tenth) / 10.0;
        return units < 0 || tenth < 0 || degrees > HOTTEST ? OptionalDouble.empty()
                : OptionalDouble.of(sign == 1 ? -degrees : degrees);
    }

    private Span at(int line, int from, int to) {
        int start = file.lineStart(line);
        return new Span(file, start + from, start + to);
    }

    private void report(int line, int from, int to, String message, String hint) {
        findings.add(FormRule.BAD_WEATHER_ROW.at(at(line, from, to), message, hint));
    }
}
