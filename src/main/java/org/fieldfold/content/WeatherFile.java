package org.fieldfold.content;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.fieldfold.scouting.degreeday.TemperatureRecord;
import org.fieldfold.scouting.degreeday.TemperatureUnit;
import org.fieldfold.source.Finding;
import org.fieldfold.source.SourceFile;
import org.fieldfold.source.Span;

/**
 * The temperatures of one station, from {@code weather/<station>.csv}: rows of date, minimum and maximum in
 * °C.
 *
 * @param station the file's name without its ending
 * @param temperatures of the rows that were understood, in °C
 * @param findings about the others, sorted
 */
public record WeatherFile(String station, TemperatureRecord temperatures, List<Finding> findings) {
    public WeatherFile {
        findings = List.copyOf(findings);
    }

    /**
     * Reads one file.
     *
     * @throws IOException when it cannot be read; never for what is in it
     */
    public static WeatherFile read(Path file) throws IOException {
        Path name = file.toAbsolutePath().normalize();
        String shown = name.getNameCount() < 3 ? name.toString()
                : name.subpath(name.getNameCount() - 3, name.getNameCount()).toString().replace('\\', '/');
        String station = name.getFileName().toString().replaceAll("\\.csv$", "");
        int limit = FileKind.WEATHER.limit().bytes();
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(limit + 1);
            List<Finding> findings = new ArrayList<>();
            if (bytes.length > limit) {
                findings.add(FormRule.FILE_TOO_LARGE.at(Span.startOf(new SourceFile(shown, "")),
                        "expected at most "
                        + FileKind.WEATHER.limit().mebibytes() + " MiB, found more", "split the file"));
                bytes = new byte[0];
            }
            SourceFile source = Decoding.decode(shown, bytes, findings);
            WeatherRows rows = new WeatherRows(source);
            findings.addAll(rows.findings());
            return new WeatherFile(station, new TemperatureRecord(TemperatureUnit.CELSIUS, rows.days()),
                    findings.stream().sorted().toList());
        }
    }

    /**
     * Reads the file of a station in a content base.
     *
     * @throws IOException when there is none, or it cannot be read
     */
    public static WeatherFile ofStation(Path contentFolder, String station) throws IOException {
        return read(contentFolder.resolve("weather").resolve(station + ".csv"));
    }
}
