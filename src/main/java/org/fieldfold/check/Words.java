package org.fieldfold.check;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import org.fieldfold.entry.SizeRange;
import org.fieldfold.entry.StageWindow;

/** Values as a message shows them: the way they are written in the files. */
final class Words {
    private static final int SHOWN = 80;

    private Words() {
    }

    /** The beginning of a text, on one line: as much as is needed to know it again. */
    static String cut(String text) {
        String line = text.strip().replaceAll("\\s+", " ");
        return line.codePointCount(0, line.length()) <= SHOWN ? line
                : line.substring(0, line.offsetByCodePoints(0, SHOWN - 1)) + "…";
    }

    static String of(double number) {
        return Double.isFinite(number) ? BigDecimal.valueOf(number).stripTrailingZeros().toPlainString()
                : String.valueOf(number);
    }

    /** To two decimals, for what is worked out. */
    static String rounded(double number) {
        return of(BigDecimal.valueOf(number).setScale(2, RoundingMode.HALF_UP).doubleValue());
    }

    static String of(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static String of(SizeRange size) {
        return of(size.from()) + " to " + of(size.to()) + " mm";
    }

    static String of(StageWindow window) {
        return window.from() + "-" + window.to();
    }
}
