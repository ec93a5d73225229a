package org.fieldfold.manuscript;

import java.math.BigDecimal;
import java.math.MathContext;
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

    /** How many decimals a number is written with. */
    static int decimals(double number) {
        return Math.max(0, BigDecimal.valueOf(number).stripTrailingZeros().scale());
    }

    /**
     * A converted number with as many significant digits as the one that it comes from, and one more where its first
     * digit is the smaller (NIST SP 811, 2008, section B.7.1).
     */
    static String converted(double from, double to) {
        BigDecimal own = BigDecimal.valueOf(from).stripTrailingZeros();
        BigDecimal exact = BigDecimal.valueOf(to);
        boolean smaller = first(exact) < first(own);
        return exact.round(new MathContext(own.precision() + (smaller ? 1 : 0), RoundingMode.HALF_UP))
                .stripTrailingZeros().toPlainString();
    }

    private static int first(BigDecimal number) {
        return number.unscaledValue().abs().toString().charAt(0) - '0';
    }
}
