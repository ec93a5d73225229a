package org.fieldfold.pdf;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fieldfold.typeset.Tag;

/** The logical tree of a guide while its sheet is drawn. */
final class TagTree {
    private final TagNode document;
    private final Map<Tag, TagNode> nodes = new IdentityHashMap<>();
    private final List<TagNode> inOrder = new ArrayList<>();
    private final List<TagNode> sections = new ArrayList<>();
    private final Map<Tag, TagNode> finished;

    /** @param finished sections that stand below the document and were drawn and written before, by their tags */
    TagTree(Tag document, Map<Tag, TagNode> finished) {
        if (document.role() != Tag.Role.DOCUMENT) {
            throw new IllegalArgumentException("expected the tag of a document, found " + document.role());
        }
        this.finished = finished;
        this.document = new TagNode(document, Optional.empty());
        take(this.document);
    }

    private void take(TagNode node) {
        if (nodes.put(node.tag(), node) != null) {
            throw new IllegalArgumentException("one " + node.tag().role()
                    + " tag stands at two places in the tree");
        }
        inOrder.add(node);
        if (node.tag().role() == Tag.Role.SECTION) {
            sections.add(node);
        }
        for (Tag child : node.tag().children()) {
            TagNode known = node == document ? finished.get(child) : null;
            if (known == null) {
                take(node.child(child));
            } else {
                node.adopt(known);
                collect(known);
            }
        }
    }

    private void collect(TagNode node) {
        if (node.tag().role() == Tag.Role.SECTION) {
            sections.add(node);
            node.children().forEach(this::collect);
        }
    }

    /** Whether a node was written before, with all that is in it. */
    boolean isFinished(TagNode node) {
        return finished.get(node.tag()) == node;
    }

    /** All sections in their order, finished ones as well. */
    List<TagNode> sections() {
        return sections;
    }

    /** The node of this tree where it has one of its own for the tag, else the finished one. */
    TagNode own(TagNode drawn) {
        return nodes.getOrDefault(drawn.tag(), drawn);
    }

    TagNode document() {
        return document;
    }

    /** All tags that are not finished, each before what is in it. */
    List<TagNode> nodes() {
        return inOrder;
    }

    TagNode node(Tag tag) {
        TagNode node = nodes.get(tag);
        if (node == null) {
            throw new IllegalArgumentException("a mark points to a " + tag.role() + " tag that is not in the"
                    + " guide's tree");
        }
        return node;
    }
}
