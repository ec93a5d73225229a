package org.fieldfold.entry;

/** Whom a guide, a count or a measure is for. */
public enum Audience {
    FIELD, TUNNEL, GARDEN
}
