package org.fieldfold.fold;

/** What a panel is to the reader: the one met first, the back of the folded piece, or one between them. */
public enum PanelRole {
    COVER, INNER, LAST
}
