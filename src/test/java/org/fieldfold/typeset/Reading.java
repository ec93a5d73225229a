package org.fieldfold.typeset;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.fieldfold.manuscript.Block;
import org.fieldfold.manuscript.Manuscript;
import org.fieldfold.manuscript.Section;
import org.fieldfold.prose.Run;

/** What is read: from a manuscript, and aloud from its set panels. */
final class Reading {
    private Reading() {}

    /** The words of a manuscript in its full form, in order. */
    static List<String> written(Manuscript manuscript) {
        StringBuilder text = new StringBuilder();
        for (Section section : manuscript.sections()) {
            section.blocks().forEach(block -> write(block, text));
        }
        return words(text.toString());
    }

    private static void write(Block block, StringBuilder text) {
        if (block instanceof Block.Title title) {
            write(title.name(), text);
            write(title.beneath(), text);
        } else if (block instanceof Block.Heading heading) {
            write(heading.runs(), text);
        } else if (block instanceof Block.Paragraph paragraph) {
            write(paragraph.runs(), text);
        } else if (block instanceof Block.Items items) {
            items.items().forEach(item -> write(item, text));
        } else if (block instanceof Block.Plates plates) {
            plates.plates().forEach(plate -> write(List.of(Run.plain(PlateSetting.caption(plate))), text));
        } else if (block instanceof Block.CountBox box) {
            write(box.look(), text);
            write(List.of(Run.plain(box.above() + " " + box.number() + " " + box.below())), text);
        } else if (block instanceof Block.Tier tier) {
            write(tier.heading(), text);
            tier.measures().forEach(measure -> write(measure.runs(), text));
            write(tier.after(), text);
        } else if (block instanceof Block.Grid grid) {
            write(List.of(Run.plain(grid.caption())), text);
            grid.header().forEach(cell -> write(cell, text));
            grid.rows().forEach(row -> row.forEach(cell -> write(cell, text)));
        } else if (block instanceof Block.Weeks weeks) {
            write(List.of(Run.plain(weeks.title())), text);
            weeks.rows().forEach(row -> write(List.of(Run.plain(row.name() + " " + row.named())), text));
            write(weeks.note(), text);
        } else if (block instanceof Block.Code code) {
            write(code.caption(), text);
        } else if (block instanceof Block.Notice notice) {
            write(notice.runs(), text);
        }
    }

    private static void write(List<Run> runs, StringBuilder text) {
        runs.forEach(run -> text.append(run.text()));
        text.append(' ');
    }

    private static List<String> words(String text) {
        return Arrays.stream(text.split("[\\s\u00a0]+")).filter(word -> !word.isEmpty()).toList();
    }

    /** The words of the tagged marks, in the order of the tag tree, without the labels of lists. */
    static List<String> aloud(SetGuide guide) {
        Map<Tag, StringBuilder> own = new IdentityHashMap<>();
        List<Tag> order = new ArrayList<>();
        Map<Tag, Tag> block = new IdentityHashMap<>();
        blocks(guide.document(), guide.document(), block);
        Tag last = guide.document();
        for (SetPanel panel : guide.panels()) {
            for (Mark mark : panel.marks()) {
                if (mark instanceof Mark.Words words && words.tag().isPresent()) {
                    Tag holder = block.get(words.tag().get());
                    if (holder.role() != Tag.Role.LABEL) {
                        own.computeIfAbsent(holder, key -> {
                            order.add(key);
                            return new StringBuilder();
                        }).append(words.text());
                    }
                    last = holder;
                }
            }
        }
        StringBuilder text = new StringBuilder();
        order.forEach(tag -> text.append(own.get(tag)).append(' '));
        return words(text.toString());
    }

    /** The nearest tag around each that is not inside a line. */
    private static void blocks(Tag tag, Tag holder, Map<Tag, Tag> block) {
        boolean inline = tag.role() == Tag.Role.SPAN || tag.role() == Tag.Role.LINK;
        Tag own = inline ? holder : tag;
        block.put(tag, own);
        tag.children().forEach(child -> blocks(child, own, block));
    }

    /** The tag tree with the words in it, as a picture for people. */
    static String tree(SetGuide guide) {
        Map<Tag, StringBuilder> own = new IdentityHashMap<>();
        for (SetPanel panel : guide.panels()) {
            for (Mark mark : panel.marks()) {
                if (mark instanceof Mark.Words words) {
                    words.tag().ifPresent(tag ->
                            own.computeIfAbsent(tag, key -> new StringBuilder()).append(words.text()));
                }
            }
        }
        StringBuilder out = new StringBuilder();
        tree(guide.document(), 0, own, out);
        return out.toString();
    }

    private static void tree(Tag tag, int depth, Map<Tag, StringBuilder> own, StringBuilder out) {
        out.append("  ".repeat(depth)).append(tag.role().pdfName());
        out.append(tag.title().isEmpty() ? "" : " [" + tag.title() + "]");
        out.append(tag.language().isEmpty() ? "" : " lang=" + tag.language());
        out.append(tag.alt().isEmpty() ? "" : " alt=\"" + tag.alt() + "\"");
        out.append(own.containsKey(tag) ? " " + own.get(tag).toString().strip() : "").append('\n');
        tag.children().forEach(child -> tree(child, depth + 1, own, out));
    }
}
