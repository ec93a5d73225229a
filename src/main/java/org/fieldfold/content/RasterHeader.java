package org.fieldfold.content;

import java.util.Optional;

/**
 * Width and height from the first bytes of a PNG or JPEG, so that an image is known to be one, and not a
 * monster.
 */
record RasterHeader(long width, long height) {
    private static final long MOST_PIXELS = 40_000_000;
    /** PNG, third edition, section 5.2. */
    private static final int[] PNG_SIGNATURE = {0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};

    static Optional<RasterHeader> of(byte[] bytes) {
        return isPng(bytes) ? png(bytes) : startsWith(bytes, new int[] {0xff, 0xd8})
                ? jpeg(bytes)
                : Optional.empty();
    }

    boolean isHandy() {
        return width > 0 && height > 0 && width <= MOST_PIXELS / height;
    }

    static boolean isPng(byte[] bytes) {
        return startsWith(bytes, PNG_SIGNATURE);
    }

    private static boolean startsWith(byte[] bytes, int[] signature) {
        if (bytes.length < signature.length) {
            return false;
        }
        for (int i = 0; i < signature.length; i++) {
            if (unsigned(bytes, i) != signature[i]) {
                return false;
            }
        }
        return true;
    }

    private static int unsigned(byte[] bytes, int at) {
        return bytes[at] & 0xff;
    }

    private static int twoBytes(byte[] bytes, int at) {
        return unsigned(bytes, at) << 8 | unsigned(bytes, at + 1);
    }

    private static long fourBytes(byte[] bytes, int at) {
        return (long) twoBytes(bytes, at) << 16 | twoBytes(bytes, at + 2);
    }

    /** The header chunk comes first: length, its name, width, height. */
    private static Optional<RasterHeader> png(byte[] bytes) {
        return bytes.length < 24 ? Optional.empty()
                : Optional.of(new RasterHeader(fourBytes(bytes, 16), fourBytes(bytes, 20)));
    }

    /** Walks the segments to the start of frame (ITU-T T.81, B.2.2). */
    private static Optional<RasterHeader> jpeg(byte[] bytes) {
        int at = 2;
        while (at + 9 < bytes.length && unsigned(bytes, at) == 0xff) {
            int marker = unsigned(bytes, at + 1);
            boolean frame = marker >= 0xc0 && marker <= 0xcf && marker != 0xc4 && marker != 0xc8
                    && marker != 0xcc;
            if (frame) {
                return Optional.of(new RasterHeader(twoBytes(bytes, at + 7), twoBytes(bytes, at + 5)));
            }
            at += marker == 0xff ? 1 : 2 + Math.max(2, twoBytes(bytes, at + 2));
        }
        return Optional.empty();
    }
}
