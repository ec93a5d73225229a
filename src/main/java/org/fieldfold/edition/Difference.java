package org.fieldfold.edition;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * One fact of a record that was one thing and is another.
 *
 * @param key of the record under which it stands, as in {@code thresholds}
 * @param item the item of the list there, before and after; both empty when there is no list
 * @param below the keys from there to the fact; empty when the item or the whole key came or went
 * @param before empty for what is new
 * @param after empty for what is gone
 */
record Difference(String key, Item item, List<String> below, Optional<Fact> before, Optional<Fact> after) {
    /** Stands behind the keys of a list whose items changed places. */
    static final String ORDER = "order";

    Difference {
        below = List.copyOf(below);
    }

    /** An item of a list, on either side. */
    record Item(Optional<Fact> before, Optional<Fact> after) {
        static final Item NONE = new Item(Optional.empty(), Optional.empty());

        boolean isNone() {
            return equals(NONE);
        }

        /** The newer side, or the older one where it is gone. */
        Fact.Group facts() {
            return after.or(() -> before).filter(Fact.Group.class::isInstance).map(Fact.Group.class::cast)
                    .orElse(Fact.group());
        }
    }

    /** The last key of its path. */
    String last() {
        return below.isEmpty() ? key : below.get(below.size() - 1);
    }

    boolean isOrder() {
        return last().equals(ORDER);
    }

    /** Every difference between two sets of facts about one thing, in the order of their keys. */
    static List<Difference> between(Fact.Group before, Fact.Group after) {
        List<Difference> found = new ArrayList<>();
        TreeSet<String> keys = new TreeSet<>(before.facts().keySet());
        keys.addAll(after.facts().keySet());
        for (String key : keys) {
            Optional<Fact> was = before.get(key);
            Optional<Fact> is = after.get(key);
            if (!was.equals(is)) {
                if (isList(was) && isList(is)) {
                    list(key, before.items(key), after.items(key), found);
                } else {
                    walk(new Place(key, Item.NONE, List.of()), was, is, found);
                }
            }
        }
        return found;
    }

    /** Absent, or a list. */
    private static boolean isList(Optional<Fact> fact) {
        return fact.isEmpty() || fact.get() instanceof Fact.Items;
    }

    private static void list(String key, List<Fact> before, List<Fact> after, List<Difference> found) {
        Pairing pairing = Pairing.of(before, after);
        for (Pairing.Pair pair : pairing.pairs()) {
            Item item = new Item(pair.before(), pair.after());
            walk(new Place(key, item, List.of()), pair.before(), pair.after(), found);
        }
        if (pairing.reordered()) {
            found.add(new Difference(key, Item.NONE, List.of(ORDER), Optional.of(new Fact.Items(before)),
                    Optional.of(new Fact.Items(after))));
        }
    }

    private static void walk(Place place, Optional<Fact> before, Optional<Fact> after,
            List<Difference> found) {
        if (before.equals(after)) {
            return;
        }
        if (before.isPresent() && after.isPresent() && before.get() instanceof Fact.Group was
                && after.get() instanceof Fact.Group is && !(isRange(was) && isRange(is))) {
            TreeSet<String> keys = new TreeSet<>(was.facts().keySet());
            keys.addAll(is.facts().keySet());
            keys.forEach(key -> walk(place.below(key), was.get(key), is.get(key), found));
        } else if (holdsGroups(before) && holdsGroups(after)) {
            Pairing pairing = Pairing.of(items(before), items(after));
            for (Pairing.Pair pair : pairing.pairs()) {
                walk(place.below(pair.label()), pair.before(), pair.after(), found);
            }
            if (pairing.reordered()) {
                found.add(place.below(ORDER).difference(before, after));
            }
        } else {
            found.add(place.difference(before, after));
        }
    }

    /** From one number to another: one fact, though it has two keys. */
    static boolean isRange(Fact.Group group) {
        return !group.facts().isEmpty() && List.of("from", "to").containsAll(group.facts().keySet());
    }

    private static boolean holdsGroups(Optional<Fact> fact) {
        return fact.isPresent() && fact.get() instanceof Fact.Items items
                && items.facts().stream().allMatch(Fact.Group.class::isInstance);
    }

    private static List<Fact> items(Optional<Fact> fact) {
        return fact.map(list -> ((Fact.Items) list).facts()).orElse(List.of());
    }

    /** Where a walk has come to. */
    private record Place(String key, Item item, List<String> path) {
        Place below(String step) {
            List<String> longer = new ArrayList<>(path);
            longer.add(step);
            return new Place(key, item, longer);
        }

        Difference difference(Optional<Fact> before, Optional<Fact> after) {
            return new Difference(key, item, path, before, after);
        }
    }
}
