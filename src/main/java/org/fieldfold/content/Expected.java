package org.fieldfold.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.fieldfold.source.Span;

/** What a file must read as after an edit: the tree before it with one thing changed. */
final class Expected {
    private Expected() {
    }

    /** What stands one step below a node. */
    static Optional<YamlNode> below(YamlNode node, Object step) {
        if (node instanceof YamlNode.Items items) {
            return index(items, step).map(items.items()::get);
        }
        return node instanceof YamlNode.Pairs map ? pair(map, String.valueOf(step)).map(YamlNode.Pair::value)
                : Optional.empty();
    }

    /** The step to the value below a node in which an offset lies. */
    static Optional<Object> step(YamlNode node, int offset) {
        if (node instanceof YamlNode.Items items) {
            return IntStream.range(0, items.items().size()).filter(i -> holds(items.items().get(i), offset)).boxed()
                    .map(Object.class::cast).findFirst();
        }
        return node instanceof YamlNode.Pairs map ? map.pairs().stream().filter(pair -> holds(pair.value(), offset))
                .map(pair -> (Object) pair.key().value()).findFirst() : Optional.empty();
    }

    private static boolean holds(YamlNode node, int offset) {
        return node.span().start() <= offset && offset < node.span().end();
    }

    /** The position of an item, given as such or by its id. */
    static Optional<Integer> index(YamlNode.Items items, Object step) {
        for (int i = 0; i < items.items().size(); i++) {
            boolean named = step instanceof String id && Binder.idOf(items.items().get(i))
                    .filter(found -> found.value().equals(id)).isPresent();
            if (named || step.equals(i)) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    static Optional<YamlNode.Pair> pair(YamlNode.Pairs map, String key) {
        return map.pairs().stream().filter(pair -> pair.key().value().equals(key)).findFirst();
    }

    /**
     * The tree with another value at a path of keys and positions, or without it.
     *
     * @param value empty to take the key out; a key that is not there is added
     */
    static YamlNode replaced(YamlNode node, List<Object> path, Optional<String> value) {
        if (path.isEmpty()) {
            return scalar(value.orElse(""), node.span());
        }
        Object step = path.get(0);
        List<Object> rest = path.subList(1, path.size());
        if (node instanceof YamlNode.Items items) {
            List<YamlNode> copy = new ArrayList<>(items.items());
            int at = (Integer) step;
            copy.set(at, replaced(copy.get(at), rest, value));
            return new YamlNode.Items(copy, items.span());
        }
        YamlNode.Pairs map = (YamlNode.Pairs) node;
        List<YamlNode.Pair> copy = new ArrayList<>();
        for (YamlNode.Pair pair : map.pairs()) {
            if (!pair.key().value().equals(step)) {
                copy.add(pair);
            } else if (value.isPresent() || !rest.isEmpty()) {
                copy.add(new YamlNode.Pair(pair.key(), replaced(pair.value(), rest, value)));
            }
        }
        if (pair(map, String.valueOf(step)).isEmpty()) {
            copy.add(new YamlNode.Pair(scalar(String.valueOf(step), map.span()),
                    scalar(value.orElse(""), map.span())));
        }
        return new YamlNode.Pairs(copy, map.span());
    }

    private static YamlNode.Scalar scalar(String value, Span span) {
        return new YamlNode.Scalar(value, YamlNode.Style.QUOTED, span);
    }

    /** Whether two trees read the same: keys in any order, blanks at the end of a text aside. */
    static boolean same(YamlNode one, YamlNode other) {
        if (one instanceof YamlNode.Scalar a && other instanceof YamlNode.Scalar b) {
            return a.value().stripTrailing().equals(b.value().stripTrailing())
                    && (a.isNothing() == b.isNothing());
        }
        if (one instanceof YamlNode.Items a && other instanceof YamlNode.Items b) {
            boolean same = a.items().size() == b.items().size();
            for (int i = 0; same && i < a.items().size(); i++) {
                same = same(a.items().get(i), b.items().get(i));
            }
            return same;
        }
        return one instanceof YamlNode.Pairs a && other instanceof YamlNode.Pairs b
                && a.pairs().size() == b.pairs().size() && a.pairs().stream().allMatch(pair ->
                pair(b, pair.key().value()).filter(found -> same(pair.value(), found.value())).isPresent());
    }
}
