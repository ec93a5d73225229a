package org.fieldfold.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.pdmodel.PDDocument;

/** The structure tree of a file, as it stands in the file, with what the pages show for each element. */
final class FileTree {
    private static final COSName PAGE = COSName.getPDFName("Pg");

    /** An element, or a stretch of a page's content. */
    sealed interface Kid {
    }

    /** What a page shows for one marked stretch. */
    record Content(int page, List<DrawnPage.Thing> things) implements Kid {
        String text() {
            StringBuilder text = new StringBuilder();
            things.forEach(thing -> text.append(thing.text()));
            return text.toString();
        }
    }

    /** @param entry its dictionary in the file */
    record Element(COSDictionary entry, List<Kid> kids) implements Kid {
        String role() {
            return entry.getNameAsString(COSName.S);
        }

        /** A text entry such as {@code Lang}, or empty. */
        String says(String key) {
            return entry.getString(COSName.getPDFName(key), "");
        }

        /** The value of an attribute such as {@code ListNumbering}, or empty. */
        String attribute(String key) {
            COSBase attributes = entry.getDictionaryObject(COSName.A);
            return attributes instanceof COSDictionary one ? one.getNameAsString(COSName.getPDFName(key), "")
                    : "";
        }

        List<Element> elements() {
            return kids.stream().filter(Element.class::isInstance).map(Element.class::cast).toList();
        }

        /** It and all below it, in reading order. */
        Stream<Element> all() {
            return Stream.concat(Stream.of(this), elements().stream().flatMap(Element::all));
        }

        /** All content in and below it, in reading order. */
        Stream<Content> contents() {
            return kids.stream().flatMap(kid -> kid instanceof Element element ? element.contents()
                    : Stream.of((Content) kid));
        }

        String text() {
            StringBuilder text = new StringBuilder();
            contents().forEach(content -> text.append(content.text()));
            return text.toString();
        }
    }

    private final Map<COSDictionary, Integer> pages = new IdentityHashMap<>();
    private final List<List<DrawnPage.Thing>> drawn = new ArrayList<>();

    private FileTree() {
    }

    static Element of(PDDocument document) throws IOException {
        FileTree tree = new FileTree();
        for (int i = 0; i < document.getNumberOfPages(); i++) {
            tree.pages.put(document.getPage(i).getCOSObject(), i);
            tree.drawn.add(DrawnPage.of(document.getPage(i)));
        }
        COSDictionary root = document.getDocumentCatalog().getCOSObject()
                .getCOSDictionary(COSName.STRUCT_TREE_ROOT);
        return tree.element((COSDictionary) root.getCOSArray(COSName.K).getObject(0));
    }

    private Element element(COSDictionary entry) {
        List<Kid> kids = new ArrayList<>();
        COSBase only = entry.getDictionaryObject(COSName.K);
        for (COSBase item : only instanceof COSArray all ? all.toList() : only == null ? List.<COSBase>of()
                : List.of(only)) {
            COSBase kid = item instanceof COSObject reference ? reference.getObject() : item;
            if (kid instanceof COSInteger id) {
                kids.add(content(entry.getCOSDictionary(PAGE), id.intValue()));
            } else if (kid instanceof COSDictionary dictionary) {
                String type = dictionary.getNameAsString(COSName.TYPE, "");
                if (type.equals("MCR")) {
                    kids.add(content(dictionary.getCOSDictionary(PAGE), dictionary.getInt(COSName.MCID)));
                } else if (!type.equals("OBJR")) {
                    kids.add(element(dictionary));
                }
            }
        }
        return new Element(entry, kids);
    }

    private Content content(COSDictionary page, int id) {
        int index = pages.get(page);
        return new Content(index, drawn.get(index).stream().filter(thing -> thing.owner() == id).toList());
    }
}
