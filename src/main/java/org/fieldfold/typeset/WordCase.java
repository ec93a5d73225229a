package org.fieldfold.typeset;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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

    WordCase(TypeMetrics metrics) {
        this.metrics = metrics;
    }

    WordSplitter.Cut words(List<Run> runs, Voice voice) {
        Text text = new Text(runs, voice);
        WordSplitter.Cut known = cut.get(text);
        if (known == null) {
            known = WordSplitter.split(runs, voice, metrics);
            cut.put(text, known);
        }
        return known;
    }

    /** @param room in thousandths of the type size */
    Broken lines(List<Run> runs, Voice voice, double room) {
        Column column = new Column(runs, voice, room);
        Broken known = broken.get(column);
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
