package org.fieldfold.source;

import java.util.Locale;

/** How much a finding matters. An {@link #ERROR} stops a build; the others never do. */
public enum Severity {
    ERROR,
    WARNING,
    INFO;

    /** The word as it is printed: {@code error}, {@code warning}, {@code info}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
