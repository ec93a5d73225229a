package org.fieldfold.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.Tuple;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.lifecycle.AfterContainer;
import org.fieldfold.fold.FlatScheme;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.Paper;
import org.fieldfold.manuscript.Block;
import org.fieldfold.manuscript.Manuscript;
import org.fieldfold.manuscript.Section;
import org.fieldfold.prose.Run;
import org.junit.jupiter.api.Test;

/** A guide is set alike with and without what earlier trials came to; with it, only what changed is tried. */
class TrialsTest {
    private static final TypeMetrics TYPE = new FixedWidth();
    private static final FigureShapes SHAPES = figure -> figure.length() / 3.0;
    private static final List<List<Frame>> PAPERS = List.of(Samples.frames(4, 2.4, 6),
            opening(Samples.frames(6, 3, 8.5)),
            mixed(Samples.frames(6, 3.4, 8.5), Samples.frames(6, 2, 7)));

    private static int answered;
    private static int said;

    /** Panels of which every other begins a sheet. */
    private static List<Frame> opening(List<Frame> frames) {
        return frames.stream().map(frame -> new Frame(frame.reading(), frame.place(), frame.left(), frame.top(),
                frame.width(), frame.height(), frame.reading() % 2 == 1)).toList();
    }

    /** Every other panel is of another size. */
    private static List<Frame> mixed(List<Frame> some, List<Frame> others) {
        List<Frame> mixed = new ArrayList<>();
        for (int i = 0; i < some.size(); i++) {
            mixed.add(i % 2 == 0 ? some.get(i) : others.get(i));
        }
        return mixed;
    }

    /** What somebody does to a guide. */
    record Edit(int kind, int at, List<Block> blocks) {
        List<List<Block>> of(List<List<Block>> sections) {
            List<List<Block>> edited = new ArrayList<>(sections);
            int place = at % edited.size();
            if (kind == 0 && edited.size() > 2) {
                edited.remove(place);
            } else if (kind == 1) {
                edited.add(place, blocks);
            } else if (kind == 2) {
                edited.add(edited.remove(place));
            } else {
                List<Block> longer = new ArrayList<>(edited.get(place));
                longer.set(at % longer.size(), blocks.get(0));
                edited.set(place, longer);
            }
            return edited;
        }
    }

    @Property(tries = 40, shrinking = ShrinkingMode.BOUNDED)
    void whatIsRememberedChangesNothing(@ForAll("sections") List<List<Block>> first,
            @ForAll("edits") @Size(min = 1, max = 4) List<Edit> edits) {
        LearntTrials trials = new LearntTrials();
        List<List<Block>> sections = first;
        same(sections, trials);
        for (Edit edit : edits) {
            sections = edit.of(sections);
            same(sections, trials);
        }
        answered += trials.answered();
    }

    @AfterContainer
    static void somethingWasAnswered() {
        assertTrue(answered > 500 && said > 10, answered + " answered, " + said + " guides of which something is said");
    }

    private static void same(List<List<Block>> sections, Trials trials) {
        Manuscript pocket = guide(sections);
        for (List<Frame> frames : PAPERS) {
            same(new Setter(TYPE, SHAPES).setOn(pocket, frames),
                    new Setter(TYPE, SHAPES, learnt(trials)).setOn(pocket, frames));
        }
        Manuscript large = pocket.in(new Manuscript.TypeRange(16, 22));
        Imposition page = FlatScheme.PAGE.on(Paper.LETTER, FlipEdge.LONG);
        GatheredGuide anew = new Setter(TYPE, SHAPES).setOnFewest(large, page, 4);
        GatheredGuide some = new Setter(TYPE, SHAPES, learnt(trials)).setOnFewest(large, page, 4);
        assertEquals(anew.sheets().sheets(), some.sheets().sheets());
        same(anew.guide(), some.guide());
    }

    private static Learnt learnt(Trials trials) {
        return new Learnt(trials, new WordCase(TYPE));
    }

