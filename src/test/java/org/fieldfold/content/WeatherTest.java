package org.fieldfold.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WeatherTest {
    @TempDir
    Path temporary;

    @Test
    void aStationIsReadOnDemand() throws IOException {
        Base base = new Base(temporary).with("weather/lowbridge.csv",
                "date,min,max\r\n2026-04-30,-1.5,12\r\n2026-05-01,3,.5e\r\n"
                .replace(".5e", "17.25"));
        WeatherFile weather = WeatherFile.ofStation(base.folder(), "lowbridge");
        assertEquals("lowbridge", weather.station());
        assertEquals(List.of(), weather.findings());
        assertEquals(-1.5, weather.temperatures().day(LocalDate.of(2026, 4, 30)).orElseThrow().min());
        assertEquals(17.25, weather.temperatures().day(LocalDate.of(2026, 5, 1)).orElseThrow().max());
        assertThrows(IOException.class, () -> WeatherFile.ofStation(base.folder(), "highbridge"));
    }

    @Test
    void badRowsAreFoundAndLeftOut() throws IOException {
        Base base = new Base(temporary).with("weather/w.csv", """
                day,min,max
                2026-04-30,1,12
                2026-04-30,1,12
                2026-04-31,1,12
                2026-05-01,12,1
                2026-05-02,1
                2026-05-03,1,2,3
                2026-05-04,4,5 °C
                2026-05-05,40,130
                30.4.2026,1,2

                2026-05-06,1,2
                """);
        WeatherFile weather = WeatherFile.ofStation(base.folder(), "w");
        assertEquals(List.of(
                "1:1 bad-weather-row expected the heading date,min,max, found 'day,min,max'",
                "3:1 bad-weather-row expected a day later than that of the row above, found 2026-04-30",
                "4:1 bad-date expected a date as in 2026-11-30, found '2026-04-31'",
                "5:12 bad-weather-row expected a minimum not above the maximum, found 12.0 and 1.0",
                "6:1 bad-weather-row expected three values, date, minimum and maximum, found '2026-05-02,1'",
                "7:1 bad-weather-row expected three values, date, minimum and maximum, found "
                        + "'2026-05-03,1,2,3'",
                "8:14 bad-number expected a number, found '5 °C'",
                "9:15 out-of-range expected a number from -90 to 60, found 130",
                "10:1 bad-date expected a date as in 2026-11-30, found '30.4.2026'"),
                weather.findings().stream().map(finding -> finding.span().line() + ":" + finding.span()
                        .column() + " "
                        + finding.rule() + " " + finding.message()).toList());
        assertEquals(List.of(2026), weather.temperatures().years());
        assertEquals(LocalDate.of(2026, 5, 6), weather.temperatures().last().orElseThrow());
        assertEquals(weather.findings(), base.load().findings());
    }
}
