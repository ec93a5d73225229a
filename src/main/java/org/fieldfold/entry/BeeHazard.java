package org.fieldfold.entry;

/** How dangerous a material is to bees on contact. */
public enum BeeHazard {
    HIGH, MODERATE, LOW
}
