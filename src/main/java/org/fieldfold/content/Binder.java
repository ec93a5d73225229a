package org.fieldfold.content;

import java.lang.reflect.InvocationTargetException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.fieldfold.entry.Text;
import org.fieldfold.prose.Prose;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Severity;
import org.fieldfold.source.Span;

/**
 * Binds one record: walks the nodes of a file beside the shape of the record, so that one walk gives the
 * value, the place of every fact, and every finding about its form.
 */
final class Binder {
    private final TextReading texts = new TextReading();
    private final List<Finding> findings;
    private final YamlReading reading;
    private final Optional<String> id;
    private final Map<String, Span> places = new HashMap<>();
    private boolean broken;

    /** @param id of the record, where its file's name gives it */
    Binder(YamlReading reading, Optional<String> id, List<Finding> findings) {
        this.reading = reading;
        this.id = id;
        this.findings = findings;
    }

    /** Where each fact stands, by its path from the record. */
    Map<String, Span> places() {
        return places;
    }

    /** The entries that texts link to, with the place of each link. */
    List<TextReading.EntryLink> links() {
        return texts.links();
    }

    /** Whether a form error makes the record unfit to be shown. */
    boolean broken() {
        return broken;
    }

    /** The value; empty when something that is needed for it is missing or wrong. */
    Optional<Object> bind(YamlNode node, Shape shape, String path) {
        return bind(node, shape, path, Shape.Range.ANY);
    }

    private Optional<Object> bind(YamlNode node, Shape shape, String path, Shape.Range range) {
        places.put(SharedPaths.of(path), node.span());
        if (node instanceof YamlNode.Refused) {
            broken = true;
            return Optional.empty();
        }
        if (node instanceof YamlNode.Scalar scalar && scalar.isNothing()) {
            return report(KeySlips.nothing(scalar, shape.expected()));
        }
        if (shape instanceof Shape.Listed list) {
            return node instanceof YamlNode.Items items ? Optional.of(items(items, list, path))
                    : wrong(node, shape);
        }
        if (shape instanceof Shape.Fields fields) {
            return node instanceof YamlNode.Pairs pairs ? fields(pairs, fields, path, Set.of())
                    : wrong(node, shape);
        }
        if (shape instanceof Shape.Tiers tiers) {
            return node instanceof YamlNode.Pairs pairs ? tiers(pairs, tiers, path) : wrong(node, shape);
        }
        if (shape == Shape.Plain.TEXT && node instanceof YamlNode.Pairs pairs && !KeySlips.isColon(pairs)) {
            return fields(pairs, Shapes.text(), path, Set.of());
        }
        if (node instanceof YamlNode.Scalar scalar) {
            return scalar(scalar, shape, range);
        }
        return node instanceof YamlNode.Pairs pairs && KeySlips.isColon(pairs) ? report(KeySlips.colon(pairs))
                : wrong(node, shape);
    }

    private Optional<Object> report(Finding finding) {
        broken |= finding.severity() == Severity.ERROR;
        if (!reading.lines().contains(finding.span().line())) {
            findings.add(finding);
        }
        return Optional.empty();
    }

    private Optional<Object> wrong(YamlNode node, Shape shape) {
        return report(FormRule.WRONG_TYPE.at(head(node.span()), "expected " + shape.expected() + ", found "
                + ScalarReading.shown(node), hint(node, shape)));
    }

    private static String hint(YamlNode node, Shape shape) {
        if (shape instanceof Shape.Listed && node instanceof YamlNode.Scalar scalar) {
            return "write [" + ScalarReading.cut(scalar.value()) + "], or a line with a hyphen for each";
        }
        if (node instanceof YamlNode.Items items && items.items().size() == 1) {
            return "write it without brackets or hyphen";
        }
        return shape instanceof Shape.Fields || shape instanceof Shape.Tiers
                ? "write its keys on lines of their own, indented"
                : "write " + shape.expected();
    }

    /** The first line of a span: where a map or a list as a whole is meant. */
    private static Span head(Span span) {
        int end = span.start();
        String text = span.file().text();
        while (end < span.end() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
            end++;
        }
        return new Span(span.file(), span.start(), end);
    }

    private List<Object> items(YamlNode.Items items, Shape.Listed list, String path) {
        List<Object> bound = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (int i = 0; i < items.items().size(); i++) {
            YamlNode item = items.items().get(i);
            bind(item, list.item(), path.isEmpty() ? "" + i : path + "/" + i).ifPresent(bound::add);
            if (list.item() instanceof Shape.Fields) {
                idOf(item).filter(id -> !ids.add(id.value())).ifPresent(twice ->
                        report(FormRule.COLLIDING_ID.at(
                        twice.span(), "expected ids that differ in this list, found '" + twice.value()
                                + "' again",
                        "give one of the two another id")));
            }
        }
        return bound;
    }

    /** What an item of a list calls itself. */
    static Optional<YamlNode.Scalar> idOf(YamlNode item) {
        return item instanceof YamlNode.Pairs pairs ? pairs.pairs().stream()
                .filter(pair -> pair.key().value().equals("id") && pair.value() instanceof YamlNode.Scalar)
                .map(pair -> (YamlNode.Scalar) pair.value()).findFirst() : Optional.empty();
    }

