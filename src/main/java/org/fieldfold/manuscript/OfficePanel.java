package org.fieldfold.manuscript;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fieldfold.entry.Contact;
import org.fieldfold.entry.Edition;
import org.fieldfold.entry.Guide;
import org.fieldfold.entry.LocalNote;
import org.fieldfold.entry.Office;
import org.fieldfold.entry.Placed;
import org.fieldfold.source.Span;

/**
 * Whom a copy of a guide tells its reader to call, and what that office says and leaves out.
 *
 * @param office whose station its calendar is for; empty for generic copies, which tell the region's
 * @param notes of the office, those that have room on the panels of their entries
 * @param moved notes that stand on the office's own panel instead
 */
public record OfficePanel(String name, Contact contact, Optional<Office> office, List<Note> notes,
        List<Note> moved, Span origin) {
    /** A note and where it was written. */
    public record Note(LocalNote note, Span origin) {
    }

    public OfficePanel {
        notes = List.copyOf(notes);
        moved = List.copyOf(moved);
    }

    /** For a county office's own copies. */
    public static OfficePanel of(Placed<Office> office) {
        List<Note> notes = new ArrayList<>();
        for (int i = 0; i < office.value().notes().size(); i++) {
            notes.add(new Note(office.value().notes().get(i), office.at("notes", i)));
        }
        return new OfficePanel(office.value().name(), office.value().contact(),
                Optional.of(office.value()), notes, List.of(), office.at("contact"));
    }

    /** For generic copies: the publisher's own contact. */
    public static OfficePanel generic(Placed<Edition> edition) {
        return new OfficePanel(edition.value().publisher(), edition.value().contact(),
                Optional.empty(), List.of(), List.of(), edition.at("contact"));
    }

    /** A guide as this office's copies have it. */
    public Guide keeps(Guide guide) {
        return office.map(own -> own.keeps(guide)).orElse(guide);
    }

    /** Whether its copies of a guide differ from those of others by more than whom to call. */
    public boolean changes(Guide guide) {
        return office.filter(own -> own.changes(guide)).isPresent();
    }

    /** Its notes on the entries that a guide has on its copies. */
    public List<Note> notesIn(Guide guide) {
        return notes.stream().filter(note -> keeps(guide).entries().contains(note.note().entry())).toList();
    }

    /** The same with other notes on the panels of their entries, and others on its own. */
    public OfficePanel noting(List<Note> onPanels, List<Note> onItsOwn) {
        return new OfficePanel(name, contact, office, onPanels, onItsOwn, origin);
    }
}
