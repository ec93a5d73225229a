package org.fieldfold.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.fieldfold.manuscript.Block;
import org.fieldfold.manuscript.Manuscript;
import org.fieldfold.manuscript.Section;
import org.fieldfold.prose.Run;

/**
 * Whatever is written, panels of any size: nothing outside, nothing over anything, nothing lost without being
 * said.
 */
class SetterPropertiesTest {
    private static final TypeMetrics TYPE = new FixedWidth();

    @Property(tries = 300)
    void panelsHold(@ForAll("sections") List<List<Block>> blocks, @ForAll @IntRange(min = 110,
            max = 400) int width,
            @ForAll @IntRange(min = 220, max = 800) int height, @ForAll @IntRange(min = 1,
            max = 7) int panels) {
        List<Section> sections = new ArrayList<>();
        for (int i = 0; i < blocks.size(); i++) {
            Section.Kind kind = i == 0 ? Section.Kind.COVER : i == blocks.size() - 1 ? Section.Kind.CONTACT
                    : Section.Kind.ENTRY;
            sections.add(new Section("s" + i, kind, kind == Section.Kind.ENTRY ? i : 0, "Section " + i,
                    blocks.get(i), Samples.span()));
        }
        Manuscript guide = Samples.guide(sections.toArray(Section[]::new));
        List<Frame> frames = Samples.frames(panels, (width + 17) / 72.0, (height + 36) / 72.0);
        SetGuide set = new Setter(TYPE, figure -> figure.length() / 3.0).setOn(guide, frames);
        PanelCheck.check(TYPE, frames, set);
        assertEquals(panels, set.fit().size());
        if (set.findings().stream().noneMatch(finding -> finding.rule().equals("does-not-fit"))) {
            long brief = set.fit().stream().mapToInt(SetGuide.PanelFit::brief).sum();
            if (brief == 0) {
                SetterTest.assertReadsAsWritten(guide, set);
            }
        } else if (set.findings().stream().anyMatch(finding -> finding.message().contains(" over at "))) {
            assertEquals(7.5, set.typeSize(), "the smallest before anything is given up");
        }
    }

    @Provide
    Arbitrary<List<List<Block>>> sections() {
        return block().list().ofMinSize(1).ofMaxSize(7).list().ofMinSize(1).ofMaxSize(6);
    }

    private static Arbitrary<List<Run>> runs(int most) {
        Arbitrary<String> words = Arbitraries.of("leaf", "beetles", "20–30 %", "count", "a", "¼ mile",
                "again/after", "chlorantraniliprole", "in", "row-cover", "handbook.marrowvalley.example", "–",
                "under").list()
                .ofMinSize(1).ofMaxSize(most).map(list -> list.stream().collect(Collectors.joining(" ")));
        Arbitrary<Run> run = Combinators.combine(words, Arbitraries.of(Run.Style.values())).as((text,
                style) ->
                new Run(text + " ", style, ""));
        return run.list().ofMinSize(1).ofMaxSize(3);
    }

    static Arbitrary<Block> block() {
        Arbitrary<Block> paragraph = Combinators.combine(runs(25), runs(5), Arbitraries.of(true, false))
                .as((full, brief, has) -> new Block.Paragraph(full, has ? brief : List.of(), Samples.span()));
        Arbitrary<Block> title = Combinators.combine(runs(3), runs(3))
                .as((name, beneath) -> new Block.Title(name, beneath, Samples.span()));
        Arbitrary<Block> heading = runs(3).map(runs -> new Block.Heading(2, runs, Samples.span()));
        Arbitrary<Block> items = Combinators.combine(runs(10).list().ofMinSize(1).ofMaxSize(5),
                Arbitraries.of(true, false)).as((list, numbered) -> new Block.Items(numbered, list,
                Samples.span()));
        Arbitrary<Block.Plate> plate = Combinators.combine(Arbitraries.of("a", "figure", "longer-figure"),
                Arbitraries.of("adult", "large larva on a leaf", ""), Arbitraries.doubles().between(0.2,
                60).ofScale(1),
                Arbitraries.of(true, false)).as((figure, caption, size, sized) -> new Block.Plate(figure,
                caption, "alt",
                        sized ? Optional.of(new Block.Plate.Length(size / 2, size)) : Optional.empty()));
        Arbitrary<Block> plates = plate.list().ofMinSize(1).ofMaxSize(5)
                .map(list -> new Block.Plates(list, Samples.span()));
        Arbitrary<Block> box = Combinators.combine(runs(12), Arbitraries.of("50", "any", "20–30 %",
                "1 in 10 plants"),
                Arbitraries.of("adults", "beetles, grubs or eggs"), Arbitraries.integers().between(0, 25))
                .as((look, number, below, stops) -> new Block.CountBox(look, "act at", number, below, stops,
                Samples.span()));
        Arbitrary<Block> tier = Combinators.combine(Arbitraries.integers().between(1, 3), runs(4),
                runs(8).list().ofMinSize(0).ofMaxSize(4), runs(6)).as((number, name, measures, after) ->
                new Block.Tier(number, name, measures.stream().map(runs -> new Block.Measure(runs,
                        Samples.span())).toList(), after, Samples.span()));
        Arbitrary<Block> grid = Combinators.combine(Arbitraries.integers().between(1, 4),
                Arbitraries.integers().between(0, 12), runs(3)).as((columns, rows,
                cell) -> new Block.Grid("Counts",
                        java.util.Collections.nCopies(columns, cell),
                        java.util.Collections.nCopies(rows, java.util.Collections.nCopies(columns, cell)),
                        Samples.span()));
        Arbitrary<Block> notice = runs(12).map(runs -> new Block.Notice(runs, Samples.span()));
        Arbitrary<Block> code = runs(6).map(runs ->
                new Block.Code("https://handbook.marrowvalley.example/2027", runs,
                Samples.span()));
        Arbitrary<Block> divider = Arbitraries.create(() -> new Block.Divider(Samples.span()));
        return Arbitraries.oneOf(paragraph, paragraph, title, heading, items, plates, box, tier, grid, notice,
                code, divider);
    }
}
