package org.fieldfold.fold;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Reads a folded piece by opening it, step after step, in the reverse of the folding. The cover lies on the
 * part that was folded last, which is what a reader lifts first. The reader keeps what is up upwards and
 * looks from the same side until the sheet is flat, then turns it over like a leaf.
 *
 * <p>A face is read once it is wholly in sight, and at the last moment before it is turned away: so the flap
 * of a letter fold comes before the three panels of the open sheet. Those that go out of sight at the same
 * moment are read line by line. The back of the folded piece is always last (common practice, no source).
 */
final class Opening {
    private final FoldedSheet sheet;
    private final View view;
    private final List<Pile> states = new ArrayList<>();
    private final List<ReadFace> order = new ArrayList<>();
    private final Set<Face> read = new HashSet<>();

    private Opening(FoldedSheet sheet) {
        this.sheet = sheet;
        this.view = new View(sheet.scheme().head().heading(), lastFoldWentOver(sheet));
        Pile pile = sheet.pile();
        states.add(pile);
        for (int step = sheet.made().size() - 1; step >= 0; step--) {
            List<Pile.Made> folds = sheet.made().get(step);
            for (int k = folds.size() - 1; k >= 0; k--) {
                pile = pile.unfold(folds.get(k));
            }
            states.add(pile);
        }
    }

    static List<ReadFace> read(FoldedSheet sheet) {
        if (sheet.scheme().steps().stream().anyMatch(FoldStep.Gather.class::isInstance)) {
            throw new FoldException("a sheet that is gathered is leafed through, not opened: say 'read "
                    + "leafing'");
        }
        return new Opening(sheet).read();
    }

    static boolean lastFoldWentOver(FoldedSheet sheet) {
        if (sheet.made().isEmpty()) {
            return true;
        }
        List<Pile.Made> last = sheet.made().get(sheet.made().size() - 1);
        return last.get(last.size() - 1).over();
    }

    private List<ReadFace> read() {
        Pile folded = states.get(0);
        List<PlacedPanel> covers = view.whollyVisible(folded);
        View behind = view.turnedOver();
        List<PlacedPanel> backs = behind.whollyVisible(folded);
        backs.forEach(panel -> read.add(behind.faceOf(panel)));
        add(view, covers);
        for (int moment = 1; moment < states.size(); moment++) {
            add(view, goneAfter(moment));
        }
        add(behind, behind.whollyVisible(states.get(states.size() - 1)));
        backs.forEach(panel -> read.remove(behind.faceOf(panel)));
        add(behind, backs);
        return withRoles(order, sheet, backs.isEmpty());
    }

    /** What is in sight at this moment and no longer at the next, or stays so to the end. */
    private List<PlacedPanel> goneAfter(int moment) {
        List<PlacedPanel> now = view.whollyVisible(states.get(moment));
        if (moment == states.size() - 1) {
            return now;
        }
        Set<Face> next = new HashSet<>();
        view.whollyVisible(states.get(moment + 1)).forEach(panel -> next.add(view.faceOf(panel)));
        return now.stream().filter(panel -> !next.contains(view.faceOf(panel))).toList();
    }

    private void add(View from, List<PlacedPanel> panels) {
        for (PlacedPanel panel : panels) {
            if (read.add(from.faceOf(panel))) {
                order.add(new ReadFace(from.faceOf(panel), from.upOn(panel), PanelRole.INNER));
            }
        }
    }

    /** Keeps what is printed, and names the first and the last. */
    static List<ReadFace> withRoles(List<ReadFace> order, FoldedSheet sheet, boolean noBack) {
        boolean coverSide = order.get(0).face().upper();
        List<ReadFace> printed = new ArrayList<>(order);
        if (sheet.scheme().oneSided()) {
            printed.removeIf(face -> face.face().upper() != coverSide);
        }
        requireAll(printed, sheet);
        List<ReadFace> named = new ArrayList<>();
        for (int k = 0; k < printed.size(); k++) {
            boolean isBack = !noBack && k == printed.size() - 1
                    && printed.get(k).equals(order.get(order.size() - 1));
            PanelRole role = k == 0 ? PanelRole.COVER : isBack ? PanelRole.LAST : PanelRole.INNER;
            named.add(new ReadFace(printed.get(k).face(), printed.get(k).up(), role));
        }
        return Collections.unmodifiableList(named);
    }

    private static void requireAll(List<ReadFace> printed, FoldedSheet sheet) {
        Map<Face, Integer> count = new HashMap<>();
        printed.forEach(face -> count.merge(face.face(), 1, Integer::sum));
        boolean coverSide = printed.get(0).face().upper();
        for (PlacedPanel panel : sheet.pile().layers()) {
            for (boolean upper : new boolean[] {true, false}) {
                boolean wanted = !sheet.scheme().oneSided() || upper == coverSide;
                if (wanted && count.getOrDefault(new Face(panel.cell(), upper), 0) != 1) {
                    throw new FoldException("a reader never meets " + panel.cell() + " ("
                            + (upper ? "the face that lies up at the start" : "the face that lies down")
                            + ")");
                }
            }
        }
    }
}
