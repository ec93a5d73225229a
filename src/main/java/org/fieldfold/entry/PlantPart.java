package org.fieldfold.entry;

/** Where on the plant something is seen. */
public enum PlantPart {
    SEEDLING, LEAF, STEM, GROWING_POINT, BUD, FLOWER, FRUIT, HEAD, EAR, SPEAR, BULB, ROOT, TUBER
}
