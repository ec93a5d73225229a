package org.fieldfold.entry;

import java.util.Locale;
import org.fieldfold.scouting.degreeday.TemperatureRecord;

/**
 * A weather station, with the temperatures that it wrote down.
 *
 * @param id the file's name without its ending
 */
public record Station(String id, TemperatureRecord temperatures) {
    /** Its name in a sentence: {@code hazel-ridge} is Hazel Ridge. */
    public String name() {
        StringBuilder name = new StringBuilder();
        for (String word : id.split("-")) {
            if (!word.isEmpty()) {
                name.append(name.length() == 0 ? "" : " ")
                        .append(word.substring(0, 1).toUpperCase(Locale.ROOT)).append(word.substring(1));
            }
        }
        return name.toString();
    }
}
