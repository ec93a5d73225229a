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

    TagTree(Tag document) {
        if (document.role() != Tag.Role.DOCUMENT) {
            throw new IllegalArgumentException("expected the tag of a document, found " + document.role());
        }
        this.document = new TagNode(document, Optional.empty());
        take(this.document);
    }

    private void take(TagNode node) {
        if (nodes.put(node.tag(), node) != null) {
            throw new IllegalArgumentException("one " + node.tag().role()
                    + " tag stands at two places in the tree");
        }
        inOrder.add(node);
        for (Tag child : node.tag().children()) {
            take(node.child(child));
        }
    }

    TagNode document() {
        return document;
    }

    /** All tags, each before what is in it. */
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
