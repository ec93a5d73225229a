package org.fieldfold.typeset;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.fieldfold.prose.Run;
import org.fieldfold.source.Span;

/** The words of a guide, each text cut once: words do not depend on size or measure. */
final class WordCase {
    private record Key(List<Run> runs, Voice voice) {}

    private final Map<Key, List<Word>> cut = new HashMap<>();
    private final WordSplitter splitter;

    WordCase(TypeMetrics metrics, Remarks remarks) {
        this.splitter = new WordSplitter(metrics, remarks);
    }

    List<Word> words(List<Run> runs, Voice voice, Span origin) {
        Key key = new Key(runs, voice);
        List<Word> words = cut.get(key);
        if (words == null) {
            words = splitter.split(runs, voice, origin);
            cut.put(key, words);
        }
        return words;
    }
}
