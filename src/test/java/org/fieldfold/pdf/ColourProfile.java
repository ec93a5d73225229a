package org.fieldfold.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Makes the colour profile that every sheet declares: an ICC version 2 display profile of three primaries and
 * one tone curve. Layout of header and tags: ICC.1:2001-04, clauses 6.1 to 6.5. Primaries, white and curve:
 * IEC 61966-2-1:1999 (sRGB), adapted to D50 by the Bradford matrix.
 */
final class ColourProfile {
    static final Path RESOURCE = Path.of("src/main/resources/org/fieldfold/pdf/sheet-rgb.icc");
    private static final double[] D50 = {0.9642, 1.0, 0.8249};
    private static final double[][] BRADFORD = {
            {0.8951, 0.2664, -0.1614}, {-0.7502, 1.7135, 0.0367}, {0.0389, -0.0685, 1.0296}};
    private static final int CURVE_POINTS = 1024;

    private ColourProfile() {}

    /** Writes the resource anew. */
    public static void main(String[] args) throws IOException {
        Files.write(RESOURCE, bytes());
    }

    static byte[] bytes() {
        double[][] toXyz = adaptedPrimaries();
        byte[][] data = {
                description("sRGB primaries and curve, D50"), text("No rights reserved."), xyz(D50),
                xyz(column(toXyz, 0)), xyz(column(toXyz, 1)), xyz(column(toXyz, 2)), curve()};
        String[] names = {"desc", "cprt", "wtpt", "rXYZ", "gXYZ", "bXYZ", "rTRC", "gTRC", "bTRC"};
        int[] source = {0, 1, 2, 3, 4, 5, 6, 6, 6};
        int start = 128 + 4 + 12 * names.length;
        int[] offset = new int[data.length];
        int end = start;
        for (int i = 0; i < data.length; i++) {
            offset[i] = end;
            end += (data[i].length + 3) / 4 * 4;
        }
        ByteBuffer out = ByteBuffer.allocate(end);
        out.putInt(end).putInt(0).putInt(0x02400000);
        out.put(ascii("mntrRGB XYZ "));
        for (int part : new int[] {2026, 1, 1, 0, 0, 0}) {
            out.putShort((short) part);
        }
        out.put(ascii("acsp"));
        out.position(68);
        for (double value : D50) {
            out.putInt(fixed(value));
        }
        out.position(128);
        out.putInt(names.length);
        for (int i = 0; i < names.length; i++) {
            out.put(ascii(names[i])).putInt(offset[source[i]]).putInt(data[source[i]].length);
        }
        for (int i = 0; i < data.length; i++) {
            out.position(offset[i]);
            out.put(data[i]);
        }
        return out.array();
    }

    /** Linear RGB to XYZ under D50, columns red, green, blue. */
    static double[][] adaptedPrimaries() {
        double[] white = {0.3127 / 0.3290, 1, (1 - 0.3127 - 0.3290) / 0.3290};
        double[][] primaries = {{0.64, 0.30, 0.15}, {0.33, 0.60, 0.06}, {0.03, 0.10, 0.79}};
        double[] shares = times(inverse(primaries), white);
        double[] from = times(BRADFORD, white);
        double[] to = times(BRADFORD, D50);
        double[][] scale = {{to[0] / from[0], 0, 0}, {0, to[1] / from[1], 0}, {0, 0, to[2] / from[2]}};
        double[][] adapt = times(inverse(BRADFORD), times(scale, BRADFORD));
        double[][] rgb = new double[3][3];
        for (int row = 0; row < 3; row++) {
            for (int col = 0; col < 3; col++) {
                rgb[row][col] = primaries[row][col] * shares[col];
            }
        }
        return times(adapt, rgb);
    }

    private static byte[] curve() {
        ByteBuffer out = ByteBuffer.allocate(12 + 2 * CURVE_POINTS);
        out.put(ascii("curv")).putInt(0).putInt(CURVE_POINTS);
        for (int i = 0; i < CURVE_POINTS; i++) {
            double c = i / (CURVE_POINTS - 1.0);
            double linear = c <= 0.04045 ? c / 12.92 : StrictMath.pow((c + 0.055) / 1.055, 2.4);
            out.putShort((short) StrictMath.round(65535 * linear));
        }
        return out.array();
    }

    private static byte[] xyz(double[] value) {
        ByteBuffer out = ByteBuffer.allocate(20).put(ascii("XYZ ")).putInt(0);
        for (double v : value) {
            out.putInt(fixed(v));
        }
        return out.array();
    }

    private static byte[] text(String words) {
        return join(ascii("text"), new byte[4], ascii(words), new byte[1]);
    }

    private static byte[] description(String words) {
        byte[] name = ascii(words);
        byte[] length = ByteBuffer.allocate(4).putInt(name.length + 1).array();
        // no Unicode and no Macintosh form: code, count, and the 67 bytes of the latter stay zero
        return join(ascii("desc"), new byte[4], length, name, new byte[1 + 4 + 4 + 2 + 1 + 67]);
    }

    private static byte[] join(byte[]... parts) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        for (byte[] part : parts) {
            out.writeBytes(part);
        }
        return out.toByteArray();
    }

    private static int fixed(double value) {
        return (int) StrictMath.round(value * 65536);
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }

    private static double[] column(double[][] m, int col) {
        return new double[] {m[0][col], m[1][col], m[2][col]};
    }

    private static double[] times(double[][] m, double[] v) {
        double[] out = new double[3];
        for (int row = 0; row < 3; row++) {
            out[row] = m[row][0] * v[0] + m[row][1] * v[1] + m[row][2] * v[2];
        }
        return out;
    }

    private static double[][] times(double[][] a, double[][] b) {
        double[][] out = new double[3][3];
        for (int col = 0; col < 3; col++) {
            double[] v = times(a, column(b, col));
            for (int row = 0; row < 3; row++) {
                out[row][col] = v[row];
            }
        }
        return out;
    }

    private static double[][] inverse(double[][] m) {
        double[][] out = new double[3][3];
        double det = 0;
        for (int i = 0; i < 3; i++) {
            det += m[0][i] * (m[1][(i + 1) % 3] * m[2][(i + 2) % 3] - m[1][(i + 2) % 3] * m[2][(i + 1) % 3]);
        }
        for (int row = 0; row < 3; row++) {
            for (int col = 0; col < 3; col++) {
                int r1 = (col + 1) % 3;
                int r2 = (col + 2) % 3;
                int c1 = (row + 1) % 3;
                int c2 = (row + 2) % 3;
                out[row][col] = (m[r1][c1] * m[r2][c2] - m[r1][c2] * m[r2][c1]) / det;
            }
        }
        return out;
    }
}
