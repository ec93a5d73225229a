package org.fieldfold.content;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import javax.imageio.ImageIO;

/** Images for tests: sound ones, and such as no program would write. */
final class Rasters {
    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};

    private Rasters() {
    }

    /** A sound picture as the JDK's own encoders write it. */
    static byte[] written(String format, int width, int height, int type) {
        try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            if (!ImageIO.write(new BufferedImage(width, height, type), format, out)) {
                throw new IllegalArgumentException(format + " of type " + type);
            }
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A PNG with a header and as many zero bytes of dots as belong to it. */
    static byte[] png(int width, int height, int depth, int colour, int interlace) {
        int channels = colour == 2 ? 3 : colour == 6 ? 4 : colour == 4 ? 2 : 1;
        return png(width, height, depth, colour, interlace,
                deflated((int) (height * (1 + ((long) width * depth * channels + 7) / 8))));
    }

    /** @param dots already deflated */
    static byte[] png(int width, int height, int depth, int colour, int interlace, byte[] dots) {
        return join(SIGNATURE, header(width, height, depth, colour, interlace), chunk("IDAT", dots),
                chunk("IEND", new byte[0]));
    }

    static byte[] header(int width, int height, int depth, int colour, int interlace) {
        return chunk("IHDR", join(number(width), number(height), new byte[] {(byte) depth, (byte) colour, 0, 0,
            (byte) interlace}));
    }

    static byte[] signature() {
        return SIGNATURE.clone();
    }

    static byte[] chunk(String name, byte[] content) {
        byte[] named = join(name.getBytes(StandardCharsets.US_ASCII), content);
        CRC32 sum = new CRC32();
        sum.update(named);
        return join(number(content.length), named, number((int) sum.getValue()));
    }

    static byte[] deflated(int zeros) {
        Deflater deflater = new Deflater();
        deflater.setInput(new byte[zeros]);
        deflater.finish();
        byte[] out = new byte[zeros / 500 + 100];
        int length = deflater.deflate(out);
        deflater.end();
        return java.util.Arrays.copyOf(out, length);
    }

    /** Two gigabytes of zeros: a flushed block of 16 MiB of them, as often as needed. */
    static byte[] bomb() {
        Deflater deflater = new Deflater();
        byte[] zeros = new byte[16 << 20];
        byte[] out = new byte[1 << 16];
        deflater.setInput(zeros);
        byte[] first = java.util.Arrays.copyOf(out, deflater.deflate(out, 0, out.length, Deflater.SYNC_FLUSH));
        deflater.setInput(zeros);
        byte[] next = java.util.Arrays.copyOf(out, deflater.deflate(out, 0, out.length, Deflater.SYNC_FLUSH));
        deflater.end();
        byte[][] all = new byte[128][];
        java.util.Arrays.fill(all, next);
        all[0] = first;
        return join(all);
    }

    static byte[] number(int value) {
        return new byte[] {(byte) (value >> 24), (byte) (value >> 16), (byte) (value >> 8), (byte) value};
    }

    static byte[] join(byte[]... parts) {
        try (ByteArrayOutputStream out = new ByteArrayOutputStream();
                DataOutputStream data = new DataOutputStream(out)) {
            for (byte[] part : parts) {
                data.write(part);
            }
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
