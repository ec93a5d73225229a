package org.fieldfold.entry;

/** Under which terms a figure may be printed and given on. */
public enum Release {
    PUBLIC_DOMAIN, OWN_WORK, LICENSED,
    /** Its maker was asked and has not answered. */
    ASKED;

    /** Whether it may be printed. */
    public boolean given() {
        return this != ASKED;
    }
}
