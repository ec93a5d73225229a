package org.fieldfold.edition;

import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.fieldfold.report.JsonText;
import org.fieldfold.report.Sha256;
import tools.jackson.core.JsonGenerator;

/**
 * What is known, in a form that does not depend on how or where it was written: words, groups sorted by key,
 * and lists. Whatever is absent has no place in it, so that a key that joins the model later changes no old
 * hash.
 */
public sealed interface Fact {
    /** A single value, as text. */
    record Word(String text) implements Fact {
    }

    /** Facts by key. */
    record Group(SortedMap<String, Fact> facts) implements Fact {
        public Group {
            facts = Collections.unmodifiableSortedMap(new TreeMap<>(facts));
        }

        public Optional<Fact> get(String key) {
            return Optional.ofNullable(facts.get(key));
        }

        /** The word under a key; empty when there is none. */
        public Optional<String> word(String key) {
            return get(key).filter(Word.class::isInstance).map(fact -> ((Word) fact).text());
        }

        /** The group under a key; an empty one when there is none. */
        public Group group(String key) {
            return get(key).filter(Group.class::isInstance).map(Group.class::cast)
                    .orElse(new Group(new TreeMap<>()));
        }

        /** The list under a key; empty when there is none. */
        public List<Fact> items(String key) {
            return get(key).filter(Items.class::isInstance).map(fact -> ((Items) fact).facts())
                    .orElse(List.of());
        }

        /** The same without one key. */
        public Group without(String key) {
            SortedMap<String, Fact> rest = new TreeMap<>(facts);
            rest.remove(key);
            return new Group(rest);
        }
    }

    /** Facts in an order that matters. */
    record Items(List<Fact> facts) implements Fact {
        public Items {
            facts = List.copyOf(facts);
        }
    }

    static Word word(Object value) {
        return new Word(String.valueOf(value));
    }

    /** A group of keys and facts by turns. */
    static Group group(Object... keysAndFacts) {
        SortedMap<String, Fact> facts = new TreeMap<>();
        for (int i = 0; i < keysAndFacts.length; i += 2) {
            facts.put((String) keysAndFacts[i], (Fact) keysAndFacts[i + 1]);
        }
        return new Group(facts);
    }

    /** SHA-256 of {@link #canonical()} in UTF-8, in hexadecimal figures. */
    default String sha256() {
        return Sha256.of(canonical().getBytes(StandardCharsets.UTF_8));
    }

    /**
     * The one text of these facts: JSON as RFC 8785 (JSON Canonicalization Scheme, 2020) writes it, without
     * blanks, keys in the order of their UTF-16 units (3.2.3), and only those signs escaped that must be
     * (3.2.2.2).
     */
    default String canonical() {
        StringBuilder out = new StringBuilder();
        write(this, out);
        return out.toString();
    }

    private static void write(Fact fact, StringBuilder out) {
        if (fact instanceof Word word) {
            quote(word.text(), out);
        } else if (fact instanceof Group group) {
            String joint = "{";
            for (Map.Entry<String, Fact> entry : group.facts().entrySet()) {
                out.append(joint);
                quote(entry.getKey(), out);
                out.append(':');
                write(entry.getValue(), out);
                joint = ",";
            }
            out.append(group.facts().isEmpty() ? "{}" : "}");
        } else {
            List<Fact> facts = ((Items) fact).facts();
            out.append('[');
            for (int i = 0; i < facts.size(); i++) {
                out.append(i == 0 ? "" : ",");
                write(facts.get(i), out);
            }
            out.append(']');
        }
    }

    private static void quote(String text, StringBuilder out) {
        out.append('"');
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            int named = "\b\t\n\f\r\"\\".indexOf(c);
            if (named >= 0) {
                out.append('\\').append("btnfr\"\\".charAt(named));
            } else if (c < 0x20) {
                out.append("\\u%04x".formatted((int) c));
            } else {
                out.append(c);
            }
        }
        out.append('"');
    }

    /** The same as indented JSON, for people and for version control. */
    default String json() {
        return JsonText.of(json -> write(this, json));
    }

    private static void write(Fact fact, JsonGenerator json) {
        if (fact instanceof Word word) {
            json.writeString(word.text());
        } else if (fact instanceof Group group) {
            json.writeStartObject();
            group.facts().forEach((key, value) -> {
                json.writeName(key);
                write(value, json);
            });
            json.writeEndObject();
        } else {
            json.writeStartArray();
            ((Items) fact).facts().forEach(item -> write(item, json));
            json.writeEndArray();
        }
    }
}