    private Optional<Object> tiers(YamlNode.Pairs pairs, Shape.Tiers tiers, String path) {
        Optional<YamlNode.Pair> tier = pairs.pairs().stream()
                .filter(pair -> pair.key().value().equals("tier")).findFirst();
        if (tier.isEmpty()) {
            return report(FormRule.MISSING_KEY.at(head(pairs.span()), "expected the key 'tier', found none",
                    "add 'tier: 1' (cultural), 'tier: 2' (exclusion and natural enemies) or 'tier: 3' "
                            + "(insecticide)"));
        }
        places.put(SharedPaths.of(path + "/tier"), tier.get().value().span());
        String value = tier.get().value() instanceof YamlNode.Scalar scalar
                && scalar.style() == YamlNode.Style.PLAIN ? scalar.value() : "";
        List<String> numbers = IntStream.rangeClosed(1, tiers.byTier().size()).mapToObj(Integer::toString)
                .toList();
        if (!numbers.contains(value)) {
            return report(FormRule.OUT_OF_RANGE.at(tier.get().value().span(),
                    "expected one of the tiers 1, 2, 3, found "
                    + ScalarReading.shown(tier.get().value()),
                    "1 is cultural, 2 is exclusion and natural enemies, 3 is insecticide"));
        }
        return fields(pairs, tiers.byTier().get(Integer.parseInt(value) - 1), path, Set.of("tier"));
    }

    private Optional<Object> fields(YamlNode.Pairs pairs, Shape.Fields fields, String path,
            Set<String> besides) {
        Map<String, YamlNode.Pair> given = new HashMap<>();
        List<String> keys = fields.keys();
        for (YamlNode.Pair pair : pairs.pairs()) {
            String key = pair.key().value();
            YamlNode.Pair first = given.putIfAbsent(key, pair);
            if (first != null) {
                report(FormRule.DUPLICATE_KEY.at(pair.key().span(), "expected the key '"
                        + ScalarReading.cut(key)
                        + "' once, found it again; it stands first on line " + first.key().span().line(),
                        "keep one of the two"));
            } else if (!keys.contains(key) && !besides.contains(key)) {
                report(KeySlips.unknownKey(pair, keys, besides));
            }
        }
        Object[] values = new Object[fields.fields().size()];
        boolean whole = true;
        for (int i = 0; i < values.length; i++) {
            Optional<Object> value = field(pairs, given, fields.fields().get(i), path);
            whole &= value.isPresent();
            values[i] = value.orElse("");
        }
        return whole ? build(fields, values, head(pairs.span())) : Optional.empty();
    }

    private Optional<Object> field(YamlNode.Pairs pairs, Map<String, YamlNode.Pair> given, Shape.Field field,
            String path) {
        if (field.presence() == Shape.Presence.FROM_FILE_NAME) {
            return id.map(name -> name);
        }
        YamlNode.Pair pair = given.get(field.key());
        if (pair == null) {
            return missing(pairs, field);
        }
        String place = path.isEmpty() ? field.key() : path + "/" + field.key();
        Optional<Object> value = bind(pair.value(), field.shape(), place, field.range());
        if (field.key().equals("id") && value.isPresent() && !ScalarReading.isId((String) value.get())) {
            report(KeySlips.badId(pair.value().span(), (String) value.get()));
        }
        if (field.presence() == Shape.Presence.OPTIONAL) {
            // a wrong value of a key that may be left out: the record is broken, but can still be built
            return Optional.of(value);
        }
        return value.isEmpty() && field.presence() == Shape.Presence.LIST ? Optional.of(List.of()) : value;
    }

    private Optional<Object> missing(YamlNode.Pairs pairs, Shape.Field field) {
        return switch (field.presence()) {
            case OPTIONAL -> Optional.of(Optional.empty());
            case LIST -> Optional.of(List.of());
            default -> {
                broken = true;
                if (!reading.guessed()) {
                    report(FormRule.MISSING_KEY.at(head(pairs.span()), "expected the key '" + field.key()
                            + "', found none", "add '" + field.key() + ": …' (" + field.description() + ")"));
                }
                yield Optional.empty();
            }
        };
    }

    private Optional<Object> build(Shape.Fields fields, Object[] values, Span span) {
        try {
            return Optional.of(fields.constructor().newInstance(values));
        } catch (InvocationTargetException e) {
            return report(FormRule.BAD_VALUE.at(span, "expected values that fit together, found: "
                    + e.getCause().getMessage(), "change one of them"));
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("a record of the model can be built: " + fields.name(), e);
        }
    }

    private Optional<Object> scalar(YamlNode.Scalar scalar, Shape shape, Shape.Range range) {
        if (shape instanceof Shape.Words words) {
            return value(ScalarReading.word(words, scalar));
        }
        Shape.Plain plain = (Shape.Plain) shape;
        return switch (plain) {
            case STRING -> text(scalar) ? Optional.of(scalar.value()) : Optional.empty();
            case PROSE -> text(scalar) ? Optional.of(prose(scalar)) : Optional.empty();
            case TEXT -> text(scalar) ? Optional.of(new Text(prose(scalar), Optional.empty(),
                    Optional.empty()))
                    : Optional.empty();
            default -> value(ScalarReading.read(plain, scalar, range));
        };
    }

    private boolean text(YamlNode.Scalar scalar) {
        Optional<Finding> slip = TextReading.slip(scalar);
        slip.ifPresent(this::report);
        return slip.isEmpty();
    }

    private Prose prose(YamlNode.Scalar scalar) {
        List<Finding> slips = new ArrayList<>();
        Prose prose = texts.prose(scalar, slips);
        slips.stream().filter(slip -> !reading.lines().contains(slip.span().line())).forEach(findings::add);
        return prose;
    }

    private Optional<Object> value(ScalarReading.Reading reading) {
        reading.finding().ifPresent(this::report);
        return reading.value();
    }
}
