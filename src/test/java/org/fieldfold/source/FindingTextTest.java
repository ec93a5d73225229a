package org.fieldfold.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What stands at the end of a window is seen first. */
class FindingTextTest {
    private static final SourceFile LEEK = new SourceFile("content/pests/leek-moth.yaml", "a:\nb:\nc:\nd:\n");
    private static final SourceFile POTATO = new SourceFile("content/pests/potato.yaml", "title: Potatoes\n");

    private static Finding empty(int line) {
        int start = LEEK.lineStart(line);
        return Finding.error(new Span(LEEK, start, start + 2), "empty-value", "expected a text, found nothing",
                "write it");
    }

    private static Finding potato(Severity severity) {
        return new Finding(severity, new Span(POTATO, 0, 5), "some-rule", severity.word() + " of potatoes", "");
    }

    @Test
    void fewAreToldOneByOneAndTheGravestLast() {
        List<Finding> mixed = List.of(empty(1), potato(Severity.WARNING), potato(Severity.INFO));
        String text = new FindingText(false).print(mixed);
        assertTrue(text.indexOf("info of potatoes") < text.indexOf("warning of potatoes")
                && text.indexOf("warning of potatoes") < text.indexOf("expected a text"), text);
        assertTrue(text.endsWith("1 error, 1 warning, 1 note\n") && !text.contains("errors stand in"), text);
    }

    @Test
    void manyOfOneKindInOneFileAreToldTogetherALineEach() {
        List<Finding> all = new ArrayList<>(List.of(empty(1), empty(2), empty(3), empty(4)));
        all.add(potato(Severity.ERROR));
        assertEquals("""
                content/pests/leek-moth.yaml: error: 4 times [empty-value]
                    line 1  a:  expected a text, found nothing
                    line 2  b:  expected a text, found nothing
                    line 3  c:  expected a text, found nothing
                    line 4  d:  expected a text, found nothing
                  hint: write it
                content/pests/potato.yaml:1:1: error: error of potatoes [some-rule]
                    title: Potatoes
                    ^~~~~
                errors stand in
                  content/pests/leek-moth.yaml  4
                  content/pests/potato.yaml  1
                5 errors, 0 warnings, 0 notes
                """, new FindingText(false).print(all));
    }

    @Test
    void noneIsLost() {
        List<Finding> all = new ArrayList<>(Collections.nCopies(5, potato(Severity.WARNING)));
        String text = new FindingText(false).print(all);
        assertEquals(5, text.split("warning of potatoes", -1).length - 1, text);
    }
}
