package org.fieldfold.fold;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Two panels that hang together along a line of the sheet; the first has the smaller number. */
record Joint(Cell low, Cell high, GridLine line) {
    /** What still hangs together once the cuts are made; a sheet that falls apart is refused. */
    static List<Joint> of(FoldScheme scheme) {
        for (Cut cut : scheme.cuts()) {
            scheme.require(cut.line());
            int crossings = scheme.lines(cut.line().axis() == Axis.UPRIGHT ? Axis.LEVEL : Axis.UPRIGHT) + 1;
            if (cut.to() > crossings) {
                throw new FoldException("the cut along " + cut.line() + " ends at line " + cut.to()
                        + ", but the sheet ends at " + crossings);
            }
        }
        List<Joint> joints = new ArrayList<>();
        int columns = scheme.columns().size();
        int rows = scheme.rows().size();
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                Cell cell = new Cell(column, row);
                if (column + 1 < columns) {
                    joints.add(new Joint(cell, new Cell(column + 1, row), new GridLine(Axis.UPRIGHT,
                            column + 1)));
                }
                if (row + 1 < rows) {
                    joints.add(new Joint(cell, new Cell(column, row + 1), new GridLine(Axis.LEVEL, row + 1)));
                }
            }
        }
        joints.removeIf(joint -> scheme.cuts().stream().anyMatch(joint::isCutBy));
        requireOnePiece(joints, columns * rows);
        return List.copyOf(joints);
    }

    /** Row of an upright joint, column of a level one, from 0. */
    int band() {
        return line.axis() == Axis.UPRIGHT ? low.row() : low.column();
    }

    Cell other(Cell cell) {
        return cell.equals(low) ? high : low;
    }

    boolean joins(Cell cell) {
        return cell.equals(low) || cell.equals(high);
    }

    private boolean isCutBy(Cut cut) {
        return cut.line().equals(line) && cut.from() <= band() && band() < cut.to();
    }

    private static void requireOnePiece(List<Joint> joints, int panels) {
        Set<Cell> reached = new HashSet<>(Set.of(new Cell(0, 0)));
        boolean grown = true;
        while (grown) {
            grown = false;
            for (Joint joint : joints) {
                if (reached.contains(joint.low) || reached.contains(joint.high)) {
                    grown |= reached.add(joint.low) | reached.add(joint.high);
                }
            }
        }
        if (reached.size() < panels) {
            throw new FoldException("the cuts part the sheet: " + (panels - reached.size()) + " of " + panels
                    + " panels fall off");
        }
    }
}
