package org.fieldfold.manuscript;

import org.fieldfold.entry.Contact;
import org.fieldfold.entry.Edition;
import org.fieldfold.entry.Office;
import org.fieldfold.entry.Placed;
import org.fieldfold.source.Span;

/** Whom a copy of a guide tells its reader to call. */
public record OfficePanel(String name, Contact contact, Span origin) {
    /** For a county office's own copies. */
    public static OfficePanel of(Placed<Office> office) {
        return new OfficePanel(office.value().name(), office.value().contact(), office.at("contact"));
    }

    /** For generic copies: the publisher's own contact. */
    public static OfficePanel generic(Placed<Edition> edition) {
        return new OfficePanel(edition.value().publisher(), edition.value().contact(), edition.at("contact"));
    }
}
