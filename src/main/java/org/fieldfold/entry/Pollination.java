package org.fieldfold.entry;

/** What a crop needs to set what is harvested. */
public enum Pollination {
    NONE, WIND, SELF, INSECTS
}
