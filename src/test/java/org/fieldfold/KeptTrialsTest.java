package org.fieldfold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.fieldfold.content.BaseLoader;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Guide;
import org.fieldfold.entry.Placed;
import org.fieldfold.kept.Kept;
import org.fieldfold.manuscript.Block;
import org.fieldfold.manuscript.GuideWriter;
import org.fieldfold.manuscript.Manuscript;
import org.fieldfold.manuscript.OfficePanel;
import org.fieldfold.manuscript.Phrases;
import org.fieldfold.manuscript.Section;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.Paper;
import org.fieldfold.prose.Run;
import org.fieldfold.source.Span;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What trials of a guide that ships came to, from build to build. */
class KeptTrialsTest {
    private static final String NAME = "potato.en.letter";
    private static ContentBase base;
    private static Placed<Guide> guide;
    private static Manuscript written;

    @TempDir
    private Path folder;

    @BeforeAll
    static void write() throws IOException {
        base = BaseLoader.load(Path.of("content")).base().orElseThrow();
        guide = base.guides().get("potato");
        written = new GuideWriter(base, Phrases.in("en")).write(guide, OfficePanel.generic(base.edition()), false);
    }

    private Kept kept(Map<String, String> figures, String program) {
        return Kept.in(folder.resolve("kept"), program).naming(figures, PrintRoom.SHARED);
    }

    private Kept kept() {
        return kept(PrintRoom.hashes(base), "this");
    }

    /** What one build asked of the trials. */
    private record Asked(int answered, int learnt, List<String> said) {
    }

    /** Sets a guide as a build does. */
    private static Asked build(Manuscript manuscript, Kept kept) {
        PrintRoom room = PrintRoom.of(base, kept);
        KeptTrials trials = room.trials(NAME);
        Imposition sheet = Imposition.of(base.scheme(guide.value().scheme()).orElseThrow(), Paper.LETTER,
                FlipEdge.SHORT);
        Setting.Set set = room.set(new Setting(manuscript, new Setting.Manner.Panels(sheet.slots(), Optional.empty())),
                room.learnt(NAME));
        Asked asked = new Asked(trials.answered(), trials.learnt(), set.guide().panels().stream().map(panel ->
                panel.toString().replaceAll("Tag@[0-9a-f]+", "Tag")).toList());
        room.leaveTrials(List.of("foldouts/" + NAME + ".pdf"));
        kept.tidy();
        return asked;
    }

    private static Manuscript edited(String section, UnaryOperator<Section> edit) {
        return written.of(written.sections().stream().map(one -> one.id().equals(section) ? edit.apply(one) : one)
                .toList());
    }

    /** A section in which the first text is one word longer. */
    private static Section longer(Section section) {
        List<Block> blocks = new ArrayList<>(section.blocks());
        int at = blocks.indexOf(blocks.stream().filter(Block.Paragraph.class::isInstance).findFirst().orElseThrow());
        Block.Paragraph paragraph = (Block.Paragraph) blocks.get(at);
        List<Run> runs = new ArrayList<>(paragraph.runs());
        runs.add(Run.plain(" now"));
        blocks.set(at, new Block.Paragraph(runs, paragraph.brief(), paragraph.origin()));
        return new Section(section.id(), section.kind(), section.tab(), section.name(), blocks, section.origin());
    }

    @Test
    void afterAChangeOfOneSectionMostAnswersAreKnown() {
        Asked first = build(written, kept());
        assertTrue(first.learnt() > 20, first.learnt() + " learnt");
        Asked same = build(written, kept());
        assertEquals(0, same.learnt());
        assertEquals(first.said(), same.said());

        String entry = written.sections().stream().filter(section -> section.kind() == Section.Kind.ENTRY).skip(1)
                .findFirst().orElseThrow().id();
        Manuscript edited = edited(entry, KeptTrialsTest::longer);
        Asked some = build(edited, kept());
        assertTrue(some.learnt() > 0 && some.learnt() < some.answered(), some.learnt() + " learnt, " + some.answered()
                + " answered");
        assertEquals(build(edited, Kept.nothing()).said(), some.said());
        assertEquals(0, build(edited, kept()).learnt(), "what was answered is kept for the next build");
    }

