package org.fieldfold.fold;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The piece as it lies before the folder: all its panels, the lowest layer first. */
record Pile(List<PlacedPanel> layers) {
    Pile {
        layers = List.copyOf(layers);
    }

    /** The sheet before the first fold, in units of the scheme's proportions. */
    static Pile flat(FoldScheme scheme) {
        List<PlacedPanel> panels = new ArrayList<>();
        double y = 0;
        for (int row = 0; row < scheme.rows().size(); row++) {
            double x = 0;
            for (int column = 0; column < scheme.columns().size(); column++) {
                panels.add(new PlacedPanel(new Cell(column, row), x, y, x + scheme.columns().get(column),
                        y + scheme.rows().get(row), false, false));
                x += scheme.columns().get(column);
            }
            y += scheme.rows().get(row);
        }
        return new Pile(panels);
    }

    /** What a fold did, so that it can be undone: the line's place, and which panels went over or under. */
    record Made(Axis axis, double at, Set<Cell> moved, boolean over) {
        Made {
            moved = Set.copyOf(moved);
        }
    }

    Made plan(Fold fold) {
        Axis axis = fold.line().axis();
        double at = placeOf(fold);
        Set<Cell> moved = new HashSet<>();
        for (PlacedPanel panel : layers) {
            if (panel.low(axis) < at && at < panel.high(axis)) {
                throw new FoldException("fold " + fold + " would run through " + panel.cell()
                        + ", which lies across the line: what is folded in must not be wider than what it is "
                        + "folded into");
            }
            if (isMoved(panel, fold, at)) {
                moved.add(panel.cell());
            }
        }
        return new Made(axis, at, moved, fold.over());
    }

    /** Turns the moved layers about the line, which reverses their order, and lays them on top or beneath. */
    Pile fold(Made made) {
        return turn(made, made.over());
    }

    /**
     * Opens a fold again; what it moved no longer lies on anything, so its place among the layers is free.
     */
    Pile unfold(Made made) {
        return turn(made, made.over());
    }

    private Pile turn(Made made, boolean onTop) {
        List<PlacedPanel> rest = new ArrayList<>();
        List<PlacedPanel> moved = new ArrayList<>();
        for (PlacedPanel panel : layers) {
            if (made.moved().contains(panel.cell())) {
                moved.add(panel.turned(made.axis(), made.at()));
            } else {
                rest.add(panel);
            }
        }
        Collections.reverse(moved);
        return onTop ? join(rest, moved) : join(moved, rest);
    }

    Optional<PlacedPanel> find(Cell cell) {
        return layers.stream().filter(panel -> panel.cell().equals(cell)).findFirst();
    }

    PlacedPanel at(Cell cell) {
        return find(cell).orElseThrow(() -> new IllegalArgumentException("no such panel: " + cell));
    }

    int levelOf(Cell cell) {
        return layers.indexOf(at(cell));
    }

    private double placeOf(Fold fold) {
        Axis axis = fold.line().axis();
        int low = fold.line().index() - 1;
        PlacedPanel panel = layers.stream().filter(p -> p.cell().along(axis) == low).findFirst().orElseThrow(
                () -> new FoldException("line " + fold.line() + " does not exist on this sheet"));
        return panel.mirrored(axis) ? panel.low(axis) : panel.high(axis);
    }

    private static boolean isMoved(PlacedPanel panel, Fold fold, double at) {
        Axis axis = fold.line().axis();
        return fold.part().low() ? panel.high(axis) <= at : panel.low(axis) >= at;
    }

    private static Pile join(List<PlacedPanel> low, List<PlacedPanel> high) {
        List<PlacedPanel> all = new ArrayList<>(low);
        all.addAll(high);
        return new Pile(all);
    }
}
