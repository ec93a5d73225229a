package org.fieldfold.pdf;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.fieldfold.Outside;

/** A page as a printer would draw it: grey pixels at 600 dpi, made by a program from outside (pdftoppm). */
final class Raster {
    private static final double PER_MM = 600 / 25.4;
    private static final int DARK = 128;

    private final int width;
    private final int height;
    private final byte[] file;
    private final int offset;

    private Raster(int width, int height, byte[] file, int offset) {
        this.width = width;
        this.height = height;
        this.file = file;
        this.offset = offset;
    }

    static Raster of(byte[] pdf, int page, Path folder) throws IOException, InterruptedException {
        Outside.need("pdftoppm");
        Path sheet = folder.resolve("sheet.pdf");
        Files.write(sheet, pdf);
        Outside.Said said = Outside.run("pdftoppm", "-r", "600", "-gray", "-f", "" + (page + 1), "-l",
                "" + (page + 1), "-singlefile", sheet.toString(), folder.resolve("page").toString());
        if (said.status() != 0) {
            throw new AssertionError(said.text());
        }
        byte[] bytes = Files.readAllBytes(folder.resolve("page.pgm"));
        String[] head = new String(bytes, 0, 40, StandardCharsets.ISO_8859_1).split("\\s+");
        int width = Integer.parseInt(head[1]);
        int height = Integer.parseInt(head[2]);
        return new Raster(width, height, bytes, bytes.length - width * height);
    }

    double widthMm() {
        return width / PER_MM;
    }

    double heightMm() {
        return height / PER_MM;
    }

    /** Whether there is ink at a place, millimetres from the left and from the top. */
    boolean dark(double xMm, double yMm) {
        return pixel((int) Math.floor(xMm * PER_MM), (int) Math.floor(yMm * PER_MM));
    }

    private boolean pixel(int x, int y) {
        return x >= 0 && y >= 0 && x < width && y < height
                && (file[offset + y * width + x] & 0xff) < DARK;
    }

    /** A stretch of ink along a line, in millimetres. */
    record Ink(double from, double to) {
        double middle() {
            return (from + to) / 2;
        }

        double length() {
            return to - from;
        }
    }

    /**
     * Where ink is met going along a line across the page.
     *
     * @param level whether the line is level; its places are then counted from the left, otherwise from the
     *     top
     * @param low the edge of a strip in mm, counted across the line, from the top or the left
     * @param high the other edge: ink anywhere between them counts
     */
    List<Ink> along(boolean level, double low, double high) {
        int length = level ? width : height;
        int first = (int) Math.floor(low * PER_MM);
        int last = (int) Math.ceil(high * PER_MM);
        List<Ink> found = new ArrayList<>();
        int start = -1;
        for (int at = 0; at <= length; at++) {
            boolean ink = false;
            for (int across = first; at < length && !ink && across < last; across++) {
                ink = level ? pixel(at, across) : pixel(across, at);
            }
            if (ink && start < 0) {
                start = at;
            } else if (!ink && start >= 0) {
                found.add(new Ink(start / PER_MM, at / PER_MM));
                start = -1;
            }
        }
        return found;
    }
}
