package org.fieldfold.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.fold.FoldSchemes;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.PanelSlot;
import org.fieldfold.fold.Paper;
import org.fieldfold.manuscript.Block;
import org.fieldfold.manuscript.Manuscript;
import org.fieldfold.manuscript.Section;
import org.fieldfold.prose.Run;
import org.fieldfold.source.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SetterTest {
    private static final SourceSans TYPE = new SourceSans();
    private static final Setter SETTER = new Setter(TYPE, Samples.SHAPES);

    private static Manuscript sample() {
        return Samples.guide(Samples.cover(), Samples.scouting(), Samples.beetle(1), Samples.leafhopper(2),
                Samples.contact());
    }

    private static Section entry(Block... blocks) {
        return entry(1, blocks);
    }

    private static Section entry(int tab, Block... blocks) {
        return new Section("entry", Section.Kind.ENTRY, tab, "Entry", List.of(blocks), Samples.span());
    }

    private static Block.Paragraph sentences(int sentences, String brief) {
        return new Block.Paragraph(
                List.of(Run.plain("Walk the field edge and turn forty leaves over. ".repeat(sentences))),
                brief.isEmpty() ? List.of() : List.of(Run.plain(brief)), Samples.span());
    }

    @ParameterizedTest
    @ValueSource(doubles = {2.75, 3.625, 3.6875})
    void everythingIsInsideApartAndRead(double width) {
        List<Frame> frames = Samples.frames(6, width, 8.5);
        SetGuide guide = SETTER.setOn(sample(), frames);
        assertEquals(List.of(), guide.findings());
        PanelCheck.check(TYPE, frames, guide);
        assertReadsAsWritten(sample(), guide);
    }

    /**
     * What is read aloud is the manuscript, word for word, but for the year, the code's address and the foot.
     */
    static void assertReadsAsWritten(Manuscript manuscript, SetGuide guide) {
        List<String> aloud = new ArrayList<>(Reading.aloud(guide));
        List<String> added = new ArrayList<>();
        int at = 0;
        List<String> written = Reading.written(manuscript);
        for (String word : aloud) {
            if (at < written.size() && written.get(at).equals(word)) {
                at++;
            } else {
                added.add(word);
            }
        }
        assertEquals(written.size(), at, "lost from here: " + written.subList(at, Math.min(written.size(), at
                + 8)));
        added.removeIf("handbook.marrowvalley.example/2027"::equals);
        assertTrue(String.join(" ", added).matches("(2027)?( ?31 January 2028)?"
                + "( ?The label is the law[.] Demonstration, not advice[.])?"), added.toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"letter", "accordion-4"})
    void fitsTheFoldsThatShip(String scheme) {
        for (Paper paper : List.of(Paper.LETTER, Paper.A4)) {
            List<PanelSlot> slots = Imposition.of(FoldSchemes.named(scheme), paper, FlipEdge.SHORT).slots();
            SetGuide guide = SETTER.set(sample(), slots);
            assertEquals(List.of(), guide.findings());
            PanelCheck.check(TYPE, slots.stream().map(Frame::of).toList(), guide);
        }
    }

    @Test
    void takesTheLargestTypeThatFits() {
        List<Frame> frames = Samples.frames(6, 2.75, 8.5);
        SetGuide guide = SETTER.setOn(sample(), frames);
        double size = guide.typeSize();
        assertTrue(size >= 7.5 && size <= 9, "size " + size);
        Manuscript larger = retyped(sample(), size + 0.25, size + 0.25);
        boolean fitsLarger = SETTER.setOn(larger, frames).findings().isEmpty();
        assertTrue(size == 9 || !fitsLarger);
    }

    private static Manuscript retyped(Manuscript m, double smallest, double largest) {
        return new Manuscript(m.id(), m.title(), m.language(), m.year(), m.holdsUntil(), m.proof(), m.foot(),
                m.ink(), new Manuscript.TypeRange(smallest, largest), m.sections());
    }

    @Test
    void shortFormsAreTakenOnlyWhereThereIsNoRoom() {
        Manuscript roomy = Samples.guide(entry(sentences(10, "Turn leaves."), sentences(10, "Count.")));
        Manuscript tight = Samples.guide(entry(sentences(26, "Turn leaves."), sentences(20, "Count.")));
        assertEquals(0, SETTER.setOn(roomy, Samples.frames(1, 2.75, 8.5)).fit().get(0).brief());
        assertEquals(1, SETTER.setOn(tight, Samples.frames(1, 2.75, 8.5)).fit().get(0).brief());
    }

    @Test
    void anEntryGoesOnToASparePanel() {
        Manuscript guide = Samples.guide(entry(sentences(60, "")));
        List<Frame> frames = Samples.frames(2, 2.75, 8.5);
        SetGuide set = SETTER.setOn(guide, frames);
        assertEquals(List.of(), set.findings());
        assertEquals(List.of("entry", "entry"), set.fit().stream().map(SetGuide.PanelFit::section).toList());
        PanelCheck.check(TYPE, frames, set);
        assertReadsAsWritten(guide, set);
    }

    @Test
    void whatDoesNotFitIsSaidWithItsPlaceAndNeverDrawnOutside() {
        Block.Paragraph first = sentences(20, "");
        Block.Paragraph second = sentences(90, "Count forty leaves. ".repeat(200));
        Manuscript guide = Samples.guide(entry(first, second));
        List<Frame> frames = Samples.frames(1, 2.75, 8.5);
        SetGuide set = SETTER.setOn(guide, frames);
        Finding finding = set.findings().get(0);
        assertEquals("does-not-fit", finding.rule());
        assertEquals(second.origin(), finding.span());
        assertTrue(finding.message().matches("expected \"Entry\" to end on panel 1 of guide '[a-z-]+', found "
                + "[0-9]+ lines over "
                + "at 7.5 pt, with every text in its short form"), finding.message());
        assertEquals(7.5, set.typeSize());
        PanelCheck.check(TYPE, frames, set);
    }

    @Test
    void itemsThatMayGoAreLeftOutFromTheLast() {
        List<List<Run>> items = new ArrayList<>();
        for (int i = 1; i <= 60; i++) {
            items.add(List.of(Run.plain("item" + i)));
        }
        Manuscript guide = Samples.guide(entry(new Block.Items(false, items, 10, Samples.span())));
        SetGuide set = SETTER.setOn(guide, Samples.frames(1, 2.75, 8.5));
        List<String> aloud = Reading.aloud(set);
        assertEquals(List.of(), set.findings());
        assertTrue(aloud.contains("item10") && !aloud.contains("item60"), aloud.toString());
    }

    @Test
    void aListThatMayGoIsLeftOutWholeWhereAPanelIsFull() {
        List<List<Run>> news = List.of(List.of(Run.plain("news1")), List.of(Run.plain("news2")));
        Block list = new Block.Items(false, news, 0, Samples.span());
        SetGuide roomy = SETTER.setOn(Samples.guide(entry(list)), Samples.frames(1, 2.75, 8.5));
        assertTrue(Reading.aloud(roomy).containsAll(List.of("news1", "news2")));
        boolean whole = false;
        boolean none = false;
        for (int sentences = 20; sentences < 60; sentences++) {
            SetGuide set = SETTER.setOn(Samples.guide(entry(sentences(sentences, ""), list)),
                    Samples.frames(1, 2.75, 8.5));
            List<String> aloud = Reading.aloud(set);
            whole |= aloud.contains("news2");
            none |= set.findings().isEmpty() && !aloud.contains("news1");
        }
        assertTrue(whole && none, "with room it is there, without it is gone and nothing is over");
    }

    @Test
    void moreEntriesThanPanelsShare() {
        Manuscript guide = Samples.guide(entry(1, sentences(3, "")), entry(2, sentences(4, "")), entry(3,
                sentences(5, "")));
        List<Frame> frames = Samples.frames(2, 2.75, 8.5);
        SetGuide set = SETTER.setOn(guide, frames);
        assertEquals(List.of(), set.findings());
        PanelCheck.check(TYPE, frames, set);
        assertReadsAsWritten(guide, set);
        assertEquals(3, set.document().children().size());
    }

    @Test
    void aMissingGlyphIsSaidAtItsBlock() {
        Block.Paragraph snow = Samples.paragraph(Run.plain("cold ☃ now"));
        SetGuide set = new Setter(new FixedWidth(), Samples.SHAPES).setOn(Samples.guide(entry(snow)),
                Samples.frames(1, 2.75, 8.5));
        Finding finding = set.findings().get(0);
        assertEquals("glyph-missing", finding.rule());
        assertEquals(snow.origin(), finding.span());
        assertTrue(finding.message().contains("U+2603"), finding.message());
        assertEquals(List.of("cold", "?", "now"), Reading.aloud(set).subList(0, 3));
    }

    @Test
    void theProofIsMarkedOnEveryPanel() {
        Manuscript m = sample();
        Manuscript proof = new Manuscript(m.id(), m.title(), m.language(), m.year(), m.holdsUntil(),
                Optional.of("PROOF"), m.foot(), m.ink(), m.type(), m.sections());
        List<Frame> frames = Samples.frames(6, 2.75, 8.5);
        SetGuide set = SETTER.setOn(proof, frames);
        for (SetPanel panel : set.panels()) {
            assertEquals(1, panel.marks().stream().filter(mark -> mark instanceof Mark.Words words
                    && words.text().equals("PROOF")).count());
        }
        PanelCheck.check(TYPE, frames, set);
    }

    @Test
    void baselinesOfAllPanelsStandOnOneGridOfAtLeast125Percent() {
        List<Frame> frames = Samples.frames(6, 2.75, 8.5);
        SetGuide guide = SETTER.setOn(sample(), frames);
        Leading leading = SETTER.leading(frames.get(0).height(), guide.typeSize(), 7.5);
        assertTrue(leading.line() >= 1.25 * guide.typeSize());
        for (SetPanel panel : guide.panels()) {
            for (Mark mark : panel.marks()) {
                // what stands centred in a black or ruled box keeps its own middle
                if (mark instanceof Mark.Words words && words.ink().equals(Mark.Ink.BLACK)
                        && words.tag().isPresent()) {
                    double rows = (words.baseline() + leading.drop() - frames.get(0).top()) / leading.half();
                    assertTrue(Math.abs(rows - Math.rint(rows)) < 1e-6, words + " at row " + rows);
                }
            }
        }
    }

    @Test
    void theSameIsSetTwiceTheSame() {
        List<Frame> frames = Samples.frames(6, 2.75, 8.5);
        SetGuide one = SETTER.setOn(sample(), frames);
        SetGuide two = new Setter(new SourceSans(), Samples.SHAPES).setOn(sample(), frames);
        assertEquals(Reading.tree(one), Reading.tree(two));
        assertEquals(numbers(one), numbers(two));
    }

    /** All but the places of the texts, which are never the same in samples. */
    private static List<List<Object>> numbers(SetGuide set) {
        return set.fit().stream().map(fit -> List.<Object>of(fit.reading(), fit.section(), fit.used(),
                fit.typeSize(), fit.leading(), fit.brief())).toList();
    }

    @Test
    void copiesForOfficesAreSetAsIfEachWereTheFirst() {
        List<Frame> frames = Samples.frames(6, 2.75, 8.5);
        Section other = new Section("contact", Section.Kind.CONTACT, 0, "Ask", List.of(Samples.paragraph(
                Run.plain("Another office, ☃ and far away."))), Samples.span());
        Manuscript copy = Samples.guide(sample().sections().get(0), sample().sections().get(1),
                sample().sections().get(2), sample().sections().get(3), other);
        Setter used = new Setter(TYPE, Samples.SHAPES);
        used.setOn(sample(), frames);
        SetGuide second = used.setOn(copy, frames);
        SetGuide fresh = new Setter(TYPE, Samples.SHAPES).setOn(copy, frames);
        assertEquals(Reading.tree(fresh), Reading.tree(second));
        assertEquals(untagged(fresh), untagged(second));
        assertEquals(fresh.findings(), second.findings());
    }

    static List<String> untagged(SetGuide guide) {
        return guide.panels().stream().flatMap(panel -> panel.marks().stream())
                .map(mark -> mark.toString().replaceAll("Tag@[0-9a-f]+", "Tag")).toList();
    }

    @Test
    void headingsNeverSkipALevel() {
        int level = 0;
        for (String line : Reading.tree(SETTER.setOn(sample(), Samples.frames(6, 2.75, 8.5))).split("\n")) {
            String role = line.strip().split(" ")[0];
            if (role.matches("H[1-6]")) {
                int here = role.charAt(1) - '0';
                assertTrue(here <= level + 1, line);
                level = here;
            }
        }
    }

    @Test
    void trueSizeBarsAreTrue() {
        SetGuide guide = SETTER.setOn(sample(), Samples.frames(6, 2.75, 8.5));
        // 11 mm of beetle and 12 mm of larva, at 72 points an inch of 25.4 mm
        for (double mm : new double[] {11, 12}) {
            assertTrue(guide.panels().get(2).marks().stream().anyMatch(mark ->
                    mark instanceof Mark.Stroke stroke
                    && Math.abs(stroke.x2() - stroke.x1() - mm * 72 / 25.4) < 1e-6), mm + " mm");
        }
    }
}
