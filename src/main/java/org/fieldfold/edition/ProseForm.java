package org.fieldfold.edition;

import java.util.List;
import java.util.stream.Collectors;
import org.fieldfold.prose.Passage;
import org.fieldfold.prose.Prose;
import org.fieldfold.prose.Run;

/** Prose as one text that does not depend on how its lines were broken. */
final class ProseForm {
    private ProseForm() {
    }

    static String of(Prose prose) {
        return prose.passages().stream().map(ProseForm::passage).collect(Collectors.joining("\n\n"));
    }

    private static String passage(Passage passage) {
        if (passage instanceof Passage.Paragraph paragraph) {
            return line(paragraph.runs());
        }
        if (passage instanceof Passage.Heading heading) {
            return "#".repeat(heading.level()) + " " + line(heading.runs());
        }
        Passage.Bullets bullets = (Passage.Bullets) passage;
        return bullets.items().stream().map(item -> (bullets.numbered() ? "1. " : "- ") + line(item))
                .collect(Collectors.joining("\n"));
    }

    private static String line(List<Run> runs) {
        return spaced(runs.stream().map(ProseForm::run).collect(Collectors.joining()));
    }

    private static String run(Run run) {
        String mark = switch (run.style()) {
            case PLAIN -> "";
            case STRONG -> "**";
            case EMPHASIS -> "_";
            case NAME -> "*";
        };
        String text = mark + run.text() + mark;
        return run.link().isEmpty() ? text : "[" + text + "](" + run.link() + ")";
    }

    /** One space wherever there is white space, none at the ends; a no-break space is a sign of its own. */
    static String spaced(String text) {
        return text.replaceAll("[ \\t\\n\\r]+", " ").strip();
    }
}
