package org.fieldfold.entry;

/** The kinds of practice that rules speak about. */
public enum PracticeKind {
    ROTATION, SANITATION, TIMING, VARIETY, TRAP_CROP, ROW_COVER, INSECT_NET, LOW_TUNNEL,
    HIGH_TUNNEL_SCREEN, CONSERVE_ENEMIES, RELEASE_ENEMIES, MULCH, CLEAN_STOCK, MECHANICAL
}
