package org.fieldfold.typeset;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.fieldfold.prose.Run;

/**
 * Texts that were cut into words and broken into lines before. Most texts of a guide come back: at the next
 * size, on the copy for the next office.
 */
final class WordCase {
    private record Text(List<Run> runs, Voice voice) {}

    /** @param room in thousandths of the type size */
    private record Column(List<Run> runs, Voice voice, double room) {}

    /**
     * A text in lines.
     *
     * @param tooWide words that had to be divided
     */
    record Broken(List<Line> lines, List<String> tooWide) {
        Broken {
            lines = List.copyOf(lines);
            tooWide = List.copyOf(tooWide);
        }
    }

    private final TypeMetrics metrics;
    private final Map<Text, WordSplitter.Cut> cut = new ConcurrentHashMap<>();
    private final Map<Column, Broken> broken = new ConcurrentHashMap<>();

    private final Optional<WordCase> before;

    WordCase(TypeMetrics metrics) {
        this(metrics, Optional.empty());
    }

    private WordCase(TypeMetrics metrics, Optional<WordCase> before) {
        this.metrics = metrics;
        this.before = before;
    }

    /** One that knows all that this one knows, and keeps for itself what it learns: an office's own words. */
    WordCase apart() {
        return new WordCase(metrics, Optional.of(this));
    }

    WordSplitter.Cut words(List<Run> runs, Voice voice) {
        Text text = new Text(runs, voice);
        WordSplitter.Cut known = before.map(other -> other.cut.get(text)).orElseGet(() -> cut.get(text));
        if (known == null) {
            known = WordSplitter.split(runs, voice, metrics);
            cut.put(text, known);
        }
        return known;
    }

    /** @param room in thousandths of the type size */
    Broken lines(List<Run> runs, Voice voice, double room) {
        Column column = new Column(runs, voice, room);
        Broken known = before.map(other -> other.broken.get(column)).orElseGet(() -> broken.get(column));
        if (known == null) {
            known = breakUp(words(runs, voice).words(), room);
            broken.put(column, known);
        }
        return known;
    }

    private Broken breakUp(List<Word> words, double room) {
        List<Word> fitting = new ArrayList<>(words.size());
        List<String> tooWide = new ArrayList<>();
        for (Word word : words) {
            if (word.width() <= room + 1e-9) {
                fitting.add(word);
            } else {
                tooWide.add(Line.of(List.of(word), false).text());
                fitting.addAll(WordDivider.divide(word, metrics, room));
            }
        }
        return new Broken(LineFit.fit(fitting, room), tooWide);
    }
}
