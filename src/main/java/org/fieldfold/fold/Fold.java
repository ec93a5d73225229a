package org.fieldfold.fold;

import java.util.Locale;

/**
 * One fold through all layers that lie on the line.
 *
 * @param over whether the part is laid on top of the rest; otherwise it goes beneath
 */
public record Fold(GridLine line, Part part, boolean over) {
    public Fold {
        if (part.axis() != line.axis()) {
            throw new IllegalArgumentException("line " + line + " does not part "
                    + part.name().toLowerCase(Locale.ROOT) + " from the rest");
        }
    }

    @Override
    public String toString() {
        return line + " " + part.name().toLowerCase(Locale.ROOT) + (over ? " over" : " under");
    }
}
