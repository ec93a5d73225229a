package org.fieldfold.check;

import java.util.Optional;

/** Width and height of a PNG or JPEG in dots, read from its first bytes without decoding it. */
record RasterSize(int width, int height) {
    static Optional<RasterSize> of(byte[] bytes) {
        if (bytes.length > 24 && bytes[1] == 'P' && bytes[2] == 'N' && bytes[3] == 'G') {
            return Optional.of(new RasterSize(number(bytes, 16, 4), number(bytes, 20, 4)));
        }
        return bytes.length > 4 && (bytes[0] & 0xff) == 0xff && (bytes[1] & 0xff) == 0xd8 ? jpeg(bytes)
                : Optional.empty();
    }

    /**
     * ITU-T T.81, B.2.2: height and width stand in the frame header, which follows a marker from C0 to CF.
     */
    private static Optional<RasterSize> jpeg(byte[] bytes) {
        int at = 2;
        while (at + 9 < bytes.length && (bytes[at] & 0xff) == 0xff) {
            int marker = bytes[at + 1] & 0xff;
            boolean frame = marker >= 0xc0 && marker <= 0xcf && marker != 0xc4 && marker != 0xc8
                    && marker != 0xcc;
            if (frame) {
                return Optional.of(new RasterSize(number(bytes, at + 7, 2), number(bytes, at + 5, 2)));
            }
            at += 2 + number(bytes, at + 2, 2);
        }
        return Optional.empty();
    }

    private static int number(byte[] bytes, int from, int length) {
        int value = 0;
        for (int i = from; i < from + length; i++) {
            value = value << 8 | bytes[i] & 0xff;
        }
        return value;
    }
}
