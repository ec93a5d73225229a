package org.fieldfold.typeset;

import java.util.List;
import java.util.Optional;
import org.fieldfold.manuscript.Manuscript;
import org.fieldfold.prose.Run;
import org.fieldfold.source.Span;

/**
 * Sets the foot of a panel: a rule, the caution on the left, the year and the panel's number on the right,
 * their last lines on one baseline. On a proof the word for it stands before the year in white on black.
 */
final class FootSetting {
    private static final double RULE = 0.6;

    private final Stick stick;
    private final SetText caution;
    private final SetText stamp;
    private final Optional<SetText> proof;

    FootSetting(Manuscript manuscript, int reading, Stick stick, Span origin) {
        this.stick = stick;
        double size = stick.leading().small();
        this.stamp = stick.line(List.of(Run.strong(manuscript.year() + " · " + stick.folio().of(reading))),
                Voice.TEXT, size, origin);
        this.proof = manuscript.proof().map(word -> stick.line(List.of(Run.strong(word)), Voice.TEXT, size,
                origin));
        double taken = stamp.width() + 1.2 * size + proof.map(word -> word.width() + 1.4 * size).orElse(0.0);
        this.caution = stick.text(manuscript.foot(), Voice.TEXT, size, stick.measure() - taken, origin);
    }

    /** Half lines from the white above the rule to the last line. */
    int units() {
        return 2 + 2 * Math.max(1, caution.count());
    }

    /** @param read whether the caution is read aloud here, or passed over as a repetition */
    void draw(Pen pen, double bottom, boolean read) {
        Leading leading = stick.leading();
        double top = bottom - units() * leading.half();
        double right = pen.left() + stick.measure();
        double rule = top + 1.5 * leading.half();
        pen.line(pen.left(), rule, right, rule, RULE);
        TagSlot tag = TagSlot.inSection(Tag.Role.PARAGRAPH);
        for (int i = 0; i < caution.count(); i++) {
            double baseline = leading.baseline(top, 2 + 2 * (i + 1));
            if (read) {
                caution.draw(pen, i, pen.left(), baseline, Mark.Ink.BLACK, tag);
            } else {
                caution.drawSilent(pen, i, pen.left(), baseline, Mark.Ink.BLACK);
            }
        }
        double baseline = leading.baseline(bottom, 0);
        stamp.drawSilent(pen, 0, right - stamp.width(), baseline, Mark.Ink.BLACK);
        proof.ifPresent(word -> {
            double size = word.size();
            double x = right - stamp.width() - 0.9 * size - word.width();
            pen.fill(x - 0.3 * size, baseline - 0.9 * size, word.width() + 0.6 * size, 1.15 * size,
                    Mark.Ink.BLACK);
            word.drawSilent(pen, 0, x, baseline, Mark.Ink.WHITE);
        });
    }
}
