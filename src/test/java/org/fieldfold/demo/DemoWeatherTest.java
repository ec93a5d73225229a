package org.fieldfold.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/**
 * The stations' files in the demo base are what the generator writes. To write them anew:
 * {@code mvn test -Dtest=DemoWeatherTest -Dfieldfold.refresh=true}.
 */
class DemoWeatherTest {
    @Test
    void theFilesAreWhatTheGeneratorWrites() throws IOException {
        for (DemoWeather station : DemoWeather.STATIONS) {
            Path file = Path.of("content/weather/" + station.station() + ".csv");
            if (Boolean.getBoolean("fieldfold.refresh")) {
                Files.createDirectories(file.getParent());
                Files.writeString(file, station.csv());
            }
            assertEquals(station.csv(), Files.readString(file), file + " is not what the generator writes");
        }
    }

    @Test
    void aCoolTemperateRegionHasWarmSummersAndFrost() {
        for (DemoWeather station : DemoWeather.STATIONS) {
            double warmest = -99;
            double coldest = 99;
            for (String row : station.csv().lines().skip(1).toList()) {
                String[] cells = row.split(",");
                double min = Double.parseDouble(cells[1]);
                double max = Double.parseDouble(cells[2]);
                assertTrue(min < max, row);
                warmest = Math.max(warmest, max);
                coldest = Math.min(coldest, min);
            }
            assertTrue(warmest > 25 && warmest < 45, station.station() + " " + warmest);
            assertTrue(coldest < -5 && coldest > -35, station.station() + " " + coldest);
        }
    }
}
