package org.fieldfold.typeset;

import java.util.ArrayList;
import java.util.List;
import org.fieldfold.manuscript.Block;
import org.fieldfold.prose.Run;
import org.fieldfold.source.Span;

/** Sets lists: a dash or a number before each item, its lines hanging behind it. */
final class ItemsSetting {
    private ItemsSetting() {}

    static Choice set(Block.Items block, Stick stick) {
        List<Choice.Way> ways = new ArrayList<>();
        for (int count = block.items().size(); count >= block.needed(); count--) {
            int dropped = block.items().size() - count;
            ways.add(new Choice.Way(dropped * Cost.DROPPED, dropped > 0,
                    count == 0 ? List.of(Strip.opening(0, 0, false, (pen, top) -> {}))
                            : list(block.items().subList(0, count), block, stick)));
        }
        return new Choice(block.origin(), ways);
    }

    private static List<Strip> list(List<List<Run>> items, Block.Items block, Stick stick) {
        TagSlot list = TagSlot.inSection(Tag.Role.LIST);
        List<Strip> strips = new ArrayList<>();
        double indent = indent(block.numbered() ? items.size() + ". " : "– ", stick, block.origin());
        for (int i = 0; i < items.size(); i++) {
            String label = block.numbered() ? (i + 1) + ". " : "– ";
            strips.addAll(item(label, indent, items.get(i), list, 0, i == 0, stick, block.origin()));
        }
        return strips;
    }

    /** The width that a label takes, with its space. */
    static double indent(String label, Stick stick, Span origin) {
        return stick.line(List.of(Run.plain(label.strip())), Voice.TEXT, stick.size(), origin).width()
                + stick.metrics().width(Face.REGULAR, " ") * stick.size() / 1000;
    }

    /**
     * One item.
     *
     * @param shift of the whole list to the right
     * @param opens whether the item begins a group
     */
    static List<Strip> item(String label, double indent, List<Run> runs, TagSlot list, double shift,
            boolean opens, Stick stick, Span origin) {
        SetText text = stick.body(runs, stick.measure() - shift - indent, origin);
        Piece mark = new Piece(Face.REGULAR, 0, label, 0);
        TagSlot item = list.in(Tag.Role.ITEM);
        TagSlot labelTag = item.in(Tag.Role.LABEL);
        TagSlot body = item.in(Tag.Role.ITEM_BODY);
        return ParagraphSetting.strips(opens ? ParagraphSetting.GAP : 0, opens, text, stick.leading(),
                (pen, line, baseline) -> {
                    double x = pen.left() + shift;
                    if (line == 0) {
                        pen.words(x, baseline, mark, stick.size(), Mark.Ink.BLACK,
                                java.util.Optional.of(labelTag));
                    }
                    text.draw(pen, line, x + indent, baseline, Mark.Ink.BLACK, body);
                });
    }
}
