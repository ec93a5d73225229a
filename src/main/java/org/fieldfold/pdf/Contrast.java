package org.fieldfold.pdf;

import org.fieldfold.typeset.Mark;

/** How far two inks stand apart, from 1 (not at all) to 21 (black on white). */
public final class Contrast {
    private Contrast() {}

    /** Contrast ratio of WCAG 2.2, "contrast ratio"; not rounded, for 4.499 is less than 4.5. */
    public static double between(Mark.Ink one, Mark.Ink other) {
        double a = luminance(InkColour.of(one));
        double b = luminance(InkColour.of(other));
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    /** WCAG 2.2, "relative luminance". */
    private static double luminance(InkColour ink) {
        return 0.2126 * linear(ink.red()) + 0.7152 * linear(ink.green()) + 0.0722 * linear(ink.blue());
    }

    private static double linear(int level) {
        double c = level / 255.0;
        return c <= 0.04045 ? c / 12.92 : StrictMath.pow((c + 0.055) / 1.055, 2.4);
    }
}
