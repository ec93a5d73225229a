package org.fieldfold;

import java.util.List;
import java.util.Optional;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.PanelSlot;
import org.fieldfold.manuscript.Manuscript;
import org.fieldfold.manuscript.Phrases;
import org.fieldfold.pdf.Press;
import org.fieldfold.source.Span;
import org.fieldfold.typeset.GatheredGuide;
import org.fieldfold.typeset.Learnt;
import org.fieldfold.typeset.SetGuide;
import org.fieldfold.typeset.Setter;

/**
 * What is to be set, and how: with the type and the figures of a press, all that set panels depend on. It is
 * handed to the setter whole, and hashed whole, so that what is found under its hash was made of nothing
 * else.
 */
record Setting(Manuscript manuscript, Manner manner) {
    /** Onto what, and by which of the ways of setting. */
    sealed interface Manner {
        /**
         * On these panels.
         *
         * @param folio how a panel's number is said, where not as usual
         */
        record Panels(List<PanelSlot> slots, Optional<String> folio) implements Manner {
        }

        /** On as few of these pages as hold it. */
        record Pages(Imposition page, int most, String folio) implements Manner {
        }

        /**
         * The sheet that is printed before all others.
         *
         * @param own whether it is for the copier of one office
         */
        record First(Imposition sheet, String office, boolean own, Span origin) implements Manner {
        }
    }

    /** Set panels, and on how many sheets they lie. */
    record Set(SetGuide guide, int sheets) {
    }

    /**
     * Sets this, and others in the same manner; it remembers what copies have in common.
     *
     * @param learnt on this press
     */
    Setter setter(Press press, Learnt learnt) {
        Optional<String> folio = manner instanceof Manner.Panels panels ? panels.folio()
                : manner instanceof Manner.Pages pages ? Optional.of(pages.folio()) : Optional.empty();
        return folio.map(words -> new Setter(press.metrics(), press.shapes(), words, learnt))
                .orElseGet(() -> new Setter(press.metrics(), press.shapes(), learnt));
    }

    /** @param learnt from guides that may have something in common with this one */
    Set set(Press press, Learnt learnt) {
        return set(press, setter(press, learnt));
    }

    /** @param setter of this press, for this manner */
    Set set(Press press, Setter setter) {
        if (manner instanceof Manner.Panels panels) {
            return new Set(setter.set(manuscript, panels.slots()), 1);
        }
        if (manner instanceof Manner.Pages pages) {
            GatheredGuide gathered = setter.setOnFewest(manuscript, pages.page(), pages.most());
            return new Set(gathered.guide(), gathered.sheets().sheets());
        }
        Manner.First first = (Manner.First) manner;
        return new Set(setter.first(manuscript, Phrases.in(manuscript.language()), first.sheet(),
                first.office(),
                first.own(), first.origin()), 1);
    }
}
