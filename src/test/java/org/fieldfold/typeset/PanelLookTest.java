package org.fieldfold.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.fieldfold.manuscript.Manuscript;
import org.junit.jupiter.api.Test;

/** Sets the sample guide in the real type and leaves pictures of it in {@code target/look}. */
class PanelLookTest {
    @Test
    void narrowPanels() throws IOException {
        look("narrow", 2.75);
    }

    @Test
    void widePanels() throws IOException {
        look("wide", 3.6875);
    }

    private static void look(String name, double width) throws IOException {
        SourceSans type = new SourceSans();
        Manuscript guide = Samples.guide(Samples.cover(), Samples.scouting(), Samples.beetle(1),
                Samples.leafhopper(2), Samples.contact());
        SetGuide set = new Setter(type, Samples.SHAPES).setOn(guide, Samples.frames(6, width, 8.5));
        PanelSvg.write(Path.of("target/look/" + name + ".svg"), type, set.panels(), width * 72, 8.5 * 72);
        assertEquals(List.of(), set.findings());
    }
}
