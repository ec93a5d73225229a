package org.fieldfold.pdf;

import java.util.Optional;

/** Lengths to hold a printed sheet, or a beetle, against. */
final class Scales {
    private static final double MM = 72 / 25.4;
    private static final double INCH = 72;
    static final double BAR = 100 * MM;
    private static final double BAR_HEIGHT = 3.4;
    /** 200 mm: longer than anything that is found on a leaf. */
    private static final double LONGEST = 200.5 * MM;
    private static final double SHORT = 1.3;
    private static final double MIDDLE = 2.6;
    private static final double LONG = Band.INNER - Band.OUTER;

    private Scales() {}

    /** A bar of 100 mm with a tick at each ten. */
    static void bar(Band band, double from) {
        band.stroke(from, Band.OUTER, from + BAR, Band.OUTER);
        for (int tick = 0; tick <= 10; tick++) {
            double height = tick % 10 == 0 ? LONG : tick == 5 ? BAR_HEIGHT : MIDDLE;
            band.stroke(from + tick * BAR / 10, Band.OUTER, from + tick * BAR / 10, Band.OUTER + height);
        }
        band.take(from, from + BAR);
    }

    /** A ruler in millimetres, as many centimetres long as there is room for. */
    static void millimetres(Band band) {
        ruler(band, MM, 10, 5, 10, "mm");
    }

    /** A ruler in inches and eighths. */
    static void inches(Band band) {
        ruler(band, INCH / 8, 8, 4, 1, "inch");
    }

    /**
     * A ruler with its unit behind it.
     *
     * @param whole after how many ticks there is a number
     * @param worth of one such step in the unit
     */
    private static void ruler(Band band, double step, int whole, int half, int worth, String unit) {
        double room = band.longestRoom();
        double words = Band.GAP + band.width(unit);
        int steps = (int) Math.floor(Math.min(LONGEST, room - words) / (whole * step));
        Optional<Double> start = band.room(room, 0, false);
        if (steps < 2 || start.isEmpty()) {
            return;
        }
        double from = start.get();
        int ticks = steps * whole;
        band.stroke(from, Band.OUTER, from + ticks * step, Band.OUTER);
        for (int tick = 0; tick <= ticks; tick++) {
            double at = from + tick * step;
            double height = tick % whole == 0 ? LONG : tick % half == 0 ? MIDDLE : SHORT;
            band.stroke(at, Band.OUTER, at, Band.OUTER + height);
            if (tick % whole == 0 && tick > 0 && tick < ticks) {
                band.number(at + 0.9, Integer.toString(tick / whole * worth));
            }
        }
        band.take(from, from + ticks * step);
        band.write(unit, from + ticks * step);
    }
}
