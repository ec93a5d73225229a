package org.fieldfold.entry;

import java.util.List;

/** Whom a guide, a count or a measure is for. */
public enum Audience {
    FIELD, TUNNEL, GARDEN;

    /** Whether something that names {@code audiences} is meant for this one; naming none means everybody. */
    public boolean among(List<Audience> audiences) {
        return audiences.isEmpty() || audiences.contains(this);
    }
}
