package org.fieldfold.manuscript;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.fieldfold.content.BaseLoader;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.prose.Run;
import org.fieldfold.source.SourceFile;
import org.fieldfold.source.Span;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** What every guide of the demo base says, and in which order. */
class GuideWriterTest {
    private static ContentBase base;

    @BeforeAll
    static void read() throws IOException {
        base = BaseLoader.load(Path.of("content")).base().orElseThrow();
    }

    private static Manuscript write(String guide) {
        return new GuideWriter(base, Phrases.in("en")).write(base.guides().get(guide),
                OfficePanel.generic(base.edition()), false);
    }

    /**
     * 7 CFR 205.206: (a) prevention and how the crop is grown, (b) physical and biological measures, and (e)
     * a material only when those are insufficient, on documented conditions. Here: tiers rise within each
     * entry, and the third, wherever it stands, says its condition and its caution.
     */
    @TestFactory
    Stream<DynamicTest> tiersStandInTheirOrderInEveryGuide() {
        return base.guides().keySet().stream().map(guide -> DynamicTest.dynamicTest(guide, () -> {
            for (Section section : write(guide).sections()) {
                List<Integer> order = new ArrayList<>();
                for (Block block : section.blocks()) {
                    if (block instanceof Block.Tier tier) {
                        order.add(tier.tier());
                        String after = words(tier.after());
                        assertTrue(tier.tier() < 3 || after.contains("The label is the law"), after);
                    }
                }
                assertEquals(order.stream().sorted().distinct().toList(), order, section.id());
                assertTrue(section.kind() != Section.Kind.ENTRY || order.containsAll(List.of(1, 2)),
                        section.id());
            }
        }));
    }

    @Test
    void aTierThreeBlockCannotBeMadeWithoutItsCaution() {
        Span somewhere = Span.startOf(new SourceFile("pests/x.yaml", ""));
        assertThrows(IllegalArgumentException.class, () -> new Block.Tier(3, List.of(Run.plain("3")),
                List.of(), List.of(), somewhere));
    }

    @Test
    void aGardenGuideHasNoRestrictedMaterialAndNoAcres() {
        String all = words(write("home-garden"));
        base.materials().values().stream().map(material -> material.value())
                .filter(material -> material.restrictedUse())
                .forEach(material -> assertFalse(all.contains(material.name() + " ("), material.name()));
        assertFalse(all.contains(" acre"), "counts in a garden are per bed or row");
    }

    @Test
    void theCountCardOfTheSketchReadsAsInTheField() {
        Block.CountBox box = write("potato").sections().stream()
                .filter(section -> section.id().equals("colorado-potato-beetle"))
                .flatMap(section -> section.blocks().stream()).filter(Block.CountBox.class::isInstance)
                .map(Block.CountBox.class::cast).findFirst().orElseThrow();
        assertEquals("Count adults on 50 stems: 10 stops in a\u00a0V, 5 stems each, every 7 days.",
                words(box.look()));
        assertEquals("act at 50 adults", box.above() + " " + box.number() + " " + box.below());
        assertEquals(10, box.stops());
    }

    @Test
    void everyPanelCarriesItsYearAndTheCautionAtItsFoot() {
        Manuscript guide = write("apple");
        assertEquals(2027, guide.year());
        assertEquals("January 31, 2028", guide.holdsUntil());
        assertEquals("The label is the law. Demonstration, not advice. Holds until Jan 31, 2028.",
                words(guide.foot()).replace('\u00a0', ' '));
    }

    private static String words(Manuscript manuscript) {
        StringBuilder all = new StringBuilder();
        for (Section section : manuscript.sections()) {
            for (Block block : section.blocks()) {
                all.append(block);
            }
        }
        return all.toString();
    }

    private static String words(List<Run> runs) {
        StringBuilder all = new StringBuilder();
        runs.forEach(run -> all.append(run.text()));
        return all.toString();
    }
}
