package org.fieldfold.manuscript;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as they are printed: no needless decimals, a dash between the ends of a range. */
public final class Figures {
    private Figures() {
    }

    /** As few decimals as the number has, a point before them: 7.5, 12. */
    public static String plain(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }

    /** At most so many decimals, halves away from zero. */
    public static String rounded(double number, int decimals) {
        return plain(BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP).doubleValue());
    }

    /** One number where both ends are the same. */
    public static String range(double from, double to) {
        return from == to ? plain(from) : plain(from) + "–" + plain(to);
    }
}
