package org.fieldfold.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;

/**
 * How the files of all copies of a guide begin: the objects that they share as finished bytes, with numbers of their
 * own. Before these come the numbers of what every copy writes for itself and shared objects refer to.
 *
 * @param bytes from the first of the file on
 * @param offsets of the objects in them, by number
 * @param numbers of these objects
 * @param made the fonts, drawings and forms in {@code resources}, by name
 * @param contents of the pages, beneath what a copy draws itself
 * @param links of the shared sections, page by page, with their elements
 * @param ids of the notes in these sections
 */
record Prelude(byte[] bytes, int[] offsets, Map<COSBase, Integer> numbers, Map<String, COSBase> made,
        COSDictionary resources, COSDictionary colour, List<StreamObject> contents, Links links, COSArray ids) {
    static final int CATALOG = 1;
    static final int PAGES = 2;
    static final int FIRST_PAGE = 3;

    /** Four bytes that are no ASCII tell programs that this is no text (ISO 32000-1, 7.5.2). */
    private static final byte[] HEADER = {'%', 'P', 'D', 'F', '-', '1', '.', '7', '\n', '%', (byte) 0xe2, (byte) 0xe3,
        (byte) 0xcf, (byte) 0xd3, '\n'};

    /** Number of the root of the logical tree, behind the pages. */
    static int tree(int pages) {
        return FIRST_PAGE + pages;
    }

    /** Number of the tree's only child, the document. */
    static int document(int pages) {
        return tree(pages) + 1;
    }

    /**
     * @param sheet on which only shared panels are drawn
     * @param contents of its pages
     * @param finished the sections of these panels
     */
    static Prelude of(Sheet sheet, List<FinishedStream> contents, List<TagNode> finished, Frozen colour) {
        try {
            return write(sheet, contents.stream().map(FinishedStream::object).toList(), finished, colour);
        } catch (IOException impossible) {
            throw new UncheckedIOException("writing to memory can't fail", impossible);
        }
    }

    private static Prelude write(Sheet sheet, List<StreamObject> contents, List<TagNode> finished, Frozen colour)
            throws IOException {
        List<COSDictionary> pages = new ArrayList<>();
        sheet.pages().forEach(page -> pages.add(new COSDictionary()));
        FileBytes out = new FileBytes(1 << 17);
        out.write(HEADER, 0, HEADER.length);
        ObjectWriter writer = new ObjectWriter(out, Map.of(), new int[0], document(pages.size()) + 1);
        for (int i = 0; i < pages.size(); i++) {
            writer.number(pages.get(i), FIRST_PAGE + i);
        }
        writer.number(sheet.tree().document().element(), document(pages.size()));
        Map<String, COSBase> made = new HashMap<>();
        COSDictionary resources = sheet.resources().toDictionary(sheet.type(), sheet.art(), made);
        COSDictionary profile = (COSDictionary) colour.copy();
        writer.write(profile);
        writer.write(resources);
        for (StreamObject content : contents) {
            writer.write(content);
        }
        Links links = new Links(pages.size());
        finished.forEach(section -> links.below(section));
        COSArray ids = StructureTree.sections(finished, sheet.tree().document(), pages);
        for (TagNode section : finished) {
            writer.write(section.element());
        }
        return new Prelude(out.toBytes(), writer.offsets(), new IdentityHashMap<>(writer.numbers()), made, resources,
                profile, contents, links, ids);
    }
}
