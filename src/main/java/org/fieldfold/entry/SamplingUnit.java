package org.fieldfold.entry;

/** What one looks at, one by one. */
public enum SamplingUnit {
    PLANT, STEM, LEAF, LEAFLET, BUD_CLUSTER, FRUIT, SPEAR, EAR, ROOT, SWEEP, TRAP, ROW_LENGTH, BED,
    SHOOT
}
