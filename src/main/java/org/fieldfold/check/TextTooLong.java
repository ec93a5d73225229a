package org.fieldfold.check;

import java.util.Map;
import java.util.function.Consumer;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.source.Finding;

/** A pocket text is short enough for a panel 7 cm wide. */
final class TextTooLong implements TextRule {
    @Override
    public String id() {
        return "text-too-long";
    }

    @Override
    public void check(Facts.Written text, ContentBase base, Consumer<Finding> found) {
        int limit = LIMITS.getOrDefault(text.key(), OTHER);
        int length = text.words().codePointCount(0, text.words().length());
        if (text.forPocket() && length > limit) {
            found.accept(Finding.error(text.span(), id(), "expected at most " + limit
                    + " characters in '" + text.key() + "' (" + text.length() + "), found " + length,
                    text.length().equals("line") ? "shorten it"
                    : "shorten it; the longer form belongs under 'handbook:'"));
        }
    }

    /** Characters a pocket text may have, by the key it stands under. */
    private static final Map<String, Integer> LIMITS = Map.ofEntries(Map.entry("looks", 110),
            Map.entry("found", 60), Map.entry("mark", 130), Map.entry("text", 90), Map.entry("how", 140),
            Map.entry("measure", 90), Map.entry("when", 60), Map.entry("bees", 110), Map.entry("note", 140),
            Map.entry("notes", 140),
            Map.entry("cautions", 160), Map.entry("year", 130), Map.entry("reason", 140),
            Map.entry("scouting", 140), Map.entry("caption", 40), Map.entry("counted", 60),
            Map.entry("purpose", 70),
            Map.entry("title", 60), Map.entry("alt", 400));
    private static final int OTHER = 200;
}
