package org.fieldfold.entry;

import java.util.Optional;
import org.fieldfold.prose.Prose;

/**
 * A text in the lengths it is needed in. In a file it is either one string, or a map with these keys.
 *
 * @param pocket short: what the foldout prints
 * @param handbook longer, where there is more to say than the pocket holds
 * @param garden in plainer words, for home gardens
 */
public record Text(
        @Describe("short form, printed in the pocket guide: short sentences, the verb first") Prose pocket,
        @Describe("longer form for the handbook, Markdown") Optional<Prose> handbook,
        @Describe("the same for home gardens, in plainer words") Optional<Prose> garden) {
    public static Text of(String words) {
        return new Text(Prose.plain(words), Optional.empty(), Optional.empty());
    }

    /** What a pocket guide for these readers prints. */
    public Prose pocketFor(Audience audience) {
        return audience == Audience.GARDEN ? garden.orElse(pocket) : pocket;
    }

    /** What the handbook shows: the long form, or the short one where there is no other. */
    public Prose full() {
        return handbook.orElse(pocket);
    }
}
