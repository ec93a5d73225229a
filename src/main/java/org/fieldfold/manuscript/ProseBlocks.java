package org.fieldfold.manuscript;

import java.util.List;
import org.fieldfold.prose.Passage;
import org.fieldfold.prose.Prose;
import org.fieldfold.source.Span;

/** Prose as blocks, for where there is room for its paragraphs and lists. */
final class ProseBlocks {
    private ProseBlocks() {
    }

    static List<Block> of(Prose prose, Span origin) {
        return prose.passages().stream().map(passage -> block(passage, origin)).toList();
    }

    private static Block block(Passage passage, Span origin) {
        if (passage instanceof Passage.Heading heading) {
            return new Block.Heading(Math.max(3, heading.level() + 1), heading.runs(), origin);
        }
        if (passage instanceof Passage.Bullets bullets) {
            return new Block.Items(bullets.numbered(), bullets.items(), origin);
        }
        return new Block.Paragraph(((Passage.Paragraph) passage).runs(), List.of(), origin);
    }
}
