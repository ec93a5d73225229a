package org.fieldfold.fold;

import java.util.List;

/** A sheet that is not folded: one panel a side, as large as the paper. */
public enum FlatScheme {
    /** Upright, printed on both sides: a page of something that is read in the hand. */
    PAGE("page", "Page", false, false),
    /** Lying, printed on both sides. */
    WIDE_PAGE("wide-page", "Wide page", true, false),
    /** Upright, printed on one side: it hangs on a wall. */
    POSTER("poster", "Poster", false, true);

    private final FoldScheme scheme;

    FlatScheme(String id, String title, boolean landscape, boolean oneSided) {
        this.scheme = new FoldScheme(id, title, landscape, List.of(1), List.of(1), oneSided, false,
                FoldScheme.Head.TOP, List.of(), List.of(), List.of());
    }

    /** The sheet on a paper. */
    public Imposition on(Paper paper, FlipEdge flip) {
        return Imposition.of(scheme, paper, flip);
    }

    /** The same, with a margin that is wider than what a printer leaves white anyhow. */
    public Imposition on(Paper paper, FlipEdge flip, Insets margins) {
        Imposition sheet = on(paper, flip);
        return new Imposition(sheet.paper(), sheet.scheme(), flip, sheet.sheetWidth(), sheet.sheetHeight(),
                sheet.slots().stream().map(slot -> within(slot, margins)).toList(), sheet.foldLines(),
                sheet.cuts(), sheet.foldedWidth(), sheet.foldedHeight(), sheet.layers());
    }

    private static PanelSlot within(PanelSlot slot, Insets margins) {
        Insets live = new Insets(Math.max(slot.live().top(), margins.top()),
                Math.max(slot.live().right(), margins.right()),
                Math.max(slot.live().bottom(), margins.bottom()),
                Math.max(slot.live().left(), margins.left()));
        return new PanelSlot(slot.reading(), slot.side(), slot.x(), slot.y(), slot.width(), slot.height(),
                slot.rotation(), live, slot.role());
    }
}
