package org.fieldfold.prose;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What an author wrote in one text field.
 *
 * @param markdown as it stands in the file: what is compared, hashed and translated
 * @param passages the same, read
 */
public record Prose(String markdown, List<Passage> passages) {
    public Prose {
        passages = List.copyOf(passages);
    }

    public static Prose plain(String text) {
        return new Prose(text, List.of(new Passage.Paragraph(List.of(Run.plain(text)))));
    }

    /** Everything in it as one line of runs: for places where a text must not break into paragraphs. */
    public List<Run> line() {
        List<Run> line = new ArrayList<>();
        for (Passage passage : passages) {
            if (!line.isEmpty()) {
                line.add(Run.plain(" "));
            }
            line.addAll(runs(passage));
        }
        return List.copyOf(line);
    }

    /** The words alone, without styles. */
    public String words() {
        return passages.stream()
                .map(passage -> runs(passage).stream().map(Run::text).collect(Collectors.joining()))
                .collect(Collectors.joining(" "));
    }

    private static List<Run> runs(Passage passage) {
        if (passage instanceof Passage.Paragraph paragraph) {
            return paragraph.runs();
        }
        if (passage instanceof Passage.Heading heading) {
            return heading.runs();
        }
        return ((Passage.Bullets) passage).items().stream().flatMap(List::stream).toList();
    }
}
