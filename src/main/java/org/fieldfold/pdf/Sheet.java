package org.fieldfold.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.fieldfold.fold.PanelSlot;
import org.fieldfold.fold.Side;
import org.fieldfold.typeset.Mark;
import org.fieldfold.typeset.SetPanel;
import org.fieldfold.typeset.Tag;

/** The printed sides of a sheet, or of several, while they are drawn, and the logical tree that they share. */
final class Sheet {
    private final PrintJob job;
    private final FrozenType type;
    private final ArtRoom art;
    private final TagTree tree;
    private final Resources resources = new Resources();
    private final List<SheetPage> pages = new ArrayList<>();
    private final NavigableMap<Integer, PanelPlace> starts = new TreeMap<>();
    private final Optional<Plate> plate;
    private int place;

    /** Where a panel lies. */
    record PanelPlace(int page, PageBox box) {}

    private Sheet(PrintJob job, FrozenType type, ArtRoom art, Optional<Plate> plate) {
        this.job = job;
        this.type = type;
        this.art = art;
        this.plate = plate;
        this.tree = new TagTree(job.guide().document(), plate.map(Plate::finished).orElse(Map.of()));
        for (int at = 0; at < job.sheets().sheets(); at++) {
            for (Side side : Side.values()) {
                if (!job.imposition().on(side).isEmpty()) {
                    pages.add(new SheetPage(at, side, pages.size()));
                }
            }
        }
    }

    static Sheet blank(PrintJob job, FrozenType type, ArtRoom art) {
        return new Sheet(job, type, art, Optional.empty());
    }

    /** Takes the plate over, and draws the panels that are not on it. */
    static Sheet draw(PrintJob job, FrozenType type, ArtRoom art, Plate plate) {
        Sheet sheet = new Sheet(job, type, art, Optional.of(plate));
        sheet.take(plate);
        Plate.own(job).forEach(sheet::panel);
        return sheet;
    }

    private void take(Plate plate) {
        plate.loose().forEach(drawn -> node(drawn.tag()).take(drawn));
        resources.take(plate.resources());
        starts.putAll(plate.starts());
        for (SheetPage page : pages) {
            Plate.Page finished = plate.pages().get(page.index());
            page.take(finished.owners().stream().map(tree::own).toList());
        }
    }

    /** Draws what surrounds the panels. */
    void surround() {
        for (SheetPage page : pages) {
            if (job.around() == PrintJob.Surround.FOLDS) {
                Furniture.draw(this, page);
            } else {
                PageFurniture.draw(this, page);
            }
        }
    }

    /** Draws a panel on its side. Places count anew on each, so that no panel's depend on another's. */
    void panel(SetPanel panel) {
        place = panel.reading() << 16;
        PanelSlot slot = job.sheets().slot(panel.reading());
        PanelFrame frame = PanelFrame.of(slot, job.imposition().sheetHeight());
        SheetPage page = page(job.sheets().sheetOf(panel.reading()), slot.side());
        starts.put(place, new PanelPlace(page.index(), frame.box(0, 0, frame.width(), frame.height())));
        PanelWriter writer = PanelWriter.begin(this, page, frame);
        job.proof().ifPresent(word -> writer.proof(word, slot.live()));
        for (Mark mark : panel.marks()) {
            writer.draw(mark);
        }
        writer.end();
    }

    private SheetPage page(int at, Side side) {
        return pages.stream().filter(page -> page.sheet() == at && page.side() == side).findFirst()
                .orElseThrow();
    }

    /** The panel on which a tag begins. */
    PanelPlace startOf(TagNode node) {
        return starts.floorEntry(node.first()).getValue();
    }

    PrintJob job() {
        return job;
    }

    FrozenType type() {
        return type;
    }

    ArtRoom art() {
        return art;
    }

    /** What it lies on; a sheet that is drawn to be a plate lies on none. */
    Plate plate() {
        return plate.orElseThrow();
    }

    TagTree tree() {
        return tree;
    }

    TagNode node(Tag tag) {
        return tree.node(tag);
    }

    Artwork artwork(String figure) {
        return art.artwork(figure);
    }

    Resources resources() {
        return resources;
    }

    List<SheetPage> pages() {
        return pages;
    }

    NavigableMap<Integer, PanelPlace> starts() {
        return starts;
    }

    /** Counts what is drawn, in reading order. */
    int nextPlace() {
        return place++;
    }
}
