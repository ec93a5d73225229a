package org.fieldfold.content;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Set;
import java.util.zip.CRC32;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/**
 * Whether a PNG is one whole still picture of eight bits a colour at most, found without keeping a dot of it:
 * what it inflates to is counted and thrown away (PNG, third edition; numbers of sections are of that).
 */
final class PngCheck {
    private static final int MOST_BESIDE = 1 << 20;
    private static final Set<String> COMPRESSED = Set.of("iCCP", "zTXt", "iTXt");
    /** Section 8.1: first column and row of each pass, and its steps. */
    private static final int[][] PASSES = {{0, 0, 8, 8}, {4, 0, 8, 8}, {0, 4, 4, 8}, {2, 0, 4, 4}, {0, 2, 2, 4},
        {1, 0, 2, 2}, {0, 1, 1, 2}};

    private final ByteBuffer bytes;
    private final byte[] sink = new byte[1 << 14];
    private boolean palette;
    private int colour;

    private PngCheck(byte[] png) {
        this.bytes = ByteBuffer.wrap(png).position(8);
    }

    /** What is wrong with it, as it follows 'found'; its header must say that it is of a handy size. */
    static Optional<String> problem(byte[] png) {
        Inflater picture = new Inflater();
        try {
            return Optional.ofNullable(new PngCheck(png).chunks(picture)).filter(what -> !what.isEmpty());
        } catch (DataFormatException damaged) {
            return Optional.of("one whose dots are damaged");
        } finally {
            picture.end();
        }
    }

    /** Empty when nothing is wrong. */
    private String chunks(Inflater picture) throws DataFormatException {
        long expected = 0;
        long found = 0;
        while (bytes.remaining() >= 12) {
            int length = bytes.getInt();
            if (length < 0 || length > bytes.remaining() - 8) {
                return "one that is cut off";
            }
            byte[] chunk = new byte[4 + length];
            bytes.get(chunk);
            CRC32 sum = new CRC32();
            sum.update(chunk);
            if ((int) sum.getValue() != bytes.getInt()) {
                return "one with a part whose check sum does not fit";
            }
            String name = new String(chunk, 0, 4, StandardCharsets.ISO_8859_1);
            palette |= name.equals("PLTE");
            if (expected == 0) {
                String problem = name.equals("IHDR") && length == 13 ? header(chunk) : "one without a header";
                if (!problem.isEmpty()) {
                    return problem;
                }
                expected = expected(chunk);
            } else if (name.equals("IDAT")) {
                picture.setInput(chunk, 4, length);
                found += inflated(picture, expected - found + 1);
            } else if (name.equals("IEND")) {
                return found == expected && (colour != 3 || palette) ? ""
                        : "one that has not as many dots as its header says";
            } else if (name.equals("acTL")) {
                return "one that moves";
            } else if (COMPRESSED.contains(name) && growsBeside(name, chunk)) {
                return "one with a text or profile in it that grows beyond " + (MOST_BESIDE >> 20) + " MiB";
            }
        }
        return "one that is cut off";
    }

    /** Section 11.2.1, behind the four letters: width, height, depth, colour, compression, filter, interlace. */
    private String header(byte[] chunk) {
        int depth = chunk[12];
        colour = chunk[13];
        boolean known = chunk[14] == 0 && chunk[15] == 0 && (chunk[16] == 0 || chunk[16] == 1);
        boolean depths = colour == 0 || colour == 3
                ? depth == 1 || depth == 2 || depth == 4 || depth == 8 : depth == 8;
        return depth == 16 ? "one of 16 bits a colour"
                : known && depths && channels() > 0 ? "" : "one of an unknown kind";
    }

    private int channels() {
        return switch (colour) {
            case 0, 3 -> 1;
            case 2 -> 3;
            case 4 -> 2;
            case 6 -> 4;
            default -> 0;
        };
    }

    /** Bytes of all rows, each with the byte that says how it is filtered. */
    private long expected(byte[] chunk) {
        ByteBuffer header = ByteBuffer.wrap(chunk);
        long width = header.getInt(4);
        long height = header.getInt(8);
        long bits = (long) channels() * chunk[12];
        if (chunk[16] == 0) {
            return height * (1 + (width * bits + 7) / 8);
        }
        long all = 0;
        for (int[] pass : PASSES) {
            long columns = (width - pass[0] + pass[2] - 1) / pass[2];
            long rows = (height - pass[1] + pass[3] - 1) / pass[3];
            all += columns > 0 && rows > 0 ? rows * (1 + (columns * bits + 7) / 8) : 0;
        }
        return all;
    }

    /** How many bytes come out, counted no further than {@code most}. */
    private long inflated(Inflater inflater, long most) throws DataFormatException {
        long count = 0;
        while (count < most) {
            int some = inflater.inflate(sink);
            if (some == 0) {
                break;
            }
            count += some;
        }
        return count;
    }

    /** Sections 11.3.2.3 and 11.3.3: words that end in a zero byte, then what is compressed. */
    private boolean growsBeside(String name, byte[] chunk) {
        int at = 4;
        int words = name.equals("iTXt") ? 3 : 1;
        for (int i = 0; i < words; i++) {
            while (at < chunk.length && chunk[at] != 0) {
                at++;
            }
            at += i == 0 ? words == 1 ? 2 : 3 : 1;
        }
        Inflater inflater = new Inflater();
        try {
            inflater.setInput(chunk, Math.min(at, chunk.length), Math.max(0, chunk.length - at));
            return inflated(inflater, MOST_BESIDE + 1L) > MOST_BESIDE;
        } catch (DataFormatException plain) {
            return false;
        } finally {
            inflater.end();
        }
    }
}
