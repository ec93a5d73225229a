package org.fieldfold.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.zip.CRC32;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBoolean;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.fieldfold.fold.FlipEdge;

/**
 * Puts a drawn sheet into a file: pages, tree, links, outline, and what a printer and a reader are told. It goes on
 * from the bytes that the sheet's plate begins with.
 */
final class SheetFile {
    private static final int OWN_BYTES = 1 << 16;

    private final Sheet sheet;
    private final PrintJob job;
    private final Prelude prelude;
    private final List<COSDictionary> pages = new ArrayList<>();
    private final CRC32 identity = new CRC32();

    private SheetFile(Sheet sheet) {
        this.sheet = sheet;
        this.job = sheet.job();
        this.prelude = sheet.plate().prelude();
    }

    static byte[] write(Sheet sheet) {
        try {
            return new SheetFile(sheet).write();
        } catch (IOException impossible) {
            throw new UncheckedIOException("writing to memory can't fail", impossible);
        }
    }

    private byte[] write() throws IOException {
        COSDictionary root = new COSDictionary();
        Links links = new Links(prelude.links());
        sheet.tree().nodes().forEach(links::of);
        pages(root, links);
        COSDictionary catalog = new COSDictionary();
        COSDictionary tree = StructureTree.write(sheet, pages, links.elements());
        catalog.setItem(COSName.TYPE, COSName.CATALOG);
        catalog.setItem(COSName.PAGES, root);
        catalog.setItem(COSName.STRUCT_TREE_ROOT, tree);
        catalog.setItem(COSName.MARK_INFO, direct(COSName.getPDFName("Marked"), COSBoolean.TRUE));
        catalog.setItem(COSName.LANG, new COSString(job.language()));
        catalog.setItem(COSName.VIEWER_PREFERENCES, preferences());
        Bookmarks.write(sheet, pages).ifPresent(outline -> catalog.setItem(COSName.OUTLINES, outline));
        catalog.setItem(COSName.OUTPUT_INTENTS, colours());
        Imprint imprint = new Imprint(job);
        StreamObject metadata = new StreamObject(imprint.xmp());
        metadata.setItem(COSName.TYPE, COSName.METADATA);
        metadata.setItem(COSName.SUBTYPE, COSName.getPDFName("XML"));
        catalog.setItem(COSName.METADATA, metadata);

        FileBytes out = new FileBytes(prelude.bytes().length + OWN_BYTES);
        out.write(prelude.bytes(), 0, prelude.bytes().length);
        ObjectWriter writer = new ObjectWriter(out, prelude.numbers(), prelude.offsets(), prelude.offsets().length);
        writer.number(catalog, Prelude.CATALOG);
        writer.number(root, Prelude.PAGES);
        for (int i = 0; i < pages.size(); i++) {
            writer.number(pages.get(i), Prelude.FIRST_PAGE + i);
        }
        writer.number(tree, Prelude.tree(pages.size()));
        writer.number(sheet.tree().document().element(), Prelude.document(pages.size()));
        for (COSDictionary kept : List.of(catalog, root, tree, sheet.tree().document().element())) {
            writer.write(kept);
        }
        for (COSDictionary page : pages) {
            writer.write(page);
        }
        COSDictionary information = imprint.information();
        writer.write(information);
        end(out, writer, catalog, information);
        return out.toBytes();
    }

    /** The cross-reference table and what leads to it (ISO 32000-1, 7.5.4 and 7.5.5). */
    private void end(FileBytes out, ObjectWriter writer, COSDictionary catalog, COSDictionary information)
            throws IOException {
        int start = out.length();
        out.ascii("xref\n0 ").whole(writer.count()).ascii("\n0000000000 65535 f\r\n");
        int[] offsets = writer.offsets();
        for (int number = 1; number < offsets.length; number++) {
            out.entry(offsets[number]);
        }
        // without a name of its own a document would be known by the clock
        COSString name = new COSString(ByteBuffer.allocate(2 * Long.BYTES).putLong(identity.getValue())
                .putLong(Arrays.hashCode(new Object[] {job.title(), job.subject(), job.language(), job.year()})
                        & 0xffffffffL)
                .array());
        COSArray id = new COSArray();
        id.add(name);
        id.add(name);
        COSDictionary trailer = new COSDictionary();
        trailer.setDirect(true);
        trailer.setInt(COSName.SIZE, writer.count());
        trailer.setItem(COSName.ROOT, catalog);
        trailer.setItem(COSName.INFO, information);
        trailer.setItem(COSName.ID, id);
        out.ascii("trailer\n");
        writer.value(trailer);
        out.ascii("\nstartxref\n").whole(start).ascii("\n%%EOF\n");
    }

