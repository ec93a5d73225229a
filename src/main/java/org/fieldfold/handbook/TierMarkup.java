package org.fieldfold.handbook;

import java.util.Optional;
import org.fieldfold.manuscript.Block;

/**
 * Writes the tiers (the style sheet cuts their notches); in tier 3 the caution stands first, and the
 * materials behind a box to tick. The box is a check box and not a fold of HTML's own, because browsers do
 * not print what is folded up.
 */
final class TierMarkup {
    private final BlockMarkup blocks;
    private final Markup out;
    private final Optional<String> gate;

    /** @param gate what one ticks to see the materials; empty where nothing can be ticked */
    TierMarkup(BlockMarkup blocks, Markup out, Optional<String> gate) {
        this.blocks = blocks;
        this.out = out;
        this.gate = gate;
    }

    void write(Block.Tier tier) {
        out.open("div", "class", "tier tier" + tier.tier());
        blocks.paragraph("tierhead", tier.heading());
        if (!tier.after().isEmpty()) {
            blocks.paragraph("caution", tier.after());
        }
        if (!tier.measures().isEmpty()) {
            if (tier.tier() == 3) {
                gate.ifPresent(words -> out.open("label", "class", "gate")
                        .empty("input", "type", "checkbox").element("span", words).close());
            }
            out.open("ul", "class", "measures");
            tier.measures().forEach(this::measure);
            out.close();
        }
        out.close();
    }

    private void measure(Block.Measure measure) {
        out.open("li");
        if (measure.facts().isEmpty()) {
            blocks.runs(measure.runs());
        } else {
            blocks.paragraph("", measure.runs());
            blocks.facts(measure.facts());
        }
        out.close().line();
    }
}
