package org.fieldfold.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBoolean;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.fieldfold.fold.FlipEdge;

/** Puts a drawn sheet into a file: pages, tree, links, outline, and what a printer and a reader are told. */
final class SheetFile {
    private final Sheet sheet;
    private final PrintJob job;
    private final PDDocument document;
    private final List<COSDictionary> pages = new ArrayList<>();

    private SheetFile(Sheet sheet, PDDocument document) {
        this.sheet = sheet;
        this.job = sheet.job();
        this.document = document;
    }

    static byte[] write(Sheet sheet, Frozen colour) {
        try (PDDocument document = new PDDocument()) {
            return new SheetFile(sheet, document).write(colour);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private byte[] write(Frozen colour) throws IOException {
        document.getDocument().setVersion(1.7f);
        pages();
        List<COSDictionary> annotated = Links.write(sheet, pages);
        COSDictionary catalog = document.getDocumentCatalog().getCOSObject();
        catalog.setItem(COSName.STRUCT_TREE_ROOT, StructureTree.write(sheet, pages, annotated));
        catalog.setItem(COSName.MARK_INFO, direct(COSName.getPDFName("Marked"), COSBoolean.TRUE));
        catalog.setItem(COSName.LANG, new COSString(job.language()));
        catalog.setItem(COSName.VIEWER_PREFERENCES, preferences());
        Bookmarks.write(sheet, pages).ifPresent(outline -> catalog.setItem(COSName.OUTLINES, outline));
        catalog.setItem(COSName.OUTPUT_INTENTS, colours(colour));
        Imprint imprint = new Imprint(job);
        COSStream metadata = Streams.plain(document, imprint.xmp());
        metadata.setItem(COSName.TYPE, COSName.METADATA);
        metadata.setItem(COSName.SUBTYPE, COSName.getPDFName("XML"));
        catalog.setItem(COSName.METADATA, metadata);
        document.setDocumentInformation(new PDDocumentInformation(imprint.information()));
        ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 17);
        document.save(out, CompressParameters.NO_COMPRESSION);
        return out.toByteArray();
    }

    private void pages() throws IOException {
        COSDictionary resources = sheet.resources().toDictionary(document, sheet.type(), sheet.art());
        PDRectangle size = new PDRectangle((float) job.imposition().sheetWidth(),
                (float) job.imposition().sheetHeight());
        CRC32 identity = new CRC32();
        for (SheetPage drawn : sheet.pages()) {
            COSArray contents = new COSArray();
            for (FinishedStream content : drawn.content()) {
                identity.update(ByteBuffer.allocate(Long.BYTES).putLong(0, content.sum()));
                contents.add(content.copyInto(document));
            }
            PDPage page = new PDPage(size);
            COSDictionary dictionary = page.getCOSObject();
            dictionary.setItem(COSName.CONTENTS, contents);
            dictionary.setItem(COSName.RESOURCES, resources);
            dictionary.setInt(COSName.STRUCT_PARENTS, drawn.index());
            document.addPage(page);
            pages.add(dictionary);
        }
        // without a number of its own a document is known by the clock
        document.setDocumentId(identity.getValue());
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

    private COSArray colours(Frozen profile) throws IOException {
        COSDictionary intent = new COSDictionary();
        intent.setItem(COSName.TYPE, COSName.OUTPUT_INTENT);
        intent.setItem(COSName.S, COSName.GTS_PDFA1);
        intent.setString(COSName.OUTPUT_CONDITION_IDENTIFIER, "Custom");
        intent.setString(COSName.INFO, "RGB with the primaries and the curve of IEC 61966-2-1");
        intent.setItem(COSName.DEST_OUTPUT_PROFILE, profile.copyInto(document));
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
