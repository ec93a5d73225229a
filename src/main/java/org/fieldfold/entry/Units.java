package org.fieldfold.entry;

/** In which units a reader is told lengths and temperatures: mm, m and °C, inches, feet and °F, or both. */
public enum Units {
    METRIC, CUSTOMARY, BOTH
}
