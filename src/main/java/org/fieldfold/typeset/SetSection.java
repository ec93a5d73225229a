package org.fieldfold.typeset;

import java.util.ArrayList;
import java.util.List;
import org.fieldfold.manuscript.Block;
import org.fieldfold.manuscript.Section;

/**
 * A section, its blocks set in every way that they may be.
 *
 * @param springs positions of blocks above which all the room goes that is left on the panel
 */
record SetSection(Section section, List<Choice> blocks, List<Integer> springs) {
    SetSection {
        blocks = List.copyOf(blocks);
        springs = List.copyOf(springs);
    }

    static SetSection of(Section section, Stick stick, Outline outline) {
        List<Choice> set = new ArrayList<>();
        for (int i = 0; i < section.blocks().size(); i++) {
            Choice block = block(section.blocks().get(i), stick, outline);
            boolean headed = i > 0 && section.blocks().get(i - 1) instanceof Block.Heading
                    && !(section.blocks().get(i) instanceof Block.Tier);
            set.add(headed ? block.closeUp() : block);
        }
        return new SetSection(section, set, springs(section));
    }

    static Choice block(Block block, Stick stick, Outline outline) {
        if (block instanceof Block.Title title) {
            return TitleSetting.set(title, stick, outline);
        } else if (block instanceof Block.Heading heading) {
            return TitleSetting.set(heading, stick, outline);
        } else if (block instanceof Block.Paragraph paragraph) {
            return ParagraphSetting.set(paragraph, stick);
        } else if (block instanceof Block.Items items) {
            return ItemsSetting.set(items, stick);
        } else if (block instanceof Block.Plates plates) {
            return PlateSetting.set(plates, stick);
        } else if (block instanceof Block.CountBox box) {
            return CountBoxSetting.set(box, stick);
        } else if (block instanceof Block.WallCard card) {
            return WallCardSetting.set(card, stick, outline);
        } else if (block instanceof Block.Tier tier) {
            return TierSetting.set(tier, stick, outline);
        } else if (block instanceof Block.Grid grid) {
            return TableSetting.set(grid, stick);
        } else if (block instanceof Block.Weeks weeks) {
            return WeeksSetting.set(weeks, stick);
        } else if (block instanceof Block.Code code) {
            return CodeSetting.set(code, stick);
        } else if (block instanceof Block.Notice notice) {
            return NoticeSetting.set(notice, stick);
        } else if (block instanceof Block.LocalNote note) {
            return LocalNoteSetting.set(note, stick);
        }
        return NoticeSetting.set((Block.Divider) block, stick);
    }

    /** On the last panel the code, or the notice at its end, and what follows stand at the foot. */
    private static List<Integer> springs(Section section) {
        List<Block> blocks = section.blocks();
        int at = blocks.size();
        while (at > 0 && blocks.get(at - 1) instanceof Block.Notice) {
            at--;
        }
        for (int i = 1; i < blocks.size(); i++) {
            at = blocks.get(i) instanceof Block.Code ? Math.min(at, i) : at;
        }
        boolean end = section.kind() == Section.Kind.CONTACT && at > 0 && at < blocks.size();
        return end ? List.of(at) : List.of();
    }
}
