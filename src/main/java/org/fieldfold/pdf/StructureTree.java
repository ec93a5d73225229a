package org.fieldfold.pdf;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.fieldfold.typeset.Tag;

/**
 * Writes the logical tree (ISO 32000-1, 14.7): elements, what belongs to each, and the way back from the
 * pages.
 */
final class StructureTree {
    private static final COSName OBJR = COSName.getPDFName("OBJR");
    private static final COSName OBJ = COSName.getPDFName("Obj");
    private static final COSName MCR = COSName.getPDFName("MCR");
    private static final COSName PG = COSName.getPDFName("Pg");
    private static final COSName LANG = COSName.getPDFName("Lang");
    private static final COSName EXPANSION = COSName.getPDFName("E");
    private static final COSName ID = COSName.getPDFName("ID");

    private static final int NO_PAGE = -1;
    private static final Map<Tag.Role, COSName> ROLES = new EnumMap<>(Tag.Role.class);

    static {
        for (Tag.Role role : Tag.Role.values()) {
            ROLES.put(role, COSName.getPDFName(role.pdfName()));
        }
    }

    private final List<COSDictionary> pages;
    private final COSDictionary root = new COSDictionary();
    private final Predicate<TagNode> finished;
    private final String idPrefix;
    private final COSArray names = new COSArray();
    private final ElementAttributes attributes = new ElementAttributes();

    private StructureTree(List<COSDictionary> pages, Predicate<TagNode> finished, String idPrefix) {
        this.pages = pages;
        this.finished = finished;
        this.idPrefix = idPrefix;
    }

    /**
     * Makes the elements of sections that many documents have alike.
     *
     * @return ids and elements of their notes, which stand before those of any document
     */
    static COSArray sections(List<TagNode> sections, TagNode document, List<COSDictionary> pages) {
        StructureTree tree = new StructureTree(pages, section -> false, "kept");
        sections.forEach(section -> tree.element(section, document.element()));
        return tree.names;
    }

    /**
     * The root of the tree.
     *
     * @param annotated elements of the annotations, in the order of their StructParent numbers, which follow
     *     those of the pages
     */
    static COSDictionary write(Sheet sheet, List<COSDictionary> pages, List<COSDictionary> annotated) {
        StructureTree tree = new StructureTree(pages, sheet.tree()::isFinished, "note");
        tree.root.setItem(COSName.TYPE, COSName.STRUCT_TREE_ROOT);
        tree.element(sheet.tree().document(), tree.root);
        tree.root.setItem(COSName.K, array(sheet.tree().document().element()));
        tree.root.setItem(COSName.PARENT_TREE, parents(sheet, annotated));
        tree.root.setInt(COSName.PARENT_TREE_NEXT_KEY, pages.size() + annotated.size());
        COSArray all = new COSArray();
        all.addAll(sheet.plate().prelude().ids());
        all.addAll(tree.names);
        if (all.size() > 0) {
            COSDictionary ids = new COSDictionary();
            ids.setItem(COSName.NAMES, all);
            tree.root.setItem(COSName.ID_TREE, ids);
        }
        return tree.root;
    }

    private void element(TagNode node, COSDictionary parent) {
        Tag tag = node.tag();
        COSDictionary element = node.element();
        element.setItem(COSName.S, ROLES.get(tag.role()));
        element.setItem(COSName.P, parent);
        if (!tag.title().isEmpty()) {
            element.setString(COSName.T, tag.title());
        }
        if (!tag.language().isEmpty()) {
            element.setString(LANG, tag.language());
        }
        if (!tag.expansion().isEmpty()) {
            element.setString(EXPANSION, tag.expansion());
        }
        if (tag.role() == Tag.Role.FIGURE) {
            element.setString(COSName.ALT, tag.alt());
        }
        if (tag.role() == Tag.Role.NOTE) {
            COSString id = new COSString(String.format(Locale.ROOT, idPrefix + "%05d", names.size() / 2 + 1));
            element.setItem(ID, id);
            names.add(id);
            names.add(element);
        }
        attributes.of(node).ifPresent(value -> element.setItem(COSName.A, value));
        kids(node, element);
    }

    /** What belongs to the element itself stands between its children where it was drawn between them. */
    private void kids(TagNode node, COSDictionary element) {
        List<TagNode.Content> contents = node.contents();
        if (!node.links().isEmpty()) {
            // they were added behind what they belong to
            contents = new ArrayList<>(contents);
            contents.sort(Comparator.comparingInt(TagNode.Content::place));
        }
        int own = contents.isEmpty() ? NO_PAGE : contents.get(0).page();
        if (own != NO_PAGE) {
            element.setItem(PG, pages.get(own));
        }
        COSArray kids = new COSArray();
        int next = 0;
        for (TagNode child : node.children()) {
            if (child.isEmpty() && !standsEmpty(child)) {
                continue;
            }
            while (!child.isEmpty() && next < contents.size() && contents.get(next).place() < child.first()) {
                kids.add(kid(contents.get(next++), own));
            }
            kids.add(child.element());
            if (!finished.test(child)) {
                element(child, element);
            }
        }
        while (next < contents.size()) {
            kids.add(kid(contents.get(next++), own));
        }
        // most elements have one kid, and elements are many: no array and no type is written for them
        element.setItem(COSName.K, kids.size() == 1 ? kids.get(0) : kids);
    }

    /** A cell keeps its column also where nothing is in it. */
    private static boolean standsEmpty(TagNode node) {
        return node.tag().role() == Tag.Role.CELL || node.tag().role() == Tag.Role.HEADER_CELL;
    }

    private COSBase kid(TagNode.Content content, int own) {
        if (content instanceof TagNode.Marked marked && own == content.page()) {
            return COSInteger.get(marked.id());
        }
        COSDictionary kid = new COSDictionary();
        kid.setDirect(true);
        if (content instanceof TagNode.Marked marked) {
            kid.setItem(COSName.TYPE, MCR);
            kid.setInt(COSName.MCID, marked.id());
        } else if (content instanceof TagNode.Linked linked) {
            kid.setItem(COSName.TYPE, OBJR);
            kid.setItem(OBJ, linked.annotation());
        }
        kid.setItem(PG, pages.get(content.page()));
        return kid;
    }

    private static COSDictionary parents(Sheet sheet, List<COSDictionary> annotated) {
        COSArray numbers = new COSArray();
        int key = 0;
        for (SheetPage page : sheet.pages()) {
            COSArray owners = new COSArray();
            for (TagNode owner : page.owners()) {
                owners.add(owner.element());
            }
            numbers.add(COSInteger.get(key++));
            numbers.add(owners);
        }
        for (COSDictionary element : annotated) {
            numbers.add(COSInteger.get(key++));
            numbers.add(element);
        }
        COSDictionary tree = new COSDictionary();
        tree.setItem(COSName.NUMS, numbers);
        return tree;
    }

    private static COSArray array(COSDictionary one) {
        COSArray array = new COSArray();
        array.add(one);
        return array;
    }
}
