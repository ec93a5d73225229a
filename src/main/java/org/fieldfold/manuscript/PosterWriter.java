package org.fieldfold.manuscript;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Guide;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.prose.Run;
import org.fieldfold.source.Span;

/**
 * Writes the poster of a guide for the wall of a packing shed: of each pest its name, a drawing, what to look
 * at and the number to act at. No measure of tier 3 stands on it: whoever is past the number asks the office.
 */
public final class PosterWriter {
    /**
     * Points. A letter is read with ease from two hundred times its height (common practice, no source):
     * capitals of 13 point, 3 mm high, from 60 cm, an arm's length (no English poster here has less);
     * of 12 point from 55 cm; a number three times as large from two steps away.
     */
    private static final Manuscript.TypeRange TYPE = new Manuscript.TypeRange(12, 22);

    private final ContentBase base;
    private final Phrases phrases;

    public PosterWriter(ContentBase base, Phrases phrases) {
        this.base = base;
        this.phrases = phrases;
    }

    /**
     * The poster's manuscript: one section.
     *
     * @param pocket the same guide's pocket copy, for its year, foot and ink
     */
    public Manuscript write(Manuscript pocket, Placed<Guide> placed, OfficePanel office) {
        Guide guide = office.keeps(placed.value());
        int all = placed.value().entries().size();
        String part = guide.entries().size() == all ? ""
                : " " + phrases.say("cover.part", guide.entries().size(), all);
        Reader reader = new Reader(guide.audience(), guide.crops(), true, phrases);
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Title(List.of(Run.plain(guide.title())),
                List.of(Run.plain(phrases.say("poster.purpose") + part)), placed.at("title")));
        for (String id : guide.entries()) {
            Optional.ofNullable(base.pests().get(id)).ifPresent(pest -> blocks.add(card(pest, reader)));
        }
        blocks.add(new Block.Paragraph(Line.of().plain(phrases.say("poster.past") + " ")
                .strong(phrases.say("call") + " " + office.contact().phone())
                .plain(" · " + office.name() + ". " + phrases.say("cover.holds", pocket.holdsUntil()) + ".")
                .runs(), List.of(), office.origin()));
        return new Manuscript(pocket.id(), pocket.title(), pocket.language(), pocket.year(),
                pocket.holdsUntil(), pocket.proof(), pocket.foot(), pocket.ink(), TYPE,
                List.of(new Section("poster", Section.Kind.COVER, 0, guide.title(), blocks,
                        placed.at("entries"))));
    }

    private Block card(Placed<PestEntry> placed, Reader reader) {
        PestEntry pest = placed.value();
        CountWriter counts = new CountWriter(base, placed, reader);
        List<Block> numbers = counts.numbers();
        Optional<Block.Plate> plate = base.figuresOf(pest.id(), pest.figures(), pest.stages()).stream()
                .min(Comparator.comparing(figure -> figure.note().shows().showsDamage()))
                .map(figure -> LooksWriter.plate(figure, phrases));
        Span origin = placed.at("thresholds");
        String name = Phrases.capital(pest.names().common());
        if (numbers.isEmpty()) {
            Line look = Line.of();
            counts.howTo().ifPresent(block -> look.sentence(said(block)));
            look.sentence(counts.noCount().map(PosterWriter::said).orElseGet(() -> byTable(counts)));
            return new Block.WallCard(name, plate, look.runs(), "", "", "", origin);
        }
        Block.CountBox box = (Block.CountBox) numbers.get(0);
        Line look = Line.of().add(box.look());
        numbers.subList(1, numbers.size()).forEach(block -> look.sentence(said(block)));
        return new Block.WallCard(name, plate, look.runs(), box.above(), box.number(), box.below(), origin);
    }

    /** A table of treatments is no matter for a wall; up to what catch none is needed is. */
    private List<Run> byTable(CountWriter counts) {
        return counts.leastCatch().map(least -> Line.of().add(least).plain(" ")
                .strong(phrases.say("poster.see-above")).runs())
                .orElseGet(() -> List.of(Run.strong(phrases.say("poster.see"))));
    }

    /** What a block about counts says, in a sentence. */
    private static List<Run> said(Block block) {
        Line line = Line.of();
        if (block instanceof Block.Paragraph paragraph && !paragraph.runs().isEmpty()) {
            Run first = paragraph.runs().get(0);
            line.add(new Run(Phrases.capital(first.text()), first.style(), first.link(),
                    first.language()));
            line.add(paragraph.runs().subList(1, paragraph.runs().size()));
        }
        if (block instanceof Block.Grid grid) {
            line.strong(grid.caption() + ":");
            for (int row = 0; row < grid.rows().size(); row++) {
                line.plain(row == 0 ? " " : "; ");
                List<List<Run>> cells = grid.rows().get(row);
                for (int cell = 0; cell < cells.size(); cell++) {
                    line.plain(cell == 0 ? "" : ": ").add(cells.get(cell));
                }
            }
            line.plain(".");
        }
        return line.runs();
    }
}
