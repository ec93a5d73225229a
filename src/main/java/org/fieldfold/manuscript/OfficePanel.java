package org.fieldfold.manuscript;

import java.util.Optional;
import org.fieldfold.entry.Contact;
import org.fieldfold.entry.Edition;
import org.fieldfold.entry.Office;
import org.fieldfold.entry.Placed;
import org.fieldfold.source.Span;

/**
 * Whom a copy of a guide tells its reader to call.
 *
 * @param office whose station its calendar is for; empty for generic copies, which tell the region's
 */
public record OfficePanel(String name, Contact contact, Optional<Office> office, Span origin) {
    /** For a county office's own copies. */
    public static OfficePanel of(Placed<Office> office) {
        return new OfficePanel(office.value().name(), office.value().contact(),
                Optional.of(office.value()), office.at("contact"));
    }

    /** For generic copies: the publisher's own contact. */
    public static OfficePanel generic(Placed<Edition> edition) {
        return new OfficePanel(edition.value().publisher(), edition.value().contact(),
                Optional.empty(), edition.at("contact"));
    }
}
