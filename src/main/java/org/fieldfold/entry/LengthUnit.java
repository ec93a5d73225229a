package org.fieldfold.entry;

/** Feet or metres. */
public enum LengthUnit {
    FOOT, METRE
}
