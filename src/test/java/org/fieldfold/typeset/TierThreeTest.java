package org.fieldfold.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.fieldfold.manuscript.Manuscript;
import org.junit.jupiter.api.Test;

/** However short a panel is, no material is seen on it without the caution that stands behind it. */
class TierThreeTest {
    @Test
    void aMaterialIsNeverSeenWithoutItsCaution() {
        Manuscript guide = Samples.guide(Samples.beetle(1));
        boolean whole = false;
        boolean none = false;
        for (double height = 3; height < 9; height += 0.1) {
            for (int panels = 1; panels <= 2; panels++) {
                List<Frame> frames = Samples.frames(panels, 2.75, height);
                SetGuide set = new Setter(new FixedWidth(), Samples.SHAPES).setOn(guide, frames);
                for (SetPanel panel : set.panels()) {
                    String words = words(panel);
                    boolean material = words.contains("spinosad") || words.contains("chlorantraniliprole");
                    assertEquals(material, words.contains("Change group with each generation."),
                            panels + " panels of " + height + " in: " + words);
                    whole |= material;
                }
                none |= set.panels().stream().map(TierThreeTest::words)
                        .noneMatch(words -> words.contains("spinosad"));
            }
        }
        assertTrue(whole && none, "both panels that hold tier 3 and panels that do not were tried");
    }

    private static String words(SetPanel panel) {
        StringBuilder words = new StringBuilder();
        for (Mark mark : panel.marks()) {
            if (mark instanceof Mark.Words line) {
                words.append(line.text());
            }
        }
        return words.toString();
    }
}
