package org.fieldfold.manuscript;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.fieldfold.prose.Run;

/**
 * A guide for readers with poor sight: the words of the pocket, none of them left out or shortened, in type
 * of 14 point or more. Each pest has a sheet of its own, to be taken along alone: on its front what it looks
 * like and when it pays to act, on its back what to do.
 */
public final class LargePrint {
    /** Points. Nothing that is read is set smaller: page numbers, captions and the caution are not either. */
    public static final double SMALLEST = 14;
    /** Beyond this, lines hold too few words to be read with ease. */
    private static final double LARGEST = 18;

    private final Phrases phrases;

    private LargePrint(Phrases phrases) {
        this.phrases = phrases;
    }

    public static Manuscript of(Manuscript pocket, Phrases phrases) {
        LargePrint large = new LargePrint(phrases);
        return new Manuscript(pocket.id(), pocket.title(), pocket.language(), pocket.year(),
                pocket.holdsUntil(), pocket.proof(), pocket.foot(), pocket.ink(),
                new Manuscript.TypeRange(SMALLEST, LARGEST),
                pocket.sections().stream().flatMap(large::pages).toList());
    }

    private Stream<Section> pages(Section section) {
        List<Block> blocks = section.blocks().stream().map(LargePrint::whole).toList();
        return switch (section.kind()) {
            case ENTRY -> split(section, blocks, first(blocks, Block.Tier.class), Section.Kind.ENTRY,
                    section.name(), phrases.say("tiers"));
            case CONTACT -> split(section, blocks, first(blocks, Block.Code.class) + 1,
                    Section.Kind.SCOUTING, phrases.say("about-copy"), "");
            case COVER, SCOUTING -> Stream.of(with(section, section.kind(), section.id(), section.name(),
                    blocks));
        };
    }

    /** What comes first keeps the title; the rest begins a page with a title of its own. */
    private static Stream<Section> split(Section section, List<Block> blocks, int at, Section.Kind kind,
            String title, String beneath) {
        if (at < 1 || at >= blocks.size()) {
            return Stream.of(with(section, section.kind(), section.id(), section.name(), blocks));
        }
        List<Block> rest = new ArrayList<>();
        rest.add(new Block.Title(List.of(Run.plain(title)),
                beneath.isEmpty() ? List.of() : List.of(Run.strong(beneath)), section.origin()));
        rest.addAll(blocks.subList(at, blocks.size()));
        String name = beneath.isEmpty() ? title : title + " – " + beneath;
        return Stream.of(with(section, kind, section.id(), section.name(), blocks.subList(0, at)),
                with(section, section.kind(), section.id() + "-2", name, rest));
    }

    private static Section with(Section section, Section.Kind kind, String id, String name,
            List<Block> blocks) {
        return new Section(id, kind, section.tab(), name, blocks, section.origin());
    }

    private static int first(List<Block> blocks, Class<? extends Block> kind) {
        for (int i = 0; i < blocks.size(); i++) {
            if (kind.isInstance(blocks.get(i))) {
                return i;
            }
        }
        return -1;
    }

    /** A block that has no shorter form. */
    private static Block whole(Block block) {
        if (block instanceof Block.Paragraph paragraph) {
            return new Block.Paragraph(paragraph.runs(), List.of(), paragraph.origin());
        }
        if (block instanceof Block.Grid grid) {
            return new Block.Grid(grid.caption(), grid.header(), grid.rows(), grid.origin());
        }
        return block instanceof Block.Items items
                ? new Block.Items(items.numbered(), items.items(), items.origin()) : block;
    }
}
