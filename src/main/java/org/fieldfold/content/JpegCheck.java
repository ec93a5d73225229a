package org.fieldfold.content;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Iterator;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;

/**
 * Whether a JPEG is one whole picture in grey or in three colours, of a kind that every program reads (ITU-T
 * T.81; numbers of sections are of that).
 */
final class JpegCheck {
    private static final int MOST_SCANS = 100;
    /** Every so manieth dot is kept to see that all can be read. */
    private static final int APART = 16;

    private final byte[] bytes;
    private boolean framed;
    private int scans;

    private JpegCheck(byte[] jpeg) {
        this.bytes = jpeg;
    }

    /** What is wrong with it, as it follows 'found'; its header must say that it is of a handy size. */
    static Optional<String> problem(byte[] jpeg) {
        String problem = new JpegCheck(jpeg).segments();
        return problem.isEmpty() ? unreadable(jpeg) : Optional.of(problem);
    }

    /** Walks the segments (B.1.1); empty when nothing is wrong. */
    private String segments() {
        int at = 2;
        while (at + 3 < bytes.length) {
            int marker = unsigned(at + 1);
            if (unsigned(at) != 0xff) {
                return "one that is damaged";
            }
            if (marker == 0xff) {
                at++;
                continue;
            }
            if (marker == 0xd9) {
                break;
            }
            int length = unsigned(at + 2) << 8 | unsigned(at + 3);
            if (length < 2 || at + 2 + length > bytes.length) {
                return "one that is cut off";
            }
            String problem = isFrame(marker) ? frame(marker, at, length) : marker == 0xda ? scan() : "";
            if (!problem.isEmpty()) {
                return problem;
            }
            at += 2 + length;
            at = marker == 0xda ? behindScan(at) : at;
        }
        boolean ended = at + 1 < bytes.length && unsigned(at) == 0xff && unsigned(at + 1) == 0xd9;
        return ended && scans > 0 ? "" : "one that is cut off";
    }

    /** Table B.1. */
    private static boolean isFrame(int marker) {
        return marker >= 0xc0 && marker <= 0xcf && marker != 0xc4 && marker != 0xc8 && marker != 0xcc;
    }

    private String frame(int marker, int at, int length) {
        if (framed || marker > 0xc2 || length < 8) {
            return "one of a kind that few programs read";
        }
        framed = true;
        int colours = unsigned(at + 9);
        return unsigned(at + 4) != 8 ? "one of " + unsigned(at + 4) + " bits a colour"
                : colours == 1 || colours == 3 ? "" : "one of " + colours + " colours, as in CMYK";
    }

    private String scan() {
        scans++;
        return !framed ? "one that is damaged" : scans > MOST_SCANS ? "one of more than " + MOST_SCANS + " layers"
                : "";
    }

    /** Coded dots go on to the next marker that is neither a stuffed byte nor a restart (B.1.1.2). */
    private int behindScan(int from) {
        int at = from;
        while (at + 1 < bytes.length && (unsigned(at) != 0xff || unsigned(at + 1) == 0
                || unsigned(at + 1) >= 0xd0 && unsigned(at + 1) <= 0xd7)) {
            at++;
        }
        return at;
    }

    private int unsigned(int at) {
        return bytes[at] & 0xff;
    }

    /** Reads all of it and keeps few dots: only so it shows whether its tables can be followed. */
    private static Optional<String> unreadable(byte[] jpeg) {
        Iterator<ImageReader> readers = ImageIO.getImageReadersByFormatName("jpeg");
        ImageReader reader = readers.next();
        try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(jpeg))) {
            reader.setInput(in, true, true);
            ImageReadParam few = reader.getDefaultReadParam();
            few.setSourceSubsampling(APART, APART, 0, 0);
            reader.read(0, few);
            return Optional.empty();
        } catch (IOException | RuntimeException damaged) {
            return Optional.of("one that is damaged");
        } finally {
            reader.dispose();
        }
    }
}
