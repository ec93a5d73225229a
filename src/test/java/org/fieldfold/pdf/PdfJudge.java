package org.fieldfold.pdf;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.fieldfold.fold.Gathering;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.PanelSlot;
import org.fieldfold.fold.Side;

/**
 * Judges what veraPDF does not see: that text is read panel after panel, that everything belongs to a tag or
 * is an artifact, that each piece of content can be found on its page, that links and figures say where they
 * are, and that nothing that is read stands outside the live areas. What it finds wrong is listed in words.
 */
public final class PdfJudge {
    /** Letters such as j and an italic A begin a little left of the line's edge. */
    private static final double OVERHANG = 0.5;

    private final Gathering sheets;
    private final Imposition imposition;
    private final PDDocument document;
    private final List<String> faults = new ArrayList<>();
    private final Map<COSDictionary, Integer> pages = new IdentityHashMap<>();
    private final List<Map<Integer, StringBuilder>> textById = new ArrayList<>();
    private final List<Map<Integer, Rectangle2D>> boxById = new ArrayList<>();
    private final List<int[]> readings = new ArrayList<>();
    private final StringBuilder text = new StringBuilder();
    private int reading;
    private int linksSeen;

    private PdfJudge(Gathering sheets, PDDocument document) {
        this.sheets = sheets;
        this.imposition = sheets.sheet();
        this.document = document;
    }

    /** What is wrong, and all text in reading order. */
    public record Verdict(List<String> faults, String text) {}

    public static Verdict judge(byte[] pdf, Imposition imposition) throws IOException {
        return judge(pdf, new Gathering(imposition, 1));
    }

