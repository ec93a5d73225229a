package org.fieldfold.typeset;

import java.util.List;
import org.fieldfold.source.Finding;

/**
 * A guide, set: its panels in reading order, the logical tree that they share, how they fit, and what is to
 * be said where they do not.
 *
 * @param typeSize body type in points
 */
public record SetGuide(List<SetPanel> panels, Tag document, double typeSize, List<PanelFit> fit,
        List<Finding> findings) {
    /** The rule of findings about what does not fit. */
    static final String OVER = "does-not-fit";

    public SetGuide {
        panels = List.copyOf(panels);
        fit = List.copyOf(fit);
        findings = List.copyOf(findings);
    }

    /** Whether something did not fit. */
    boolean isOver() {
        return findings.stream().anyMatch(finding -> finding.rule().equals(OVER));
    }

    /**
     * How full one panel is.
     *
     * @param section id of the section on it
     * @param used height taken, as a share of the live height from 0 to 1
     * @param brief how many blocks were set in their short form
     */
    public record PanelFit(int reading, String section, double used, double typeSize, int brief) {}
}
