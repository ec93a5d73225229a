package org.fieldfold;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.Supplier;
import org.fieldfold.entry.Guide;
import org.fieldfold.entry.Placed;
import org.fieldfold.manuscript.Manuscript;
import org.fieldfold.manuscript.OfficePanel;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Span;
import org.fieldfold.typeset.Learnt;
import org.fieldfold.typeset.SetGuide;

/**
 * Copies of a guide for offices that leave entries out or add notes: each set anew, as it shares no panels
 * with others. A note stands on the panel of its entry if that costs the entry nothing that it says;
 * otherwise on the office's own panel. Where the notes stand is remembered, and nothing else.
 */
final class ChangedCopies {
    private final PrintRoom room;
    private final Placed<Guide> guide;
    private final Function<OfficePanel, Manuscript> written;
    private final Setting.Manner manner;
    private final Supplier<Learnt> known;
    private final Map<String, OfficePanel> placed = new ConcurrentHashMap<>();

    /** @param known from copies that change nothing */
    ChangedCopies(PrintRoom room, Placed<Guide> guide, Function<OfficePanel, Manuscript> written,
            Setting.Manner manner, Supplier<Learnt> known) {
        this.room = room;
        this.known = known;
        this.manner = manner;
        this.guide = guide;
        this.written = written;
    }

    /** An office whose notes stand where they have room. */
    OfficePanel placed(OfficePanel office) {
        String id = office.office().orElseThrow().id();
        OfficePanel known = placed.get(id);
        if (known == null) {
            known = place(office);
            placed.putIfAbsent(id, known);
        }
        return known;
    }

    List<Finding> moved(OfficePanel office) {
        return placed(office).moved().stream().map(ChangedCopies::moved).toList();
    }

    SetGuide saying(List<Finding> moved, SetGuide set) {
        List<Finding> findings = new ArrayList<>(set.findings());
        findings.addAll(moved);
        return new SetGuide(set.panels(), set.document(), set.typeSize(), set.fit(), findings);
    }

    private OfficePanel place(OfficePanel office) {
        List<OfficePanel.Note> all = office.notesIn(guide.value());
        List<OfficePanel.Note> onPanels = new ArrayList<>();
        List<OfficePanel.Note> moved = new ArrayList<>();
        if (!all.isEmpty()) {
            Look without = look(office.noting(List.of(), List.of()));
            for (OfficePanel.Note note : all) {
                onPanels.add(note);
                Look with = look(office.noting(onPanels, List.of()));
                if (!without.findings().containsAll(with.findings())
                        || !shortened(without).containsAll(shortened(with))) {
                    onPanels.remove(note);
                    moved.add(note);
                }
            }
        }
        return office.noting(onPanels, moved);
    }

    private Look look(OfficePanel office) {
        return room.trial(new Setting(written.apply(office), manner), known.get());
    }

    /** What is not said in full, or not at all, for want of room. */
    private static Set<Span> shortened(Look set) {
        Set<Span> shortened = new HashSet<>();
        set.fit().forEach(panel -> panel.forms().stream().filter(SetGuide.Form::brief)
                .forEach(form -> shortened.add(form.origin())));
        return shortened;
    }

    private static Finding moved(OfficePanel.Note note) {
        return Finding.warning(note.origin(), "does-not-fit",
                "expected room for the local note on the panel of '"
                + note.note().entry() + "' beside all that it says, found none; the note stands on the office's "
                + "own panel", "shorten the note");
    }
}
