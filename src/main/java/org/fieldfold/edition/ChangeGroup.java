package org.fieldfold.edition;

import java.util.Locale;

/** What a change is about, in the order in which a reader wants to know. */
public enum ChangeGroup {
    ENTRIES("Entries added and withdrawn"),
    THRESHOLDS("Thresholds"),
    MATERIALS("Materials"),
    CAUTIONS("Cautions"),
    IDENTIFICATION("Identification"),
    MONITORING("Monitoring"),
    MEASURES("Measures"),
    OTHER("Guides, offices, sources and other facts"),
    WORDING("Wording only");

    private final String heading;

    ChangeGroup(String heading) {
        this.heading = heading;
    }

    public String heading() {
        return heading;
    }

    /** As it is written in JSON. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
