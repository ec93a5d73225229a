package org.fieldfold.entry;

import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import org.fieldfold.prose.Prose;
import org.fieldfold.source.Span;

/**
 * What the folder of one language holds: texts, file by file, and the words that they keep to.
 *
 * @param files by the base file that they translate, without its ending: {@code pests/onion-thrips}
 */
public record Translation(String language, List<Term> glossary, SortedMap<String, Page> files) {
    public Translation {
        glossary = List.copyOf(glossary);
    }

    /** The texts of one file. */
    public record Page(Span start, List<Passage> passages) {
        public Page {
            passages = List.copyOf(passages);
        }
    }

    /**
     * One text.
     *
     * @param path of the text that it translates: keys and ids, or positions in lists without ids
     * @param of hash of the base text that was translated
     * @param words the translation; empty while there is none
     * @param place where it stands
     * @param hashPlace where its hash stands
     */
    public record Passage(String path, String of, Optional<Prose> words, Span place, Span hashPlace) {
    }

    /** A word of the trade and the one word for it. */
    public record Term(GlossaryTerm words, Span place) {
    }
}
