package org.fieldfold.fold;

/**
 * Which way a line between panels runs on the sheet as it is laid: upright between columns, level between
 * rows.
 */
public enum Axis {
    UPRIGHT, LEVEL
}
