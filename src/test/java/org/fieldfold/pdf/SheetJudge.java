package org.fieldfold.pdf;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.fieldfold.fold.FoldLine;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.PanelSlot;
import org.fieldfold.fold.Side;

/**
 * Judges a printed sheet of a shipped scheme by what is known of the scheme without the code ({@link
 * KnownOrders}) and by the ink on its pages; {@link PdfJudge} judges its structure.
 */
final class SheetJudge {
    private static final double MM = 72 / 25.4;
    /** Letters such as j and an italic A begin a little left of the line's edge. */
    private static final double OVERHANG = 0.5;
    /** Boxes of letters are larger than their ink: a J under an italic f is no fault. */
    private static final double TOUCH = 0.4;

    private final PDDocument document;
    private final Imposition imposition;
    private final FileTree.Element root;
    private final List<String> faults = new ArrayList<>();

    private SheetJudge(PDDocument document, Imposition imposition) throws IOException {
        this.document = document;
        this.imposition = imposition;
        this.root = FileTree.of(document);
    }

    static List<String> faults(PDDocument document, Imposition imposition) throws IOException {
        SheetJudge judge = new SheetJudge(document, imposition);
        judge.panelsAreReadInTheKnownOrder();
        for (int page = 0; page < document.getNumberOfPages(); page++) {
            List<DrawnPage.Thing> things = DrawnPage.of(document.getPage(page));
            judge.everyGlyphIsOne(page, things);
            judge.inkKeepsOffEdgesAndFolds(page, things);
            judge.noTwoThingsShareInk(page, things);
        }
        judge.boxesHoldTheirFigures();
        judge.listsSayHowTheyCount();
        judge.bookmarksLeadToTheSections();
        return judge.faults;
    }

    /** The panel on whose box a point of a page lies. */
    private PanelSlot slotAt(int page, Rectangle2D box) {
        double y = imposition.sheetHeight() - box.getCenterY();
        return imposition.on(Side.values()[page]).stream()
                .filter(slot -> slot.x() <= box.getCenterX() && box.getCenterX() <= slot.x() + slot.width()
                        && slot.y() <= y && y <= slot.y() + slot.height())
                .findFirst().orElseThrow(() -> new AssertionError("off the sheet: " + box));
    }

    private void panelsAreReadInTheKnownOrder() {
        int before = 0;
        List<FileTree.Content> all = root.contents().toList();
        for (FileTree.Content content : all) {
            for (DrawnPage.Thing thing : content.things()) {
                if (!thing.isType() && !thing.text().isEmpty()) {
                    continue;
                }
                int known = KnownOrders.panelAt(imposition, slotAt(content.page(), thing.box()));
                if (Math.abs(known) < before) {
                    faults.add("panel " + Math.abs(known) + " is read after panel " + before + ": "
                            + content.text());
                }
                before = Math.max(before, Math.abs(known));
                if (thing.isType() && thing.turn() != (known < 0 ? 180 : 0)) {
                    faults.add("panel " + known + ": turned by " + thing.turn() + ": " + content.text());
                }
            }
        }
        if (before != imposition.slots().size()) {
            faults.add("the last panel that is read is " + before);
        }
    }

    private void everyGlyphIsOne(int page, List<DrawnPage.Thing> things) {
        things.stream().filter(thing -> thing.text().contains("\ufffd"))
                .forEach(thing -> faults.add("page " + page + ": a glyph that says nothing: " + thing));
    }

    /** 6.35 mm from the edges of the sheet, 3 mm from folds: what is read has a meaning. */
    private void inkKeepsOffEdgesAndFolds(int page, List<DrawnPage.Thing> things) {
        double edge = 6.35 * MM - OVERHANG;
        for (DrawnPage.Thing thing : things) {
            if (thing.owner() < 0 || !thing.isType() && !thing.text().isEmpty()) {
                continue;
            }
            Rectangle2D box = thing.box();
            if (box.getMinX() < edge || box.getMinY() < edge
                    || box.getMaxX() > imposition.sheetWidth() - edge
                    || box.getMaxY() > imposition.sheetHeight() - edge) {
                faults.add("page " + page + ": too near the edge of the sheet: " + thing);
            }
            for (FoldLine fold : imposition.foldLines()) {
                double out = 3 * MM - OVERHANG;
                Rectangle2D zone = new Rectangle2D.Double(Math.min(fold.x1(), fold.x2()),
                        imposition.sheetHeight() - Math.max(fold.y1(), fold.y2()),
                        Math.abs(fold.x1() - fold.x2()), Math.abs(fold.y1() - fold.y2()));
                zone.setRect(zone.getX() - out, zone.getY() - out, zone.getWidth() + 2 * out,
                        zone.getHeight() + 2 * out);
                if (fold.side().ordinal() == page && zone.intersects(box)) {
                    faults.add("page " + page + ": too near a fold: " + thing);
                }
            }
        }
    }

