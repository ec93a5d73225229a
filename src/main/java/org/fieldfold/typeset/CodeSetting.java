package org.fieldfold.typeset;

import java.util.ArrayList;
import java.util.List;
import org.fieldfold.manuscript.Block;
import org.fieldfold.prose.Run;

/** Sets a square code beside its caption and its address in words. */
final class CodeSetting {
    /** 22 mm: some 40 modules of half a millimetre, which a telephone reads at arm's length. */
    private static final double LEAST = 22 * 72 / 25.4;

    private CodeSetting() {}

    static Choice set(Block.Code block, Stick stick) {
        Leading leading = stick.leading();
        int codeUnits = leading.units(LEAST * stick.enlargement());
        double size = codeUnits * leading.half();
        double gutter = 0.9 * stick.size();
        double width = stick.measure() - size - gutter;
        SetText caption = stick.body(block.caption(), width, block.origin());
        SetText beside = stick.line(address(block), Voice.TEXT, leading.small(), block.origin());
        // an address is not divided if it stands on one line beneath
        boolean beneath = beside.width() > width;
        SetText address = beneath ? stick.text(address(block), Voice.TEXT, leading.small(), stick.measure(),
                block.origin()) : beside;
        TagSlot figure = TagSlot.figure(alternative(block));
        TagSlot captionTag = figure.in(Tag.Role.CAPTION);
        TagSlot addressTag = TagSlot.inSection(Tag.Role.PARAGRAPH);
        int words = 2 * (caption.count() + (beneath ? 0 : address.count()));
        int upper = Math.max(codeUnits, words);
        int units = upper + (beneath ? 2 * address.count() : 0);
        return Choice.only(block.origin(), List.of(Strip.opening(1, units, false, (pen, top) -> {
            pen.code(block.address(), pen.left(), top, size, figure);
            double x = pen.left() + size + gutter;
            int row = Math.max(0, (codeUnits - words) / 2);
            for (int i = 0; i < caption.count(); i++, row += 2) {
                caption.draw(pen, i, x, leading.baseline(top, row + 2), Mark.Ink.BLACK, captionTag);
            }
            row = beneath ? upper : row;
            for (int i = 0; i < address.count(); i++, row += 2) {
                address.draw(pen, i, beneath ? pen.left() : x, leading.baseline(top, row + 2), Mark.Ink.BLACK,
                        addressTag);
            }
        })));
    }

    private static String alternative(Block.Code block) {
        StringBuilder words = new StringBuilder();
        block.caption().forEach(run -> words.append(run.text()));
        return (words.toString().strip() + " (" + block.address() + ")").strip();
    }

    /** The address as a link, unless the caption has it already. */
    private static List<Run> address(Block.Code block) {
        String shown = block.address().replaceFirst("^https?://", "").replaceFirst("/$", "");
        List<Run> runs = new ArrayList<>();
        if (block.caption().stream().noneMatch(run -> run.text().contains(shown))) {
            runs.add(Run.plain(shown).to(block.address()));
        }
        return runs;
    }
}
