package org.fieldfold.fold;

/** A panel's place on the flat sheet, counted from 0. */
record Cell(int column, int row) {
    int along(Axis axis) {
        return axis == Axis.UPRIGHT ? column : row;
    }

    @Override
    public String toString() {
        return "the panel in column " + (column + 1) + ", row " + (row + 1);
    }
}
