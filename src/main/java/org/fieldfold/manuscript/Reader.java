package org.fieldfold.manuscript;

import java.util.List;
import java.util.stream.Collectors;
import org.fieldfold.entry.Audience;
import org.fieldfold.entry.Control;
import org.fieldfold.entry.PestEntry;
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

    /** The measures of a tier that these readers are told: the handbook tells everybody everything. */
    List<Control> controls(PestEntry entry, int tier) {
        return pocket ? entry.controlsFor(audience, tier)
                : entry.controls().stream().filter(control -> control.tier() == tier).toList();
    }

    /** For whom something is meant, where the handbook has to say so; empty when it is for everybody. */
    String only(List<Audience> audiences) {
        return Phrases.capital(pocket || audiences.isEmpty() ? "" : audiences.stream().sorted()
                .map(one -> phrases.word("book.for", one)).collect(Collectors.joining(", ")));
    }

    String say(String key, Object... parts) {
        return phrases.say(key, parts);
    }
}
