package org.fieldfold.check;

/**
 * Contrast of two colours as WCAG 2.2 defines it (definitions 'relative luminance' and 'contrast ratio'):
 * (L1 + 0.05) / (L2 + 0.05), the lighter one above.
 */
final class Contrast {
    private Contrast() {
    }

    static boolean isColour(String rgb) {
        return rgb.matches("#[0-9a-fA-F]{6}");
    }

    /** From 1 to 21; not rounded, as 6.999 fails 7. */
    static double ratio(String one, String other) {
        double a = luminance(one);
        double b = luminance(other);
        return (StrictMath.max(a, b) + 0.05) / (StrictMath.min(a, b) + 0.05);
    }

    private static double luminance(String rgb) {
        return 0.2126 * channel(rgb, 1) + 0.7152 * channel(rgb, 3) + 0.0722 * channel(rgb, 5);
    }

    private static double channel(String rgb, int at) {
        double c = Integer.parseInt(rgb.substring(at, at + 2), 16) / 255.0;
        return c <= 0.04045 ? c / 12.92 : StrictMath.pow((c + 0.055) / 1.055, 2.4);
    }
}