    private void pages(COSDictionary root, Links links) {
        COSDictionary resources = sheet.resources().isAmong(prelude.made().keySet()) ? prelude.resources()
                : sheet.resources().toDictionary(sheet.type(), sheet.art(), new HashMap<>(prelude.made()));
        PDRectangle size = new PDRectangle((float) job.imposition().sheetWidth(),
                (float) job.imposition().sheetHeight());
        COSArray kids = new COSArray();
        for (SheetPage drawn : sheet.pages()) {
            COSDictionary page = new COSDictionary();
            page.setItem(COSName.TYPE, COSName.PAGE);
            page.setItem(COSName.PARENT, root);
            page.setItem(COSName.MEDIA_BOX, size);
            COSArray contents = new COSArray();
            contents.add(prelude.contents().get(drawn.index()));
            FinishedStream own = drawn.own();
            contents.add(own.object());
            for (long sum : new long[] {sheet.plate().pages().get(drawn.index()).content().sum(), own.sum()}) {
                identity.update(ByteBuffer.allocate(Long.BYTES).putLong(0, sum));
            }
            page.setItem(COSName.CONTENTS, contents);
            page.setItem(COSName.RESOURCES, resources);
            page.setInt(COSName.STRUCT_PARENTS, drawn.index());
            if (!links.on(drawn.index()).isEmpty()) {
                COSArray annotations = new COSArray();
                links.on(drawn.index()).forEach(annotations::add);
                page.setItem(COSName.ANNOTS, annotations);
                page.setItem(COSName.getPDFName("Tabs"), COSName.S);
            }
            kids.add(page);
            pages.add(page);
        }
        root.setItem(COSName.TYPE, COSName.PAGES);
        root.setItem(COSName.KIDS, kids);
        root.setInt(COSName.COUNT, pages.size());
    }

    /** Printers are told not to shrink: folds miss their marks on a sheet printed at 96 %. */
    private COSDictionary preferences() {
        COSDictionary preferences = new COSDictionary();
        preferences.setDirect(true);
        preferences.setItem(COSName.getPDFName("DisplayDocTitle"), COSBoolean.TRUE);
        preferences.setItem(COSName.getPDFName("PrintScaling"), COSName.getPDFName("None"));
        preferences.setItem(COSName.getPDFName("PickTrayByPDFSize"), COSBoolean.TRUE);
        String duplex = pages.size() < 2 ? "Simplex"
                : job.imposition().flip() == FlipEdge.SHORT ? "DuplexFlipShortEdge" : "DuplexFlipLongEdge";
        preferences.setItem(COSName.getPDFName("Duplex"), COSName.getPDFName(duplex));
        return preferences;
    }

    private COSArray colours() {
        COSDictionary intent = new COSDictionary();
        intent.setItem(COSName.TYPE, COSName.OUTPUT_INTENT);
        intent.setItem(COSName.S, COSName.GTS_PDFA1);
        intent.setString(COSName.OUTPUT_CONDITION_IDENTIFIER, "Custom");
        intent.setString(COSName.INFO, "RGB with the primaries and the curve of IEC 61966-2-1");
        intent.setItem(COSName.DEST_OUTPUT_PROFILE, prelude.colour());
        COSArray intents = new COSArray();
        intents.add(intent);
        return intents;
    }

    private static COSDictionary direct(COSName key, COSBoolean value) {
        COSDictionary dictionary = new COSDictionary();
        dictionary.setDirect(true);
        dictionary.setItem(key, value);
        return dictionary;
    }
}
