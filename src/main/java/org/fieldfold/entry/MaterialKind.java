package org.fieldfold.entry;

/** What an active ingredient is made of. */
public enum MaterialKind {
    SYNTHETIC, BOTANICAL, MICROBIAL, FERMENTATION, VIRUS, SOAP, OIL, MINERAL, GENETIC
}
