package org.fieldfold.edition;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Which item of a list was which item of the same list before. What names itself is known by its name; of
 * the rest those that are the same go together, and then, in their order, those that are of one kind.
 */
final class Pairing {
    /** Keys by which an item is known, where it has them. A list of measures is known by what is used. */
    private static final List<String> NAMES = List.of("id", "entry", "stage", "part", "sign", "event", "path",
            "tier", "material", "practice", "enemy", "from");

    /**
     * Two that belong together, or one that came or went.
     *
     * @param label what the item is called
     */
    record Pair(String label, Optional<Fact> before, Optional<Fact> after) {
    }

    private record Match(int before, int after) {
    }

    private final List<Pair> pairs;
    private final boolean reordered;

    private Pairing(List<Pair> pairs, boolean reordered) {
        this.pairs = pairs;
        this.reordered = reordered;
    }

    static Pairing of(List<Fact> before, List<Fact> after) {
        List<Match> matches = new ArrayList<>();
        List<Integer> left = indices(before);
        List<Integer> right = indices(after);
        match(left, right, matches, (i, k) -> before.get(i).equals(after.get(k)));
        match(left, right, matches, (i, k) -> sameKind(before.get(i), after.get(k)));
        List<Pair> pairs = new ArrayList<>();
        matches.forEach(match -> pairs.add(new Pair(label(after.get(match.after()), match.after()),
                Optional.of(before.get(match.before())), Optional.of(after.get(match.after())))));
        left.forEach(i -> pairs.add(new Pair(label(before.get(i), i), Optional.of(before.get(i)),
                Optional.empty())));
        right.forEach(k -> pairs.add(new Pair(label(after.get(k), k), Optional.empty(),
                Optional.of(after.get(k)))));
        List<Integer> places = matches.stream().sorted(Comparator.comparing(Match::before)).map(Match::after)
                .toList();
        return new Pairing(List.copyOf(pairs), !places.stream().sorted().toList().equals(places));
    }

    /** All items, those that stayed first. */
    List<Pair> pairs() {
        return pairs;
    }

    /** Whether those that stayed stand in another order. */
    boolean reordered() {
        return reordered;
    }

    private interface Like {
        boolean test(int before, int after);
    }

    private static List<Integer> indices(List<Fact> facts) {
        List<Integer> indices = new ArrayList<>();
        for (int i = 0; i < facts.size(); i++) {
            indices.add(i);
        }
        return indices;
    }

    private static void match(List<Integer> left, List<Integer> right, List<Match> matches, Like like) {
        left.removeIf(i -> {
            Optional<Integer> found = right.stream().filter(k -> like.test(i, k)).findFirst();
            found.ifPresent(k -> {
                matches.add(new Match(i, k));
                right.remove(k);
            });
            return found.isPresent();
        });
    }

    /** Words are never each other; groups are when they are called the same. */
    private static boolean sameKind(Fact one, Fact other) {
        return one instanceof Fact.Group a && other instanceof Fact.Group b && names(a).equals(names(b));
    }

    private static String names(Fact.Group item) {
        List<String> keys = item.get("id").isPresent() ? List.of("id") : NAMES;
        return keys.stream().map(key -> item.word(key).map(word -> key + "=" + word).orElse(""))
                .collect(Collectors.joining(" "));
    }

    private static String label(Fact item, int index) {
        if (item instanceof Fact.Word word) {
            return word.text();
        }
        return item instanceof Fact.Group group ? NAMES.stream().filter(key -> !key.equals("tier"))
                .flatMap(key -> group.word(key).stream()).findFirst().orElse("no. " + (index + 1))
                : "no. " + (index + 1);
    }
}
