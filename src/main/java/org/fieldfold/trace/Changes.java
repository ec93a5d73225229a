package org.fieldfold.trace;

import java.util.Map;
import java.util.Set;

/**
 * How one state of a base differs from an earlier one.
 *
 * @param isEverything whether nothing counts as the same
 * @param byPart the ids of records that changed, came or went
 * @param names the parts in which some came or went, or stand in another order
 */
record Changes(boolean isEverything, Map<String, Set<String>> byPart, Set<String> names) {
    static final Changes EVERYTHING = new Changes(true, Map.of(), Set.of());

    Set<String> records(String part) {
        return byPart.getOrDefault(part, Set.of());
    }

    boolean areNames(String part) {
        return names.contains(part);
    }
}