    @Test
    void whatWasLeftByAnotherProgramOrIsDamagedIsNone() throws IOException {
        Asked first = build(written, kept());
        assertEquals(first.learnt(), build(written, kept(PrintRoom.hashes(base), "another")).learnt());

        build(written, kept());
        Path file = trials();
        byte[] bytes = Files.readAllBytes(file);
        bytes[bytes.length / 2] ^= 1;
        Files.write(file, bytes);
        assertEquals(first, build(written, kept()));

        Files.write(trials(), java.util.Arrays.copyOf(Files.readAllBytes(trials()), 40));
        assertEquals(first, build(written, kept()));
        Kept kept = kept();
        kept.leave(kept.key("trials", NAME), new byte[25 * 3 + 7]);
        assertEquals(first, build(written, kept()));
        assertEquals(0, build(written, kept()).learnt());
    }

    /** The only result that is a file of its own. */
    private Path trials() throws IOException {
        Kept kept = kept();
        return folder.resolve("kept").resolve(kept.key("trials", NAME).orElseThrow().hash());
    }

    @Test
    void aSectionIsNamedByAllThatItSaysAndShows() {
        KeptTrials trials = PrintRoom.of(base, kept()).trials(NAME);
        Section section = written.sections().get(2);
        Section copy = new Section(section.id(), section.kind(), section.tab(), section.name(), section.blocks(),
                section.origin());
        assertEquals(trials.name(section), trials.name(copy));
        assertNotEquals(trials.name(section), trials.name(longer(section)));
        Span far = new Span(section.origin().file(), 0, 0);
        assertEquals(trials.name(section), trials.name(new Section(section.id(), section.kind(), section.tab(),
                section.name(), section.blocks(), far)), "where a section was written does not matter");

        String figure = section.blocks().stream().filter(Block.Plates.class::isInstance).map(Block.Plates.class::cast)
                .flatMap(plates -> plates.plates().stream()).findFirst().orElseThrow().figure();
        Map<String, String> figures = new TreeMap<>(PrintRoom.hashes(base));
        figures.put(figure, "drawn anew");
        assertNotEquals(trials.name(section), PrintRoom.of(base, kept(figures, "this")).trials(NAME).name(section));
        assertEquals(Optional.empty(), PrintRoom.of(base, Kept.nothing()).trials(NAME).name(section));
    }

    @Test
    void whatIsNotAskedIsDroppedAfterAWhile() throws IOException {
        List<Manuscript> states = List.of(written, written.of(written.sections().stream().map(section ->
                section.kind() == Section.Kind.ENTRY ? longer(section) : section).toList()));
        build(states.get(0), kept());
        long one = Files.size(trials());
        build(states.get(1), kept());
        long two = Files.size(trials());
        assertTrue(two > one);
        assertEquals(0, build(states.get(0), kept()).learnt(), "back to what was");
        Manuscript state = states.get(1);
        for (int build = 0; build < 5; build++) {
            state = state.of(state.sections().stream().map(section -> section.kind() == Section.Kind.ENTRY
                    ? longer(section) : section).toList());
            build(state, kept());
        }
        assertTrue(build(states.get(0), kept()).learnt() > 0, "forgotten");
        assertTrue(Files.size(trials()) < 5 * two, Files.size(trials()) + " bytes");
    }

    @Test
    void whatNothingHadToBeSetForStays() throws IOException {
        build(written, kept());
        for (int build = 0; build < 5; build++) {
            Kept kept = kept();
            PrintRoom.of(base, kept).leaveTrials(List.of("foldouts/" + NAME + ".pdf"));
            kept.tidy();
        }
        assertTrue(Files.exists(trials()));
        for (int build = 0; build < 5; build++) {
            Kept kept = kept();
            PrintRoom.of(base, kept).leaveTrials(List.of());
            kept.tidy();
        }
        assertTrue(Files.notExists(trials()), "the sheet is printed no more");
    }

    @Test
    void copiesOfOfficesAskAndLearnNothing() throws IOException {
        build(written, kept());
        long size = Files.size(trials());
        Kept kept = kept();
        PrintRoom room = PrintRoom.of(base, kept);
        Manuscript own = edited(written.sections().get(2).id(), KeptTrialsTest::longer);
        Imposition sheet = Imposition.of(base.scheme(guide.value().scheme()).orElseThrow(), Paper.LETTER,
                FlipEdge.SHORT);
        room.set(new Setting(own, new Setting.Manner.Panels(sheet.slots(), Optional.empty())),
                room.known(NAME));
        assertEquals(0, room.trials(NAME).learnt());
        room.leaveTrials(List.of("foldouts/" + NAME + ".pdf"));
        kept.tidy();
        assertEquals(size, Files.size(trials()));
        try (Stream<Path> files = Files.list(folder.resolve("kept"))) {
            assertEquals(1, files.filter(file -> file.getFileName().toString().matches("[0-9a-f]{64}")).count());
        }
    }
}