    /** The pages are the front and the back of each sheet in turn. */
    public static Verdict judge(byte[] pdf, Gathering sheets) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PdfJudge judge = new PdfJudge(sheets, document);
            judge.pages();
            COSDictionary root = document.getDocumentCatalog().getCOSObject()
                    .getCOSDictionary(COSName.STRUCT_TREE_ROOT);
            judge.walk((COSDictionary) root.getCOSArray(COSName.K).getObject(0), root, 0);
            judge.everyContentWasReached();
            judge.titles();
            return new Verdict(judge.faults, judge.text.toString());
        }
    }

    private void pages() throws IOException {
        for (int i = 0; i < document.getNumberOfPages(); i++) {
            pages.put(document.getPage(i).getCOSObject(), i);
            Map<Integer, StringBuilder> texts = new TreeMap<>();
            Map<Integer, Rectangle2D> boxes = new TreeMap<>();
            int side = i;
            for (DrawnPage.Thing thing : DrawnPage.of(document.getPage(i))) {
                if (thing.owner() == DrawnPage.UNMARKED) {
                    faults.add("page " + i + ": neither tagged nor an artifact: " + thing);
                } else if (thing.owner() >= 0) {
                    texts.computeIfAbsent(thing.owner(), unseen -> new StringBuilder()).append(thing.text());
                    if (!thing.text().isEmpty() && thing.text().isBlank()) {
                        continue;
                    }
                    boxes.merge(thing.owner(), thing.box(), Rectangle2D::createUnion);
                    if (slotOf(side, thing.box()) == 0) {
                        faults.add("page " + i + ": tagged, but outside the live areas: " + thing);
                    }
                }
            }
            textById.add(texts);
            boxById.add(boxes);
        }
    }

    /** The reading number of the panel in whose live area the box lies, or 0. */
    private int slotOf(int page, Rectangle2D box) {
        int sides = imposition.on(Side.BACK).isEmpty() ? 1 : 2;
        for (PanelSlot slot : sheets.on(page / sides, Side.values()[page % sides])) {
            PageBox live = PanelFrame.of(slot, imposition.sheetHeight()).box(slot.live().left(),
                    slot.live().top(), slot.liveWidth(), slot.liveHeight());
            if (box.getMinX() >= live.left() - OVERHANG && box.getMaxX() <= live.right() + OVERHANG
                    && box.getMinY() >= live.bottom() - OVERHANG && box.getMaxY() <= live.top() + OVERHANG) {
                return slot.reading();
            }
        }
        return 0;
    }

    private void walk(COSDictionary element, COSDictionary parent, int depth) {
        String role = element.getNameAsString(COSName.S);
        if (element.getCOSDictionary(COSName.P) != parent) {
            faults.add(role + " does not know its parent");
        }
        COSBase only = element.getDictionaryObject(COSName.K);
        for (COSBase item : only instanceof COSArray kids ? kids.toList() : List.of(only)) {
            COSBase kid = item instanceof COSObject reference ? reference.getObject() : item;
            if (kid instanceof COSInteger id) {
                content(element, element.getCOSDictionary(COSName.getPDFName("Pg")), id.intValue());
            } else if (kid instanceof COSDictionary dictionary) {
                String type = dictionary.getNameAsString(COSName.TYPE);
                if ("MCR".equals(type)) {
                    content(element, dictionary.getCOSDictionary(COSName.getPDFName("Pg")),
                            dictionary.getInt(COSName.MCID));
                } else if ("OBJR".equals(type)) {
                    link(element, dictionary);
                } else {
                    walk(dictionary, element, depth + 1);
                }
            }
        }
        if ("Figure".equals(role)) {
            figure(element);
        }
    }

    private void content(COSDictionary element, COSDictionary page, int id) {
        Integer index = pages.get(page);
        if (index == null) {
            faults.add(element.getNameAsString(COSName.S) + ": content " + id + " without its page");
            return;
        }
        COSArray owners = parent(index) instanceof COSArray array ? array : new COSArray();
        if (id >= owners.size() || owners.getObject(id) != element) {
            faults.add("page " + index + ", content " + id + ": the way back does not lead to its element");
        }
        Rectangle2D box = boxById.get(index).get(id);
        readings.add(new int[] {index, id});
        if (box != null) {
            int at = slotOf(index, box);
            if (at < reading) {
                faults.add("panel " + at + " is read after panel " + reading + ": "
                        + textById.get(index).get(id));
            }
            reading = Math.max(reading, at);
            text.append(textById.get(index).get(id));
        }
    }

    /** The entry of the parent tree. */
    private COSBase parent(int key) {
        COSArray numbers = document.getDocumentCatalog().getCOSObject()
                .getCOSDictionary(COSName.STRUCT_TREE_ROOT)
                .getCOSDictionary(COSName.PARENT_TREE).getCOSArray(COSName.NUMS);
        for (int i = 0; i < numbers.size(); i += 2) {
            if (numbers.getInt(i) == key) {
                return numbers.getObject(i + 1);
            }
        }
        return COSInteger.ZERO;
    }

    private void link(COSDictionary element, COSDictionary reference) {
        linksSeen++;
        COSDictionary annotation = reference.getCOSDictionary(COSName.getPDFName("Obj"));
        Integer page = pages.get(reference.getCOSDictionary(COSName.getPDFName("Pg")));
        if (page == null || annotation == null) {
            faults.add("a link's reference without its page or its annotation");
            return;
        }
        if (parent(annotation.getInt(COSName.STRUCT_PARENT)) != element) {
            faults.add("a link whose way back does not lead to its element");
        }
        if (annotation.getString(COSName.CONTENTS, "").isBlank() || annotation.getInt(COSName.F) != 4) {
            faults.add("a link without contents, or not printed");
        }
        if (slotOf(page, rectangle(annotation.getCOSArray(COSName.RECT))) == 0) {
            faults.add("a link outside the live areas");
        }
    }

    private void figure(COSDictionary element) {
        if (element.getString(COSName.ALT, "").isBlank()) {
            faults.add("a figure without words for those who cannot see it");
        }
        COSBase attributes = element.getDictionaryObject(COSName.A);
        COSArray box = attributes instanceof COSDictionary layout ? layout.getCOSArray(COSName.BBOX) : null;
        Integer page = pages.get(element.getCOSDictionary(COSName.getPDFName("Pg")));
        if (box == null || page == null) {
            faults.add("a figure without its box or its page");
            return;
        }
        if (slotOf(page, rectangle(box)) == 0) {
            faults.add("a figure's box outside the live areas: " + box);
        }
    }

    private void everyContentWasReached() {
        for (int page = 0; page < boxById.size(); page++) {
            for (int id : boxById.get(page).keySet()) {
                int index = page;
                long times = readings.stream().filter(one -> one[0] == index && one[1] == id).count();
                if (times != 1) {
                    faults.add("page " + page + ", content " + id + " is read " + times + " times");
                }
            }
        }
        int annotations = 0;
        for (COSDictionary page : pages.keySet()) {
            COSArray onPage = page.getCOSArray(COSName.ANNOTS);
            annotations += onPage == null ? 0 : onPage.size();
            if (onPage != null && !COSName.S.equals(page.getCOSName(COSName.getPDFName("Tabs")))) {
                faults.add("a page with links whose tabulator order is not that of the structure");
            }
        }
        if (annotations != linksSeen) {
            faults.add(annotations + " links on the pages, " + linksSeen + " in the tree");
        }
    }

    private void titles() throws IOException {
        String xmp = new String(document.getDocumentCatalog().getMetadata().toByteArray(),
                java.nio.charset.StandardCharsets.UTF_8);
        String title = document.getDocumentInformation().getTitle();
        String escaped = title.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
        if (!xmp.contains("<rdf:li xml:lang=\"x-default\">" + escaped + "</rdf:li></rdf:Alt></dc:title>")) {
            faults.add("the title in XMP is not '" + title + "'");
        }
        PDRectangle size = document.getPage(0).getMediaBox();
        if (Math.abs(size.getWidth() - imposition.sheetWidth()) > 0.01
                || Math.abs(size.getHeight() - imposition.sheetHeight()) > 0.01) {
            faults.add("the page is " + size + ", not the sheet");
        }
    }

    private static Rectangle2D rectangle(COSArray box) {
        double[] n = new double[4];
        for (int i = 0; i < 4; i++) {
            n[i] = ((COSNumber) box.getObject(i)).floatValue();
        }
        return new Rectangle2D.Double(n[0], n[1], n[2] - n[0], n[3] - n[1]);
    }
}
