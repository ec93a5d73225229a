package org.fieldfold.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fieldfold.fold.Side;

/**
 * One printed side while it is drawn: its content stream, and to whom each marked stretch of it belongs.
 * Whatever is drawn is either of a tag or an artifact.
 */
final class SheetPage {
    private final int sheet;
    private final Side side;
    private final int index;
    private final Operators out = new Operators();
    private final List<TagNode> owners = new ArrayList<>();
    private Optional<TagNode> owner = Optional.empty();
    private boolean open;

    SheetPage(int sheet, Side side, int index) {
        this.sheet = sheet;
        this.side = side;
        this.index = index;
    }

    /** Begins above something finished, whose marked stretches have the first numbers. */
    void take(List<TagNode> itsOwners) {
        owners.addAll(itsOwners);
    }

    /** What was drawn, compressed. */
    FinishedStream own() {
        return FinishedStream.of(out.toBytes());
    }

    /** Goes on with a tag's content, or begins a stretch of it. Returns whether a stretch was begun. */
    boolean enter(TagNode node, int place) {
        if (open && owner.isPresent() && owner.get() == node) {
            return false;
        }
        leave();
        out.raw("/").raw(node.tag().role().pdfName()).raw("<</MCID ").whole(owners.size()).raw(">>BDC\n");
        node.add(new TagNode.Marked(place, index, owners.size()));
        owners.add(node);
        owner = Optional.of(node);
        open = true;
        return true;
    }

    /** Goes on with what is only seen. Returns whether a stretch was begun. */
    boolean enterArtifact() {
        if (open && owner.isEmpty()) {
            return false;
        }
        leave();
        out.raw("/Artifact BMC\n");
        owner = Optional.empty();
        open = true;
        return true;
    }

    /** Ends the stretch, if one is begun. */
    void leave() {
        if (open) {
            out.raw("EMC\n");
            open = false;
        }
    }

    /** Whose content is being drawn; empty for an artifact and between stretches. */
    Optional<TagNode> owner() {
        return open ? owner : Optional.empty();
    }

    Operators out() {
        return out;
    }

    /** Of a gathering, from 0. */
    int sheet() {
        return sheet;
    }

    Side side() {
        return side;
    }

    int index() {
        return index;
    }

    /** The owners of the marked stretches, by their numbers. */
    List<TagNode> owners() {
        return owners;
    }
}
