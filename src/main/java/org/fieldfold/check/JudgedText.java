package org.fieldfold.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import org.fieldfold.prose.Ease;
import org.fieldfold.source.Span;

/**
 * A pocket text and how easy it is to read, in numbers and texts alone, so that it can be kept without its file.
 *
 * @param file in which it stands, from {@code start} on
 * @param place the same, as people read it
 * @param forField whether guides for the field print it
 * @param forGarden whether guides for gardens do
 * @param hardest its hardest sentence; empty for a text that is plain
 */
record JudgedText(String file, int start, String place, String key, boolean forField, boolean forGarden, Ease ease,
        String hardest) {
    static final Comparator<JudgedText> BY_PLACE =
            Comparator.comparing(JudgedText::file).thenComparing(JudgedText::start);

    private static final String YES = "1";

    static JudgedText of(Facts.Written text, boolean forField, boolean forGarden, Ease ease, String hardest) {
        Span span = text.span();
        return new JudgedText(span.file().path(), span.start(), span.place(), text.key(), forField, forGarden, ease,
                hardest);
    }

    boolean isHard() {
        return !hardest.isEmpty();
    }

    static List<String> written(List<JudgedText> texts) {
        List<String> parts = new ArrayList<>();
        texts.forEach(text -> parts.addAll(List.of(text.file, String.valueOf(text.start), text.place, text.key,
                text.forField ? YES : "", text.forGarden ? YES : "", String.valueOf(text.ease.sentences()),
                String.valueOf(text.ease.words()), String.valueOf(text.ease.syllables()), text.hardest)));
        return parts;
    }

    /** @param parts as {@link #written} wrote them */
    static List<JudgedText> read(List<String> parts) {
        List<JudgedText> texts = new ArrayList<>();
        Iterator<String> in = parts.iterator();
        while (in.hasNext()) {
            texts.add(new JudgedText(in.next(), Integer.parseInt(in.next()), in.next(), in.next(),
                    in.next().equals(YES), in.next().equals(YES), new Ease(Integer.parseInt(in.next()),
                            Integer.parseInt(in.next()), Integer.parseInt(in.next())), in.next()));
        }
        return texts;
    }
}
