package org.fieldfold.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A table that runs on shows its header again, and is one table to those who hear it. */
class LongTableTest {
    private static final int ROWS = Samples.TABLE_ROWS;

    private static List<Mark.Words> words(SetPanel panel) {
        return panel.marks().stream().filter(Mark.Words.class::isInstance).map(Mark.Words.class::cast)
                .toList();
    }

    @Test
    void theHeaderStandsOnEachPanelAndIsReadOnce() {
        List<Frame> frames = Samples.frames(5, 3.69, 8.5);
        SetGuide set = new Setter(new FixedWidth(), Samples.SHAPES).setOn(Samples.longTable(), frames);
        assertEquals(List.of(), set.findings());
        PanelCheck.check(new FixedWidth(), frames, set);
        int panels = 0;
        int spoken = 0;
        for (SetPanel panel : set.panels()) {
            List<Mark.Words> rows = words(panel).stream().filter(mark -> mark.text().startsWith("field "))
                    .toList();
            List<Mark.Words> heads = words(panel).stream().filter(mark -> mark.text().strip().equals("Field"))
                    .toList();
            assertEquals(rows.isEmpty() ? 0 : 1, heads.size(), "panel " + panel.reading());
            if (!rows.isEmpty()) {
                panels++;
                spoken += heads.get(0).tag().isPresent() ? 1 : 0;
                assertTrue(heads.get(0).baseline() < rows.get(0).baseline());
                assertEquals(heads.get(0).x(), rows.get(0).x());
            }
        }
        assertTrue(panels >= 2, "the table runs over " + panels + " panels");
        assertEquals(1, spoken);
        String tree = Reading.tree(set);
        assertEquals(1, tree.split("THead", -1).length - 1, tree);
        assertEquals(ROWS + 1, tree.split("TR\n", -1).length - 1);
    }
}
