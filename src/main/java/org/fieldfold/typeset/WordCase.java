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
public final class WordCase {
    /**
     * What is looked for. Texts mostly come back as the very same list: that is seen without comparing them.
     *
     * @param language of its abbreviations
     */
    private record Sought(List<Run> runs, Voice voice, String language) {
        @Override
        public int hashCode() {
            int hash = voice.hashCode();
            for (Run run : runs) {
                hash = 31 * hash + run.text().hashCode();
            }
            return hash;
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Sought sought && voice == sought.voice && language.equals(sought.language)
                    && (runs == sought.runs || runs.equals(sought.runs));
        }
    }

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

    /**
     * A text in words, and in lines of columns in which it stood.
     *
     * @param runs in which abbreviations stand apart
     * @param before the same in another case, in columns known there
     * @param columns by their room
     */
    record Text(List<Run> runs, WordSplitter.Cut cut, TypeMetrics metrics, Optional<Text> before,
            Map<Double, Broken> columns) {
        /** @param room in thousandths of the type size */
        Broken lines(double room) {
            Broken known = before.map(other -> other.columns.get(room)).orElseGet(() -> columns.get(room));
            if (known == null) {
                known = breakUp(room);
                columns.put(room, known);
            }
            return known;
        }

        private Broken breakUp(double room) {
            List<Word> fitting = new ArrayList<>(cut.words().size());
            List<String> tooWide = new ArrayList<>();
            for (Word word : cut.words()) {
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

    private final TypeMetrics metrics;
    private final Map<Sought, Text> texts = new ConcurrentHashMap<>();
    private final Optional<WordCase> before;
    private final boolean teaches;

    public WordCase(TypeMetrics metrics) {
        this(metrics, Optional.empty(), false);
    }

    private WordCase(TypeMetrics metrics, Optional<WordCase> before, boolean teaches) {
        this.metrics = metrics;
        this.before = before;
        this.teaches = teaches;
    }

    /** One that knows all that this one knows, and keeps for itself what it learns: an office's own words. */
    public WordCase apart() {
        return new WordCase(metrics, Optional.of(this), false);
    }

    /** One for columns of its own: what it cuts into words this one knows as well, for guides on other papers. */
    public WordCase beside() {
        return new WordCase(metrics, Optional.of(this), true);
    }

    /** @param abbreviations that are to stand apart */
    Text text(List<Run> runs, Voice voice, Abbreviations abbreviations) {
        return text(new Sought(runs, voice, abbreviations.language()), abbreviations);
    }

    private Text text(Sought sought, Abbreviations abbreviations) {
        Text known = texts.get(sought);
        if (known == null) {
            Optional<Text> elsewhere = teaches ? before.map(other -> other.text(sought, abbreviations)) : before
                    .flatMap(other -> other.find(sought));
            List<Run> apart = elsewhere.map(Text::runs).orElseGet(() -> abbreviations.apart(sought.runs()));
            known = new Text(apart, elsewhere.map(Text::cut).orElseGet(() -> WordSplitter.split(apart, sought.voice(),
                    metrics)), metrics, elsewhere, new ConcurrentHashMap<>());
            texts.put(sought, known);
        }
        return known;
    }

    private Optional<Text> find(Sought sought) {
        Text known = texts.get(sought);
        return known != null ? Optional.of(known) : before.flatMap(other -> other.find(sought));
    }
}
