package org.fieldfold.entry;

/** The word on the front of a label, 40 CFR 156.64; the most toxic first. */
public enum SignalWord {
    DANGER_POISON, DANGER, WARNING, CAUTION
}
