package org.fieldfold.check;

import java.util.Locale;

/**
 * Contrast of two colours as WCAG 2.2 defines it (definitions 'relative luminance' and 'contrast ratio'):
 * (L1 + 0.05) / (L2 + 0.05), the lighter one above. The only place that knows the formula.
 */
public final class Contrast {
    private Contrast() {
    }

    /** Whether it is a colour as {@code #rrggbb}. */
    public static boolean isColour(String rgb) {
        return rgb.matches("#[0-9a-fA-F]{6}");
    }

    /** From 1 to 21; not rounded, as 6.999 fails 7. */
    public static double ratio(String one, String other) {
        double a = luminance(one);
        double b = luminance(other);
        return (StrictMath.max(a, b) + 0.05) / (StrictMath.min(a, b) + 0.05);
    }

    /**
     * What a copier without colour makes of it: 0.3 red + 0.59 green + 0.11 blue (ISO 32000-1, 10.3.2,
     * conversion from DeviceRGB to DeviceGray), as a colour.
     */
    public static String grey(String rgb) {
        double grey = 0.3 * part(rgb, 1) + 0.59 * part(rgb, 3) + 0.11 * part(rgb, 5);
        String level = String.format(Locale.ROOT, "%02x", Math.round(grey));
        return "#" + level + level + level;
    }

    private static int part(String rgb, int at) {
        return Integer.parseInt(rgb.substring(at, at + 2), 16);
    }

    private static double luminance(String rgb) {
        return 0.2126 * channel(rgb, 1) + 0.7152 * channel(rgb, 3) + 0.0722 * channel(rgb, 5);
    }

    private static double channel(String rgb, int at) {
        double c = part(rgb, at) / 255.0;
        return c <= 0.04045 ? c / 12.92 : StrictMath.pow((c + 0.055) / 1.055, 2.4);
    }
}
