package org.fieldfold.translation;

import java.util.ArrayList;
import java.util.List;
import org.fieldfold.prose.Passage;
import org.fieldfold.prose.Prose;
import org.fieldfold.prose.Run;

/** Marks what stands in the base language because it has no current translation. */
final class BaseLanguage {
    private BaseLanguage() {
    }

    /** As in {@code [en] onion thrips}. */
    static String marked(String words, String language) {
        return mark(language) + words;
    }

    /** The same, and every run says its language. */
    static Prose marked(Prose prose, String language) {
        List<Passage> passages = new ArrayList<>();
        for (Passage passage : prose.passages()) {
            passages.add(said(passage, language, passages.isEmpty()));
        }
        return new Prose(mark(language) + prose.markdown(), passages);
    }

    private static String mark(String language) {
        return "[" + language + "] ";
    }

    private static Passage said(Passage passage, String language, boolean first) {
        if (passage instanceof Passage.Paragraph paragraph) {
            return new Passage.Paragraph(runs(paragraph.runs(), language, first));
        }
        if (passage instanceof Passage.Heading heading) {
            return new Passage.Heading(heading.level(), runs(heading.runs(), language, first));
        }
        Passage.Bullets bullets = (Passage.Bullets) passage;
        List<List<Run>> items = new ArrayList<>();
        for (List<Run> item : bullets.items()) {
            items.add(runs(item, language, first && items.isEmpty()));
        }
        return new Passage.Bullets(bullets.numbered(), items);
    }

    private static List<Run> runs(List<Run> runs, String language, boolean first) {
        List<Run> said = new ArrayList<>();
        if (first) {
            said.add(Run.plain(mark(language)));
        }
        runs.forEach(run -> said.add(run.in(language)));
        return said;
    }
}
