package org.fieldfold.translation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.fieldfold.entry.Translation;

/**
 * Which translation belongs to which text of a file. A translation belongs to the text whose hash it names,
 * at its own path or, when texts changed places, at any other path of the file. One whose hash no text has
 * any more belongs to the text at its path, and is due.
 *
 * @param pairs the texts of the base in their order
 * @param left translations that belong to no text
 */
public record Matching(List<Pair> pairs, List<Translation.Passage> left) {
    public Matching {
        pairs = List.copyOf(pairs);
        left = List.copyOf(left);
    }

    /** How a text stands. */
    public enum State { CURRENT, DUE, MISSING }

    /**
     * A text with its translation.
     *
     * @param passage the translation; one without words, or none, where it is missing
     */
    public record Pair(BaseText text, Optional<Translation.Passage> passage, State state) {
    }

    public static Matching of(List<BaseText> texts, List<Translation.Passage> passages) {
        Map<String, Translation.Passage> byPath = new HashMap<>();
        Map<String, Translation.Passage> byHash = new HashMap<>();
        for (Translation.Passage passage : passages) {
            byPath.put(passage.path(), passage);
            if (passage.words().isPresent()) {
                byHash.putIfAbsent(passage.of(), passage);
            }
        }
        List<String> hashes = texts.stream().map(BaseText::hash).toList();
        Set<String> known = new HashSet<>(hashes);
        Set<Translation.Passage> used = new HashSet<>();
        List<Pair> pairs = new ArrayList<>();
        for (int i = 0; i < hashes.size(); i++) {
            BaseText text = texts.get(i);
            Translation.Passage own = byPath.get(text.path());
            Pair pair = pair(text, hashes.get(i), own, byHash, known);
            pair.passage().ifPresent(used::add);
            if (own != null && own.words().isEmpty()) {
                used.add(own);
            }
            pairs.add(pair);
        }
        return new Matching(pairs, passages.stream().filter(passage -> !used.contains(passage)).toList());
    }

    /** @param hashes of all texts of the file */
    private static Pair pair(BaseText text, String hash, Translation.Passage own,
            Map<String, Translation.Passage> byHash, Set<String> hashes) {
        if (own != null && own.of().equals(hash) && own.words().isPresent()) {
            return new Pair(text, Optional.of(own), State.CURRENT);
        }
        if (byHash.containsKey(hash)) {
            return new Pair(text, Optional.of(byHash.get(hash)), State.CURRENT);
        }
        if (own != null && own.words().isPresent() && !hashes.contains(own.of())) {
            return new Pair(text, Optional.of(own), State.DUE);
        }
        return new Pair(text, Optional.ofNullable(own).filter(empty -> empty.words().isEmpty()),
                State.MISSING);
    }
}
