package org.fieldfold.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSName;

/**
 * The outline that a viewer shows beside the pages: the titles of the sections, each leading to its panel.
 */
final class Bookmarks {
    private Bookmarks() {}

    /** The outline, or nothing when no section has a title. */
    static Optional<COSDictionary> write(Sheet sheet, List<COSDictionary> pages) {
        COSDictionary outline = new COSDictionary();
        outline.setItem(COSName.TYPE, COSName.OUTLINES);
        List<COSDictionary> items = new ArrayList<>();
        for (TagNode node : sheet.tree().sections()) {
            if (!node.tag().title().isBlank() && !node.isEmpty()) {
                COSDictionary item = new COSDictionary();
                item.setString(COSName.TITLE, node.tag().title());
                item.setItem(COSName.PARENT, outline);
                item.setItem(COSName.DEST, destination(sheet.startOf(node), pages));
                item.setItem(COSName.getPDFName("SE"), node.element());
                items.add(item);
            }
        }
        if (items.isEmpty()) {
            return Optional.empty();
        }
        for (int i = 1; i < items.size(); i++) {
            items.get(i).setItem(COSName.PREV, items.get(i - 1));
            items.get(i - 1).setItem(COSName.NEXT, items.get(i));
        }
        outline.setItem(COSName.FIRST, items.get(0));
        outline.setItem(COSName.LAST, items.get(items.size() - 1));
        outline.setInt(COSName.COUNT, items.size());
        return Optional.of(outline);
    }

    /** Shows the whole panel, as large as the window allows. */
    private static COSArray destination(Sheet.PanelPlace panel, List<COSDictionary> pages) {
        COSArray target = new COSArray();
        target.add(pages.get(panel.page()));
        target.add(COSName.getPDFName("FitR"));
        panel.box().toArray().forEach(number -> target.add((COSFloat) number));
        return target;
    }
}
