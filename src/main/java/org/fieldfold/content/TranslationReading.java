package org.fieldfold.content;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fieldfold.entry.GlossaryTerm;
import org.fieldfold.entry.Translation;
import org.fieldfold.prose.Prose;
import org.fieldfold.source.Finding;
import org.fieldfold.source.SourceFile;
import org.fieldfold.source.Span;

/**
 * Reads a file of texts in another language: under the path of each text its {@code of:}, the hash of what it
 * translates, and its {@code text:}.
 */
final class TranslationReading {
    private static final List<String> KEYS = List.of("of", "text");

    private final SourceFile source;
    private final List<Finding> findings;
    private final TextReading texts = new TextReading();
    private final YamlReading reading;

    TranslationReading(SourceFile source, List<Finding> findings) {
        this.source = source;
        this.findings = findings;
        this.reading = YamlReading.read(source, findings);
    }

    /** The entries that texts link to. */
    List<TextReading.EntryLink> links() {
        return texts.links();
    }

    Translation.Page page() {
        Map<String, Translation.Passage> passages = new java.util.LinkedHashMap<>();
        for (YamlNode.Pair pair : pairs(reading.root(), "a path such as 'names/common'")) {
            String path = pair.key().value();
            if (passages.containsKey(path)) {
                report(FormRule.DUPLICATE_KEY.at(pair.key().span(), "expected the path '"
                        + ScalarReading.cut(path) + "' once, found it again", "keep one of the two"));
            } else {
                passage(pair).ifPresent(passage -> passages.put(path, passage));
            }
        }
        return new Translation.Page(Span.startOf(source), List.copyOf(passages.values()));
    }

    private Optional<Translation.Passage> passage(YamlNode.Pair pair) {
        Map<String, YamlNode.Scalar> given = new HashMap<>();
        for (YamlNode.Pair inner : pairs(Optional.of(pair.value()), "the keys 'of' and 'text'")) {
            if (!KEYS.contains(inner.key().value())) {
                report(KeySlips.unknownKey(inner, KEYS, Set.of()));
            } else if (inner.value() instanceof YamlNode.Scalar scalar) {
                given.put(inner.key().value(), scalar);
            } else if (!(inner.value() instanceof YamlNode.Refused)) {
                report(FormRule.WRONG_TYPE.at(inner.value().span(), "expected a text, found "
                        + ScalarReading.shown(inner.value()), "write it on one line or behind '|'"));
            }
        }
        if (!(pair.value() instanceof YamlNode.Pairs)) {
            return Optional.empty();
        }
        YamlNode.Scalar of = given.get("of");
        YamlNode.Scalar text = given.get("text");
        if (of == null || of.isNothing()) {
            report(FormRule.MISSING_KEY.at(pair.key().span(), "expected the key 'of' with the hash of the "
                    + "text that is translated, found none",
                    "'fieldfold draft translation' writes it; what stands under 'text' is kept"));
            return Optional.empty();
        }
        return Optional.of(new Translation.Passage(SharedPaths.of(pair.key().value()), of.value(), words(text),
                text == null || text.isNothing() ? pair.key().span() : text.span(), of.span()));
    }

    private Optional<Prose> words(YamlNode.Scalar text) {
        if (text == null || text.isNothing()) {
            return Optional.empty();
        }
        Optional<Finding> slip = TextReading.slip(text);
        slip.ifPresent(this::report);
        return slip.isPresent() ? Optional.empty() : Optional.of(texts.prose(text, findings));
    }

    TranslationFiles.Glossary glossary() {
        List<Translation.Term> terms = new ArrayList<>();
        Shape shape = Shapes.fields(GlossaryTerm.class, false);
        for (YamlNode item : reading.root().map(new ListFile("terms", reading, findings)::items)
                .orElse(List.of())) {
            new Binder(reading, Optional.empty(), findings).bind(item, shape, "").ifPresent(term ->
                    terms.add(new Translation.Term((GlossaryTerm) term, item.span())));
        }
        return new TranslationFiles.Glossary(terms);
    }

    private List<YamlNode.Pair> pairs(Optional<YamlNode> node, String expected) {
        if (node.isPresent() && node.get() instanceof YamlNode.Pairs pairs) {
            return pairs.pairs();
        }
        node.filter(other -> !(other instanceof YamlNode.Refused)).ifPresent(other ->
                report(FormRule.WRONG_TYPE.at(other.span(), "expected " + expected + ", found "
                        + ScalarReading.shown(other), "'fieldfold draft translation' writes such a file")));
        return List.of();
    }

    private void report(Finding finding) {
        if (!reading.lines().contains(finding.span().line())) {
            findings.add(finding);
        }
    }
}
