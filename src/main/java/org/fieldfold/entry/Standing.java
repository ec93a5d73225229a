package org.fieldfold.entry;

/** How a published figure came into the base. */
public enum Standing {
    READ, VALUE_FROM_MEMORY
}
