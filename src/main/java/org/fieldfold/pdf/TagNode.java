package org.fieldfold.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.cos.COSDictionary;
import org.fieldfold.typeset.Tag;

/** A tag, and what was drawn for it. */
final class TagNode {
    /** Something that belongs to a tag; {@code place} counts in reading order through the whole sheet. */
    sealed interface Content {
        int place();

        int page();
    }

    /** A marked stretch of a page's content stream. */
    record Marked(int place, int page, int id) implements Content {}

    /** A link on a page. */
    record Linked(int place, int page, COSDictionary annotation) implements Content {}

    private static final int NOWHERE = Integer.MAX_VALUE;

    private final Tag tag;
    private final Optional<TagNode> parent;
    private final Optional<TagNode> figure;
    private final List<TagNode> children = new ArrayList<>();
    private final List<Content> contents = new ArrayList<>();
    private final List<LinkPlace> links = new ArrayList<>();
    private final StringBuilder label = new StringBuilder();
    private final COSDictionary element = new COSDictionary();
    private Optional<PageBox> box = Optional.empty();
    private int first = NOWHERE;

    /** Where a link may be followed. */
    record LinkPlace(int place, int page, PageBox box, String address) {}

    TagNode(Tag tag, Optional<TagNode> parent) {
        this.tag = tag;
        this.parent = parent;
        this.figure = tag.role() == Tag.Role.FIGURE ? Optional.of(this) : parent.flatMap(node -> node.figure);
    }

    TagNode child(Tag childTag) {
        TagNode child = new TagNode(childTag, Optional.of(this));
        children.add(child);
        return child;
    }

    /** Takes in a child that other trees have as well. */
    void adopt(TagNode finished) {
        children.add(finished);
    }

    void add(Content content) {
        contents.add(content);
        touch(content.place());
    }

    void add(LinkPlace link) {
        links.add(link);
        touch(link.place());
    }

    /** Takes over what was drawn for the same tag before, at places that stay the same. */
    void take(TagNode drawn) {
        contents.addAll(drawn.contents);
        links.addAll(drawn.links);
        label.append(drawn.label);
        box = drawn.box;
        first = drawn.first;
    }

    private void touch(int place) {
        Optional<TagNode> node = Optional.of(this);
        while (node.isPresent() && node.get().first == NOWHERE) {
            node.get().first = place;
            node = node.get().parent;
        }
    }

    /** Widens the figure that this is, or is in, by what was drawn for it. */
    void cover(PageBox drawn) {
        figure.ifPresent(node -> node.box = Optional.of(node.box.map(drawn::and).orElse(drawn)));
    }

    boolean inFigure() {
        return figure.isPresent();
    }

    /** Remembers the words of a list's label, by which its numbering is told. */
    void say(String text) {
        if (tag.role() == Tag.Role.LABEL) {
            label.append(text);
        }
    }

    Tag tag() {
        return tag;
    }

    Optional<TagNode> parent() {
        return parent;
    }

    List<TagNode> children() {
        return children;
    }

    List<Content> contents() {
        return contents;
    }

    List<LinkPlace> links() {
        return links;
    }

    String label() {
        return label.toString();
    }

    /** The element of the document's structure tree. */
    COSDictionary element() {
        return element;
    }

    Optional<PageBox> box() {
        return box;
    }

    /** The place of the first thing drawn for it or for what is in it. */
    int first() {
        return first;
    }

    boolean isEmpty() {
        return first == NOWHERE;
    }
}
