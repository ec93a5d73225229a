package org.fieldfold.entry;

/** Whether certified-organic growers may use it; the product and the certifier still decide. */
public enum OrganicStatus {
    ALLOWED, RESTRICTED, PROHIBITED
}
