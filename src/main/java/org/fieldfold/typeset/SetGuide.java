package org.fieldfold.typeset;

import java.util.List;
import java.util.Optional;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Span;

/**
 * A guide, set: its panels in reading order, the logical tree that they share, how they fit, and what is to
 * be said where they do not.
 *
 * @param typeSize body type in points
 * @param shared those of the panels that other copies have as well
 */
public record SetGuide(List<SetPanel> panels, Tag document, double typeSize, List<PanelFit> fit,
        List<Finding> findings, SharedPanels shared) {
    /** The rule of findings about what does not fit. */
    static final String OVER = "does-not-fit";

    public SetGuide {
        panels = List.copyOf(panels);
        fit = List.copyOf(fit);
        findings = List.copyOf(findings);
    }

    /** A guide that shares nothing with other copies. */
    public SetGuide(List<SetPanel> panels, Tag document, double typeSize, List<PanelFit> fit,
            List<Finding> findings) {
        this(panels, document, typeSize, fit, findings, SharedPanels.NONE);
    }

    /**
     * How full one panel is.
     *
     * @param section id of the section on it
     * @param used height taken, as a share of the live height: 1 is full, more is what does not fit as well
     * @param leading from line to line, in points
     * @param forms of the blocks on it that have a short form
     * @param over what should stand on it and does not fit
     */
    public record PanelFit(int reading, String section, double used, double typeSize, double leading,
            List<Form> forms, Optional<Over> over) {
        public PanelFit {
            forms = List.copyOf(forms);
        }

        /** How many blocks were set in their short form. */
        public int brief() {
            return (int) forms.stream().filter(Form::brief).count();
        }
    }

    /** Which form of a block was taken. */
    public record Form(Span origin, boolean brief) {}

    /**
     * What does not fit.
     *
     * @param section id of the section that is too long
     * @param origin of its first block that does not fit whole
     * @param lines by how many it is too long
     */
    public record Over(String section, Span origin, int lines) {}
}