    private static void same(SetGuide anew, SetGuide some) {
        assertEquals(Reading.tree(anew), Reading.tree(some));
        assertEquals(SetterTest.untagged(anew), SetterTest.untagged(some));
        assertEquals(anew.findings(), some.findings());
        assertEquals(anew.fit(), some.fit());
        assertEquals(anew.typeSize(), some.typeSize());
        said += anew.findings().isEmpty() ? 0 : 1;
    }

    private static Manuscript guide(List<List<Block>> blocks) {
        List<Section> sections = new ArrayList<>();
        for (int i = 0; i < blocks.size(); i++) {
            Section.Kind kind = i == 0 ? Section.Kind.COVER : i == blocks.size() - 1 ? Section.Kind.CONTACT
                    : Section.Kind.ENTRY;
            sections.add(new Section("s" + i, kind, kind == Section.Kind.ENTRY ? i : 0, "Section " + i,
                    blocks.get(i), blocks.get(i).get(0).origin()));
        }
        return Samples.guide(sections.toArray(Section[]::new)).in(new Manuscript.TypeRange(7.5, 11));
    }

    @Provide
    Arbitrary<List<List<Block>>> sections() {
        return blocks().list().ofMinSize(3).ofMaxSize(7);
    }

    /** One in so many has a sign that the type lacks, or a word that is too wide for narrow panels. */
    private static Arbitrary<List<Block>> blocks() {
        Arbitrary<Block> said = Arbitraries.of("a ☃ in the row", "diamondbackmothcaterpillarsandtheirrelatives "
                + "on the underside").map(words -> Samples.paragraph(Run.plain(words)));
        return Arbitraries.frequencyOf(Tuple.of(30, SetterPropertiesTest.block()),
                Tuple.of(1, said)).list().ofMinSize(1).ofMaxSize(7);
    }

    @Provide
    Arbitrary<List<Edit>> edits() {
        return Combinators.combine(Arbitraries.integers().between(0, 5),
                Arbitraries.integers().between(0, 100), blocks())
                .as(Edit::new).list();
    }

    @Test
    void onlyTheSectionThatChangedIsTried() {
        LearntTrials trials = new LearntTrials();
        List<Frame> frames = Samples.frames(7, 2.75, 8.5);
        Section[] sections = {Samples.cover(), Samples.scouting(), Samples.beetle(1), Samples.leafhopper(2),
            Samples.contact()};
        new Setter(TYPE, Samples.SHAPES, learnt(trials)).setOn(Samples.guide(sections), frames);
        assertTrue(trials.learnt().size() > 5);
        trials.answered();

        new Setter(TYPE, Samples.SHAPES, learnt(trials)).setOn(Samples.guide(sections), frames);
        assertEquals(List.of(), trials.learnt(), "nothing has changed");

        int asked = trials.answered();
        sections[2] = Samples.beetle(1);
        new Setter(TYPE, Samples.SHAPES, learnt(trials)).setOn(Samples.guide(sections), frames);
        List<Trial> learnt = trials.learnt();
        assertTrue(!learnt.isEmpty() && learnt.size() < asked, learnt.toString());
        assertTrue(learnt.stream().allMatch(trial -> trial.toString().contains("section=" + trials.name(sections[2])
                .orElseThrow() + ",")), learnt.toString());
        assertEquals(asked, learnt.size() + trials.answered());
    }

    @Test
    void whatLeavesSomethingToBeSaidIsTriedAgain() {
        LearntTrials trials = new LearntTrials();
        Section snow = new Section("snow", Section.Kind.ENTRY, 1, "Snow", List.of(Samples.paragraph(
                Run.plain("Snow ☃ on the row"))), Samples.span());
        Manuscript guide = Samples.guide(Samples.cover(), snow, Samples.contact());
        for (int build = 0; build < 2; build++) {
            SetGuide set = new Setter(TYPE, Samples.SHAPES, learnt(trials)).setOn(guide,
                    Samples.frames(4, 2.75, 8.5));
            assertEquals("glyph-missing", set.findings().get(0).rule());
            assertEquals(List.of(), trials.learnt());
        }
    }
}
