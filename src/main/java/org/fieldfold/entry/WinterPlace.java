package org.fieldfold.entry;

/** Where a pest spends the winter. */
public enum WinterPlace {
    BED_SOIL, CROP_RESIDUE, FIELD_EDGE, WOODS, BARK, HOST_PLANTS, PROTECTED_CROPS, ELSEWHERE
}
