package org.fieldfold.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.fieldfold.manuscript.Manuscript;
import org.junit.jupiter.api.Test;

/**
 * Panels as text, set in type of one width, and their tags: every line break and every half line of white is
 * seen in a comparison. After a wanted change, {@code mvn test -Dtest=GoldenPanelsTest -Dgolden.refresh=true}
 * and read them.
 */
class GoldenPanelsTest {
    private static final Path FOLDER = Path.of("src/test/resources/org/fieldfold/typeset");
    private static final List<Frame> FRAMES = Samples.frames(5, 3.69, 8.5);

    private static SetGuide sample() {
        Manuscript guide = Samples.guide(Samples.cover(), Samples.scouting(), Samples.beetle(1),
                Samples.leafhopper(2), Samples.contact());
        return new Setter(new FixedWidth(), Samples.SHAPES).setOn(guide, FRAMES);
    }

    @Test
    void panels() throws IOException {
        SetGuide guide = sample();
        assertEquals(List.of(), guide.findings());
        for (SetPanel panel : guide.panels()) {
            compare("panel-" + panel.reading() + ".txt",
                    PanelText.of(panel, FRAMES.get(panel.reading() - 1), guide.typeSize()));
        }
    }

    @Test
    void tags() throws IOException {
        compare("tags.txt", Reading.tree(sample()));
    }

    private static void compare(String name, String found) throws IOException {
        Path file = FOLDER.resolve(name);
        if (Boolean.getBoolean("golden.refresh")) {
            Files.createDirectories(FOLDER);
            Files.writeString(file, found);
        }
        assertEquals(Files.readString(file).replace("\r\n", "\n"), found, name);
    }
}
