package org.fieldfold.scouting.degreeday;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;

/** The daily record of Seattle, 2012 and 2013, in °C; source and licence stand beside the file. */
public final class Seattle {
    private Seattle() {
    }

    public static List<DayTemperature> days() {
        try (InputStream in = Seattle.class.getResourceAsStream("seattle-2012-2013.csv")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().skip(1).map(Seattle::day)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static DayTemperature day(String line) {
        String[] cells = line.split(",");
        return new DayTemperature(LocalDate.parse(cells[0]), Double.parseDouble(cells[3]),
                Double.parseDouble(cells[2]));
    }

    public static TemperatureRecord record() {
        return new TemperatureRecord(TemperatureUnit.CELSIUS, days());
    }
}
