package org.fieldfold.pdf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;

/**
 * Writes the links. One that runs over several lines of a page is one annotation, with a quadrilateral a
 * line, so that it is one stop of the tabulator key and said once.
 */
final class Links {
    private static final int PRINTED = 4;

    private record OnPage(int page, String address) {}

    private final List<List<COSDictionary>> byPage = new ArrayList<>();
    private final List<COSDictionary> elements = new ArrayList<>();

    /** None yet, on so many pages. */
    Links(int pages) {
        for (int i = 0; i < pages; i++) {
            byPage.add(new ArrayList<>());
        }
    }

    /** Those of a plate, to which those of a copy are added. */
    Links(Links shared) {
        shared.byPage.forEach(page -> byPage.add(new ArrayList<>(page)));
        elements.addAll(shared.elements);
    }

    /** Elements in the order of their StructParent numbers, which follow those of the pages. */
    List<COSDictionary> elements() {
        return elements;
    }

    /** The annotations of a page. */
    List<COSDictionary> on(int page) {
        return byPage.get(page);
    }

    /** Adds the links of a node and of all that is in it. */
    void below(TagNode node) {
        of(node);
        node.children().forEach(this::below);
    }

    /** Adds the links of a node. */
    void of(TagNode node) {
        if (node.links().isEmpty()) {
            return;
        }
        Map<OnPage, List<TagNode.LinkPlace>> grouped = new LinkedHashMap<>();
        for (TagNode.LinkPlace link : node.links()) {
            grouped.computeIfAbsent(new OnPage(link.page(), link.address()),
                    unseen -> new ArrayList<>()).add(link);
        }
        grouped.values().forEach(places -> annotation(node, places));
    }

    private void annotation(TagNode node, List<TagNode.LinkPlace> places) {
        TagNode.LinkPlace first = places.get(0);
        COSDictionary action = new COSDictionary();
        action.setDirect(true);
        action.setItem(COSName.S, COSName.URI);
        action.setItem(COSName.URI, new COSString(first.address()));
        COSDictionary annotation = new COSDictionary();
        annotation.setItem(COSName.TYPE, COSName.ANNOT);
        annotation.setItem(COSName.SUBTYPE, COSName.getPDFName("Link"));
        annotation.setItem(COSName.RECT,
                places.stream().map(TagNode.LinkPlace::box).reduce(PageBox::and).orElseThrow().toArray());
        if (places.size() > 1) {
            annotation.setItem(COSName.getPDFName("QuadPoints"), quadrilaterals(places));
        }
        annotation.setItem(COSName.BORDER, zeros());
        annotation.setInt(COSName.F, PRINTED);
        annotation.setString(COSName.CONTENTS, node.tag().alt().isBlank() ? first.address()
                : node.tag().alt());
        annotation.setItem(COSName.A, action);
        annotation.setInt(COSName.STRUCT_PARENT, byPage.size() + elements.size());
        elements.add(node.element());
        node.add(new TagNode.Linked(places.get(places.size() - 1).place(), first.page(), annotation));
        byPage.get(first.page()).add(annotation);
    }

    private static COSArray quadrilaterals(List<TagNode.LinkPlace> places) {
        double[] corners = places.stream().map(TagNode.LinkPlace::box).flatMapToDouble(box ->
                java.util.stream.DoubleStream.of(box.left(), box.bottom(), box.right(), box.bottom(),
                        box.right(), box.top(), box.left(), box.top())).toArray();
        return PageBox.numbers(corners);
    }

    private static COSArray zeros() {
        COSArray border = new COSArray();
        for (int i = 0; i < 3; i++) {
            border.add(COSInteger.ZERO);
        }
        return border;
    }
}