    /** No letter over another of another block, none over a drawing of another, however they are nested. */
    private void noTwoThingsShareInk(int page, List<DrawnPage.Thing> things) {
        List<DrawnPage.Thing> solid = things.stream()
                .filter(thing -> thing.owner() >= 0 && (thing.isType() || thing.text().isEmpty())
                        || thing.owner() < 0 && thing.isType())
                .sorted(Comparator.comparingDouble(thing -> thing.box().getMinX())).toList();
        for (int i = 0; i < solid.size(); i++) {
            DrawnPage.Thing one = solid.get(i);
            for (int j = i + 1; j < solid.size()
                    && solid.get(j).box().getMinX() < one.box().getMaxX() - TOUCH; j++) {
                DrawnPage.Thing other = solid.get(j);
                Rectangle2D shared = one.box().createIntersection(other.box());
                if (one.owner() != other.owner() && shared.getWidth() > TOUCH && shared.getHeight() > TOUCH) {
                    faults.add("page " + page + ": " + one + " over " + other);
                }
            }
        }
    }

    /** The box of a figure is where its ink is on the page, also on a panel that stands on its head. */
    private void boxesHoldTheirFigures() {
        root.all().filter(element -> element.role().equals("Figure")).forEach(figure -> {
            float[] array = ((COSDictionary) figure.entry().getDictionaryObject(COSName.A))
                    .getCOSArray(COSName.BBOX).toFloatArray();
            Rectangle2D box = new Rectangle2D.Double(array[0] - OVERHANG, array[1] - OVERHANG,
                    array[2] - array[0] + 2 * OVERHANG, array[3] - array[1] + 2 * OVERHANG);
            figure.contents().flatMap(content -> content.things().stream())
                    .filter(thing -> thing.isType() || thing.text().isEmpty())
                    // white where something was bitten off shows the paper, and is no ink
                    .filter(thing -> thing.rgb() != 0xffffff && !box.contains(thing.box()))
                    .forEach(thing -> faults.add(figure.says("Alt") + ": outside its box " + box + ": "
                            + thing));
        });
    }

    private void listsSayHowTheyCount() {
        root.all().filter(element -> element.role().equals("L")).forEach(list -> {
            String labels = list.elements().stream().flatMap(FileTree.Element::all)
                    .filter(element -> element.role().equals("Lbl")).map(FileTree.Element::text)
                    .collect(Collectors.joining());
            String found = list.attribute("ListNumbering");
            boolean fits = labels.isBlank() ? found.isEmpty() || found.equals("None")
                    : labels.matches("[0-9. \u00a0]+") ? found.equals("Decimal")
                    : List.of("Disc", "Square", "Circle").contains(found);
            if (!fits) {
                faults.add("a list labelled '" + labels + "' says that it is numbered '" + found + "'");
            }
        });
    }

    private void bookmarksLeadToTheSections() throws IOException {
        List<FileTree.Element> sections = root.elements().stream()
                .filter(element -> element.role().equals("Sect")).toList();
        List<PDOutlineItem> items = new ArrayList<>();
        document.getDocumentCatalog().getDocumentOutline().children().forEach(items::add);
        List<String> titles = sections.stream().map(section -> section.says("T")).toList();
        if (!titles.equals(items.stream().map(PDOutlineItem::getTitle).toList())) {
            faults.add("bookmarks " + items.stream().map(PDOutlineItem::getTitle).toList()
                    + " to sections " + titles);
            return;
        }
        for (int i = 0; i < items.size(); i++) {
            PDPage page = items.get(i).findDestinationPage(document);
            FileTree.Content first = sections.get(i).contents().findFirst().orElseThrow();
            if (document.getPages().indexOf(page) != first.page()) {
                faults.add("a bookmark to the wrong side: " + titles.get(i));
            } else if (items.get(i).getDestination() instanceof PDPageXYZDestination place) {
                PanelSlot slot = slotAt(first.page(), first.things().get(0).box());
                Rectangle2D there =
                        new Rectangle2D.Double(place.getLeft() + 1, place.getTop() - 1, 0, 0);
                if (slotAt(first.page(), there) != slot) {
                    faults.add("a bookmark to another panel: " + titles.get(i));
                }
            }
        }
    }
}
