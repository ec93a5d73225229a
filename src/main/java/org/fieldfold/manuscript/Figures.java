package org.fieldfold.manuscript;

import java.math.BigDecimal;

/** Numbers as they are printed: no needless decimals, a dash between the ends of a range. */
final class Figures {
    private Figures() {
    }

    static String plain(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }

    static String range(double from, double to) {
        return from == to ? plain(from) : plain(from) + "–" + plain(to);
    }
}
