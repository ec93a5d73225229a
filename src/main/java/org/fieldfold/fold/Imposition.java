package org.fieldfold.fold;

import java.util.Comparator;
import java.util.List;

/**
 * A fold scheme on a paper, for a printer that turns the sheet about a given edge: everything that is needed
 * to print the two pages. Lengths are points.
 *
 * <p>Reading order of what is opened: the cover lies on the part that was folded last. The reader lifts it,
 * and goes on opening in the reverse of the folding, looking from the same side; a face is read once it is
 * wholly in sight, at the last moment before it is turned away, and what goes out of sight together is read
 * line by line. The flat sheet is then turned over like a leaf and the rest is read line by line; the back of
 * the folded piece, wherever it lies on the sheet, is always last. Of what is leafed through, each leaf's two
 * faces in turn.
 *
 * @param sheetWidth width of both pages, upright or lying as the scheme lays the sheet
 * @param slots the panels in reading order
 * @param foldLines on both printed sides
 * @param cuts on the front
 * @param foldedWidth of the folded piece as its reader holds it
 * @param layers of paper where the folded piece is thickest
 */
public record Imposition(Paper paper, FoldScheme scheme, FlipEdge flip, double sheetWidth, double sheetHeight,
        List<PanelSlot> slots, List<FoldLine> foldLines, List<CutLine> cuts, double foldedWidth,
        double foldedHeight, int layers) {
    public Imposition {
        slots = List.copyOf(slots);
        foldLines = List.copyOf(foldLines);
        cuts = List.copyOf(cuts);
    }

    /** Folds the scheme and lays out its pages; a scheme that cannot be folded is a {@link FoldException}. */
    public static Imposition of(FoldScheme scheme, Paper paper, FlipEdge flip) {
        return new Imposer(scheme, paper, flip).impose();
    }

    /** How thick the folded piece is, pressed flat; copier paper of 80 g/m2 or 20 lb is about 0.1 mm. */
    public double thicknessMm(double caliperMm) {
        return layers * caliperMm;
    }

    /** The slot with this reading number. */
    public PanelSlot slot(int reading) {
        if (reading < 1 || reading > slots.size()) {
            throw new IllegalArgumentException("readings are 1 to " + slots.size() + ": " + reading);
        }
        return slots.get(reading - 1);
    }

    /** The slots on one page, from the top left, line by line. */
    public List<PanelSlot> on(Side side) {
        return slots.stream().filter(slot -> slot.side() == side)
                .sorted(Comparator.comparingDouble(PanelSlot::y).thenComparingDouble(PanelSlot::x))
                .toList();
    }

    /** Both pages in plain text: reading numbers, arrows to the upper edge of each panel, folds and cuts. */
    public String drawing() {
        return new SchemeDrawing(this).draw();
    }
}
