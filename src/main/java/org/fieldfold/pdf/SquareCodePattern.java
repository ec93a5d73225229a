package org.fieldfold.pdf;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.ArrayList;
import java.util.List;

/**
 * The dark modules of a square code (ISO/IEC 18004, error correction level M: about 15 % of it may be
 * spoilt), as few boxes as come easily. Counted in modules from the upper left corner of the quiet zone.
 *
 * @param side modules along one side, with the quiet zone
 */
record SquareCodePattern(int side, List<Dark> boxes) {
    /** ISO/IEC 18004: four modules stay white all around. */
    static final int QUIET = 4;

    /** Dark modules that touch, as one box. */
    record Dark(int x, int y, int width, int height) {}

    static SquareCodePattern of(String address) {
        if (address.isEmpty() || !address.chars().allMatch(c -> c >= 0x20 && c < 0x7f)) {
            throw new IllegalArgumentException("expected an address in ASCII for a square code, found '"
                    + address + "'");
        }
        try {
            ByteMatrix modules = Encoder.encode(address, ErrorCorrectionLevel.M).getMatrix();
            return new SquareCodePattern(modules.getWidth() + 2 * QUIET, merge(modules));
        } catch (WriterException e) {
            throw new IllegalArgumentException("an address of " + address.length()
                    + " characters is too long for a" + " square code: " + address, e);
        }
    }

    /** Runs of a row, joined with an equal run of the row above. */
    private static List<Dark> merge(ByteMatrix modules) {
        List<Dark> done = new ArrayList<>();
        List<Dark> above = new ArrayList<>();
        for (int y = 0; y < modules.getHeight(); y++) {
            List<Dark> row = new ArrayList<>();
            for (int x = 0; x < modules.getWidth(); x++) {
                int from = x;
                while (x < modules.getWidth() && modules.get(x, y) == 1) {
                    x++;
                }
                if (x > from) {
                    row.add(joined(above, new Dark(from + QUIET, y + QUIET, x - from, 1)));
                }
            }
            done.addAll(above);
            above = row;
        }
        done.addAll(above);
        return done;
    }

    private static Dark joined(List<Dark> above, Dark run) {
        for (Dark other : above) {
            if (other.x == run.x && other.width == run.width) {
                above.remove(other);
                return new Dark(other.x, other.y, other.width, other.height + 1);
            }
        }
        return run;
    }
}
