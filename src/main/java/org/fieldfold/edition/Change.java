package org.fieldfold.edition;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * One thing that is not as it was, in the trade's words.
 *
 * @param kind of the record, as in {@code pests}
 * @param id of the record
 * @param name what the record is called
 * @param thing what of it changed, as in {@code action threshold}; empty for the record as a whole
 * @param about which one, where there are several, as in {@code onion, after that}; may be empty
 * @param item id of the material that is used, or of the item itself; may be empty
 * @param parts what changed in it, each once
 */
public record Change(ChangeGroup group, String kind, String id, String name, String thing, String about,
        String item, List<Part> parts) {
    /**
     * One fact.
     *
     * @param what the fact, as in {@code source}; empty when the thing itself is meant
     * @param before in words; empty for what is new
     * @param after in words; empty for what is gone; where both are empty, {@code what} says it all
     * @param unit what stands behind both, as in {@code thrips per leaf}; may be empty
     */
    public record Part(String what, Optional<String> before, Optional<String> after, String unit) {
        String sentence() {
            String lead = what.isEmpty() ? "" : what + " ";
            String tail = unit.isEmpty() ? "" : " " + unit;
            if (before.isPresent() && after.isPresent()) {
                return lead + before.get() + " -> " + after.get() + tail;
            }
            if (before.isEmpty() && after.isEmpty()) {
                return what;
            }
            return lead + (after.isPresent() ? "added" + shown(after.get(), tail)
                    : "withdrawn" + shown(before.orElse(""), tail));
        }

        private static String shown(String words, String tail) {
            return words.isEmpty() ? "" : ": " + words + tail;
        }
    }

    public Change {
        parts = List.copyOf(parts);
    }

    /** Without the name, as in {@code action threshold 3 -> 1 thrips per leaf; source changed}. */
    public String what() {
        String rest = parts.stream().map(Part::sentence).collect(Collectors.joining("; "));
        String head = thing.isEmpty() ? "" : thing + (about.isEmpty() ? "" : " (" + about + ")") + " ";
        return head + rest;
    }

    /** The whole line. */
    public String sentence() {
        return name + ": " + what();
    }
}
