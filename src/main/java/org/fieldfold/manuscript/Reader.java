package org.fieldfold.manuscript;

import java.util.List;
import org.fieldfold.entry.Audience;
import org.fieldfold.entry.Text;
import org.fieldfold.entry.Threshold;
import org.fieldfold.prose.Run;

/**
 * Whom something is written for and how much room there is.
 *
 * @param crops ids of the crops that matter here; empty for all
 * @param pocket whether short forms are wanted
 */
record Reader(Audience audience, List<String> crops, boolean pocket, Phrases phrases) {
    List<Run> read(Text text) {
        return pocket || audience == Audience.GARDEN ? text.pocketFor(audience).line() : text.full().line();
    }

    boolean concerns(Threshold threshold) {
        return audience.among(threshold.audiences())
                && (crops.isEmpty() || threshold.crop().isEmpty() || crops.contains(threshold.crop().get()));
    }

    String say(String key, Object... parts) {
        return phrases.say(key, parts);
    }
}
