package org.fieldfold.content;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.fieldfold.source.Finding;
import org.fieldfold.source.SourceFile;

/**
 * A YAML file that is changed where it stands: one value is set, added or taken out, and every other byte
 * stays, byte-order mark, line ends, comments and quotes included. Each edit is read back before it is
 * given; one that would read differently in any other place is refused.
 *
 * <p>A path is made of keys, of 0-based positions in lists, and of ids of items in lists.
 */
public final class InPlace {
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private final SourceFile file;
    private final boolean marked;
    private final YamlNode root;

    private InPlace(SourceFile file, boolean marked, YamlNode root) {
        this.file = file;
        this.marked = marked;
        this.root = root;
    }

    /**
     * A file as it is.
     *
     * @param path as it is shown to people
     * @throws EditRefused when it is not sound YAML, or not UTF-8
     */
    public static InPlace of(String path, byte[] bytes) throws EditRefused {
        List<Finding> findings = new ArrayList<>();
        SourceFile file = Decoding.decode(path, bytes, findings);
        boolean marked = new String(bytes, StandardCharsets.UTF_8).startsWith(BYTE_ORDER_MARK);
        YamlReading reading = YamlReading.read(file, findings);
        if (!findings.isEmpty() || reading.root().isEmpty()) {
            throw new EditRefused("expected sound YAML in " + path + ", found "
                    + findings.stream().findFirst().map(Finding::message).orElse("none")
                    + "; mend the file, then try again");
        }
        return new InPlace(file, marked, reading.root().get());
    }

    /** The file with everything done to it. */
    public byte[] bytes() {
        return ((marked ? BYTE_ORDER_MARK : "") + file.text()).getBytes(StandardCharsets.UTF_8);
    }

    /** The value at a path, as it is written; empty when there is none, or a list or a map. */
    public Optional<String> value(Object... path) {
        return at(List.of(path)).filter(YamlNode.Scalar.class::isInstance)
                .map(node -> ((YamlNode.Scalar) node).value());
    }

    /**
     * Writes another value where one stands, in the style in which it stands if that can hold it.
     *
     * @throws EditRefused when there is no single value at the path
     */
    public InPlace set(String value, Object... path) throws EditRefused {
        List<Object> steps = List.of(path);
        YamlNode.Scalar old = (YamlNode.Scalar) at(steps).filter(YamlNode.Scalar.class::isInstance)
                .orElseThrow(() -> new EditRefused("expected a single value at " + shown(steps)
                        + " in " + file + ", found none"));
        if (old.value().equals(value)) {
            return this;
        }
        YamlNode wanted = Expected.replaced(root, resolved(steps), Optional.of(value));
        return first(WrittenValue.inPlaceOf(old, value), wanted, steps,
                words -> file.text().substring(0, old.span().start()) + words
                        + file.text().substring(old.span().end()));
    }

    /** Sets a value, or adds its key at the end of the map where it belongs. */
    public InPlace put(String value, Object... path) throws EditRefused {
        List<Object> steps = List.of(path);
        if (at(steps).isPresent()) {
            return set(value, path);
        }
        String key = String.valueOf(steps.get(steps.size() - 1));
        List<Object> above = steps.subList(0, steps.size() - 1);
        YamlNode.Pairs map = (YamlNode.Pairs) at(above).filter(YamlNode.Pairs.class::isInstance)
                .orElseThrow(() -> new EditRefused("expected a map at " + shown(above) + " in " + file
                        + ", found none"));
        List<Object> place = new ArrayList<>(resolved(above));
        place.add(key);
        YamlNode wanted = Expected.replaced(root, place, Optional.of(value));
        MapText text = new MapText(file, map);
        List<Function<String, String>> ways = text.ways(key);
        EditRefused refused = new EditRefused("found no place for '" + key + "' in " + file);
        for (Function<String, String> way : ways) {
            try {
                return first(WrittenValue.fresh(value), wanted, steps, way);
            } catch (EditRefused here) {
                refused = here;
            }
        }
        throw refused;
    }

    /** Takes a key with its value out; nothing happens where there is none. */
    public InPlace remove(Object... path) throws EditRefused {
        List<Object> steps = List.of(path);
        if (at(steps).isEmpty()) {
            return this;
        }
        YamlNode.Pairs map = (YamlNode.Pairs) at(steps.subList(0, steps.size() - 1)).orElseThrow();
        YamlNode wanted = Expected.replaced(root, resolved(steps), Optional.empty());
        String key = String.valueOf(steps.get(steps.size() - 1));
        return first(List.of(""), wanted, steps, none -> new MapText(file, map).without(key));
    }

    /** The first form that reads back as wanted. */
    private InPlace first(List<String> forms, YamlNode wanted, List<Object> path,
            Function<String, String> written) throws EditRefused {
        for (String form : forms) {
            String text = written.apply(form);
            Optional<InPlace> edited = readBack(text);
            if (edited.isPresent() && Expected.same(edited.get().root, wanted)) {
                return edited.get();
            }
        }
        throw new EditRefused("expected a value that can be written at " + shown(path) + " in " + file
                + " without touching anything else, found none; change it by hand");
    }

    private Optional<InPlace> readBack(String text) {
        try {
            return Optional.of(of(file.path(), ((marked ? BYTE_ORDER_MARK : "") + text)
                    .getBytes(StandardCharsets.UTF_8)));
        } catch (EditRefused unsound) {
            return Optional.empty();
        }
    }

    private Optional<YamlNode> at(List<Object> path) {
        Optional<YamlNode> node = Optional.of(root);
        for (Object step : path) {
            node = node.flatMap(outer -> Expected.below(outer, step));
        }
        return node;
    }

    /** The path of the innermost value in which an offset of the text lies, with positions in lists. */
    List<Object> path(int offset) {
        List<Object> path = new ArrayList<>();
        Optional<YamlNode> node = Optional.of(root);
        while (node.isPresent()) {
            Optional<Object> step = Expected.step(node.get(), offset);
            step.ifPresent(path::add);
            node = step.isEmpty() ? Optional.empty() : Expected.below(node.get(), step.get());
        }
        return path;
    }

    /** A path with positions in place of ids. */
    List<Object> resolved(Object... path) {
        return resolved(List.of(path));
    }

    private List<Object> resolved(List<Object> path) {
        List<Object> steps = new ArrayList<>();
        YamlNode node = root;
        for (Object step : path) {
            steps.add(node instanceof YamlNode.Items items ? Expected.index(items, step).orElse(-1) : step);
            node = Expected.below(node, step).orElse(node);
        }
        return steps;
    }

    private static String shown(List<Object> path) {
        return String.join("/", path.stream().map(String::valueOf).toList());
    }
}
