package org.fieldfold.typeset;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.fieldfold.manuscript.Block;
import org.fieldfold.manuscript.Manuscript;
import org.fieldfold.manuscript.Section;
import org.fieldfold.prose.Run;
import org.fieldfold.source.Span;

/**
 * Sets the cover: the crop in large letters beneath a bar of ink, what the guide is for, the year in white on
 * black beside the date until which it holds, and whom to call at the foot.
 *
 * <p>The box with the year takes in the paragraph that names the date until which the guide holds, and stands
 * where that paragraph stood; a block that says nothing but the year is taken in as well.
 */
final class CoverSetting {
    private final Manuscript manuscript;
    private final Stick stick;
    private final Outline outline;

    private CoverSetting(Manuscript manuscript, Stick stick, Outline outline) {
        this.manuscript = manuscript;
        this.stick = stick;
        this.outline = outline;
    }

    static SetSection set(Section section, Manuscript manuscript, Stick stick, Outline outline) {
        return new CoverSetting(manuscript, stick, outline).set(section);
    }

    private SetSection set(Section section) {
        List<Choice> set = new ArrayList<>();
        Optional<Block> holds = section.blocks().stream().filter(this::isHolds).findFirst();
        int yearAt = -1;
        for (Block block : section.blocks()) {
            boolean taken = isYear(block) || holds.filter(block::equals).isPresent();
            boolean after = yearAt < 0 && holds.isEmpty() && set.size() > 0 && !isIntroduction(block);
            if (yearAt < 0 && (holds.filter(block::equals).isPresent() || after)) {
                yearAt = set.size();
                set.add(year(holds, section.origin()));
            }
            if (!taken) {
                set.add(block instanceof Block.Title title ? title(title)
                        : SetSection.block(block, stick, outline));
            }
        }
        if (yearAt < 0) {
            yearAt = set.size();
            set.add(year(holds, section.origin()));
        }
        List<Integer> springs = new ArrayList<>(cards(section));
        springs.add(yearAt);
        if (yearAt + 1 < set.size()) {
            springs.add(yearAt + 1);
        }
        return new SetSection(section, set, springs);
    }

    /** Cards on a wall share the room that is left. */
    private static List<Integer> cards(Section section) {
        return IntStream.range(0, section.blocks().size())
                .filter(at -> section.blocks().get(at) instanceof Block.WallCard).boxed().toList();
    }

    private static boolean isIntroduction(Block block) {
        return block instanceof Block.Title || block instanceof Block.Paragraph
                || block instanceof Block.WallCard || block instanceof Block.Plates;
    }

    private boolean isHolds(Block block) {
        return block instanceof Block.Paragraph paragraph && !manuscript.holdsUntil().isBlank()
                && words(paragraph.runs()).contains(manuscript.holdsUntil());
    }

    private boolean isYear(Block block) {
        List<Run> runs = block instanceof Block.Paragraph paragraph ? paragraph.runs()
                : block instanceof Block.Heading heading ? heading.runs() : List.of();
        return words(runs).strip().equals(Integer.toString(manuscript.year()));
    }

    private static String words(List<Run> runs) {
        StringBuilder words = new StringBuilder();
        runs.forEach(run -> words.append(run.text()));
        return words.toString();
    }

    private Choice title(Block.Title title) {
        Leading leading = stick.leading();
        SetText name = name(title);
        SetText beneath = stick.text(title.beneath(), Voice.TEXT, 1.4 * stick.size(), stick.measure(),
                title.origin());
        int row = leading.units((stick.enlargement() > 1 ? 1.2 : 1.06) * name.size());
        int bar = leading.units(0.9 * stick.size());
        int nameUnits = bar + row * name.count() + 1;
        TagSlot heading = TagSlot.inSection(outline.title());
        TagSlot paragraph = TagSlot.inSection(Tag.Role.PARAGRAPH);
        return Choice.only(title.origin(), List.of(Strip.opening(0, nameUnits + 3 * beneath.count(), false,
                (pen, top) -> {
                    pen.fill(pen.left(), top, stick.measure(), 0.5 * stick.size(), stick.ink());
                    for (int i = 0; i < name.count(); i++) {
                        double baseline = leading.baseline(top, bar + row * (i + 1));
                        name.draw(pen, i, pen.left(), baseline, stick.ink(), heading);
                    }
                    for (int i = 0; i < beneath.count(); i++) {
                        double baseline = leading.baseline(top, nameUnits + 3 * (i + 1));
                        beneath.draw(pen, i, pen.left(), baseline, Mark.Ink.BLACK, paragraph);
                    }
                })));
    }

    /** As large as its longest word allows. */
    private SetText name(Block.Title title) {
        double largest = 3.4 * stick.size();
        double word = stick.widestWord(title.name(), Voice.HEADING, largest, title.origin());
        double size = word <= stick.measure() ? largest : largest * stick.measure() / word * (1 - 1e-9);
        return stick.text(title.name(), Voice.HEADING, Math.max(1.5 * stick.size(), size), stick.measure(),
                title.origin());
    }

    private Choice year(Optional<Block> holds, Span cover) {
        Leading leading = stick.leading();
        Span origin = holds.map(Block::origin).orElse(cover);
        List<Run> words = holds.map(block -> ((Block.Paragraph) block).runs())
                .orElse(List.of(Run.plain(manuscript.holdsUntil())));
        SetText year = stick.line(List.of(Run.strong(Integer.toString(manuscript.year()))), Voice.HEADING,
                3.6 * stick.size(), origin);
        double pad = 0.8 * stick.size();
        double black = year.width() + 2 * pad;
        SetText text = stick.body(words, stick.measure() - black - 2 * pad, origin);
        int units = Math.max(8, 2 * text.count() + 2);
        TagSlot yearTag = TagSlot.inSection(Tag.Role.PARAGRAPH);
        TagSlot textTag = TagSlot.inSection(Tag.Role.PARAGRAPH);
        return Choice.only(origin, List.of(Strip.opening(2, units, false, (pen, top) -> {
            double height = units * leading.half();
            double cap = stick.metrics().capHeight(Face.BOLD) / 1000 * year.size();
            pen.fill(pen.left(), top, black, height, Mark.Ink.BLACK);
            year.draw(pen, 0, pen.left() + pad, top + (height + cap) / 2, Mark.Ink.WHITE, yearTag);
            double first = top + (units - 2 * text.count()) * leading.half() / 2;
            for (int i = 0; i < text.count(); i++) {
                double baseline = leading.baseline(first, 2 * (i + 1));
                text.draw(pen, i, pen.left() + black + pad, baseline, Mark.Ink.BLACK, textTag);
            }
            pen.frame(pen.left(), top, stick.measure(), height, 0.9);
        })));
    }
}
