package org.fieldfold.content;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Span;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.parser.ParserImpl;
import org.snakeyaml.engine.v2.scanner.StreamReader;

/**
 * Composes the node tree of one text from the YAML reader's events. It is done here and not by the library's
 * own composer because that one follows aliases (so that a small file can grow without end), nests without
 * limit, and keeps no place for an alias.
 */
final class YamlComposer {
    /** The deepest record of the model is six deep. */
    static final int DEEPEST = 24;
    /** More than twenty times what the largest file of the demo base has. */
    static final int MOST_VALUES = 50_000;

    private static final LoadSettings SETTINGS = LoadSettings.builder()
            .setCodePointLimit(Integer.MAX_VALUE).setUseMarks(true).build();

    private final MendedText text;
    private final List<Finding> findings;
    private final ParserImpl parser;
    private int depth;
    private int values;
    private int lastEnd;

    YamlComposer(MendedText text, List<Finding> findings) {
        this.text = text;
        this.findings = findings;
        this.parser = new ParserImpl(SETTINGS, new StreamReader(SETTINGS, text.text()));
    }

    /**
     * The root of the only document; empty for a file without one.
     *
     * @throws org.snakeyaml.engine.v2.exceptions.YamlEngineException at the first place that is not YAML
     */
    Optional<YamlNode> compose() {
        parser.next();
        if (parser.checkEvent(Event.ID.StreamEnd)) {
            return Optional.empty();
        }
        parser.next();
        YamlNode root = node(parser.next());
        parser.next();
        if (!parser.checkEvent(Event.ID.StreamEnd)) {
            Event next = parser.next();
            findings.add(FormRule.SEVERAL_DOCUMENTS.at(span(next),
                    "expected one document, found a second one",
                    "take out the line '---' and what must not be read"));
        }
        return Optional.of(root);
    }

    private YamlNode node(Event event) {
        if (++values > MOST_VALUES) {
            findings.add(FormRule.FILE_TOO_LARGE.at(span(event), "expected at most " + MOST_VALUES
                    + " values in a file, found more", "split the file"));
            throw new TooDeep();
        }
        if (event instanceof AliasEvent alias) {
            return refuse(span(alias), "alias '*" + alias.getAlias() + "'");
        }
        NodeEvent node = (NodeEvent) event;
        if (event instanceof ScalarEvent scalar) {
            YamlNode.Scalar read = scalar(scalar);
            if (read.value().isEmpty() && read.style() == YamlNode.Style.PLAIN && node.getAnchor().isEmpty()
                    && scalar.getTag().isEmpty()) {
                return read;
            }
            return scalar.getTag().isPresent() || node.getAnchor().isPresent() ? refuseStart(read.span())
                    : read;
        }
        CollectionStartEvent start = (CollectionStartEvent) event;
        int from = offset(start.getStartMark());
        depth++;
        if (depth > DEEPEST) {
            findings.add(FormRule.TOO_DEEP.at(span(start), "expected at most " + DEEPEST
                    + " lists and maps inside each other, found more",
                            "take out the brackets or hyphens too many"));
            throw new TooDeep();
        }
        YamlNode read = event.getEventId() == Event.ID.SequenceStart ? items(from) : pairs(from);
        depth--;
        if (node.getAnchor().isPresent()) {
            Span at = span(start);
            return refuse(at, "anchor '&" + node.getAnchor().get().getValue() + "'");
        }
        return start.getTag().isPresent() ? refuseStart(span(start)) : read;
    }

    private YamlNode items(int from) {
        List<YamlNode> items = new ArrayList<>();
        Event next = parser.next();
        while (next.getEventId() != Event.ID.SequenceEnd) {
            items.add(node(next));
            next = parser.next();
        }
        return new YamlNode.Items(items, close(from, next));
    }

    private YamlNode pairs(int from) {
        List<YamlNode.Pair> pairs = new ArrayList<>();
        Event next = parser.next();
        while (next.getEventId() != Event.ID.MappingEnd) {
            YamlNode key = node(next);
            YamlNode value = node(parser.next());
            if (key instanceof YamlNode.Scalar word) {
                pairs.add(new YamlNode.Pair(word, value));
            } else if (!(key instanceof YamlNode.Refused)) {
                findings.add(FormRule.WRONG_TYPE.at(key.span(),
                        "expected a word as key, found a list or a map",
                        "write a key of the record, a colon and its value"));
            }
            next = parser.next();
        }
        return new YamlNode.Pairs(pairs, close(from, next));
    }

    /**
     * The end of a block lies behind what is in it; blanks and comments up to the next token do not belong
     * to it.
     */
    private Span close(int from, Event end) {
        int start = offset(end.getStartMark());
        int stop = offset(end.getEndMark());
        if (stop > start) {
            lastEnd = stop;
        }
        return text.span(from, Math.max(from, lastEnd));
    }

    private YamlNode.Scalar scalar(ScalarEvent event) {
        int from = offset(event.getStartMark());
        int to = Math.max(from, offset(event.getEndMark()));
        YamlNode.Style style = event.isPlain() ? YamlNode.Style.PLAIN
                : event.isLiteral() || event.isFolded() ? YamlNode.Style.BLOCK : YamlNode.Style.QUOTED;
        if (style == YamlNode.Style.BLOCK) {
            while (to > from && Character.isWhitespace(text.text().charAt(to - 1))) {
                to--;
            }
        }
        lastEnd = Math.max(lastEnd, to);
        if (event.isDQuoted()) {
            EscapedCharacters.report(text.span(from, to), findings);
        }
        String value = text.isMended() ? MendedText.unshifted(event.getValue()) : event.getValue();
        return new YamlNode.Scalar(value, style, text.span(from, to));
    }

    private YamlNode refuse(Span at, String found) {
        findings.add(FormRule.ANCHOR_OR_ALIAS.at(at, "expected a value, found the " + found,
                "write the value out; a text that begins with '*' or '&' stands in double quotes"));
        return new YamlNode.Refused(at);
    }

    private YamlNode refuseStart(Span at) {
        String sign = at.file().text()
                .substring(at.start(), Math.min(at.start() + 1, at.file().text().length()));
        findings.add(YamlSlips.reservedStart(at, sign));
        return new YamlNode.Refused(at);
    }

    private Span span(Event event) {
        return text.span(offset(event.getStartMark()), offset(event.getEndMark()));
    }

    private int offset(Optional<Mark> mark) {
        return mark.map(place -> text.offset(place.getIndex())).orElse(0);
    }

    /** Ends composing, of what is too deep or too much; its finding has been given. */
    static final class TooDeep extends RuntimeException {
        TooDeep() {
            super("nested too deep", null, false, false);
        }
    }
}
