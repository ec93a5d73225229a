package org.fieldfold;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.fieldfold.entry.Guide;
import org.fieldfold.entry.Placed;
import org.fieldfold.fold.PanelSlot;
import org.fieldfold.manuscript.Manuscript;
import org.fieldfold.manuscript.OfficePanel;
import org.fieldfold.pdf.Press;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Span;
import org.fieldfold.typeset.SetGuide;
import org.fieldfold.typeset.Setter;

/**
 * Copies of a guide for offices that leave entries out or add notes: each set anew, as it shares no panels with
 * others. A note stands on the panel of its entry if that costs the entry nothing that it says; otherwise on
 * the office's own panel. Where the notes stand is remembered, and nothing else.
 */
final class ChangedCopies {
    private final Press press;
    private final Placed<Guide> guide;
    private final Function<OfficePanel, Manuscript> written;
    private final Map<String, OfficePanel> placed = new ConcurrentHashMap<>();

    ChangedCopies(Press press, Placed<Guide> guide, Function<OfficePanel, Manuscript> written) {
        this.press = press;
        this.guide = guide;
        this.written = written;
    }

    /** An office whose notes stand where they have room. */
    OfficePanel placed(OfficePanel office, List<PanelSlot> slots) {
        String id = office.office().orElseThrow().id();
        OfficePanel known = placed.get(id);
        if (known == null) {
            known = place(office, new Setter(press.metrics(), press.shapes()), slots);
            placed.putIfAbsent(id, known);
        }
        return known;
    }

    List<Finding> moved(OfficePanel office, List<PanelSlot> slots) {
        return placed(office, slots).moved().stream().map(ChangedCopies::moved).toList();
    }

    SetGuide saying(List<Finding> moved, SetGuide set) {
        List<Finding> findings = new ArrayList<>(set.findings());
        findings.addAll(moved);
        return new SetGuide(set.panels(), set.document(), set.typeSize(), set.fit(), findings);
    }

    private OfficePanel place(OfficePanel office, Setter setter, List<PanelSlot> slots) {
        List<OfficePanel.Note> all = office.notesIn(guide.value());
        List<OfficePanel.Note> onPanels = new ArrayList<>();
        List<OfficePanel.Note> moved = new ArrayList<>();
        if (!all.isEmpty()) {
            SetGuide without = setter.set(written.apply(office.noting(List.of(), List.of())), slots);
            for (OfficePanel.Note note : all) {
                onPanels.add(note);
                SetGuide with = setter.set(written.apply(office.noting(onPanels, List.of())), slots);
                if (!without.findings().containsAll(with.findings())
                        || !shortened(without).containsAll(shortened(with))) {
                    onPanels.remove(note);
                    moved.add(note);
                }
            }
        }
        return office.noting(onPanels, moved);
    }

    /** What is not said in full, or not at all, for want of room. */
    private static Set<Span> shortened(SetGuide set) {
        Set<Span> shortened = new HashSet<>();
        set.fit().forEach(panel -> panel.forms().stream().filter(SetGuide.Form::brief)
                .forEach(form -> shortened.add(form.origin())));
        return shortened;
    }

    private static Finding moved(OfficePanel.Note note) {
        return Finding.warning(note.origin(), "does-not-fit", "expected room for the local note on the panel of '"
                + note.note().entry() + "' beside all that it says, found none; the note stands on the office's "
                + "own panel", "shorten the note");
    }
}
