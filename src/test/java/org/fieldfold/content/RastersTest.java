package org.fieldfold.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.fieldfold.source.Finding;
import org.junit.jupiter.api.Test;

/** Images that are odd, damaged or made to exhaust give a finding; those that programs write do not. */
class RastersTest {
    private static String found(FileKind kind, byte[] bytes) {
        List<Finding> findings = FileReading.of(new ContentFile("content/figures/x", Path.of("x"), kind, "x"), bytes)
                .findings();
        assertTrue(findings.stream().allMatch(finding -> finding.rule().equals("not-an-image")), findings.toString());
        return findings.stream().map(Finding::message).map(message -> message.substring(message.indexOf(
                "found ") + 6)).reduce("", (a, b) -> a + b);
    }

    private static String png(byte[] bytes) {
        return found(FileKind.RASTER, bytes);
    }

    private static String jpeg(byte[] bytes) {
        return found(FileKind.PHOTOGRAPH, bytes);
    }

    @Test
    void whatProgramsWriteIsTaken() {
        for (int type : List.of(BufferedImage.TYPE_INT_RGB, BufferedImage.TYPE_INT_ARGB,
                BufferedImage.TYPE_BYTE_GRAY, BufferedImage.TYPE_BYTE_BINARY, BufferedImage.TYPE_BYTE_INDEXED)) {
            assertEquals("", png(Rasters.written("png", 301, 97, type)), "type " + type);
        }
        for (int type : List.of(BufferedImage.TYPE_INT_RGB, BufferedImage.TYPE_BYTE_GRAY)) {
            assertEquals("", jpeg(Rasters.written("jpg", 301, 97, type)), "type " + type);
        }
        for (int depth : List.of(1, 2, 4, 8)) {
            assertEquals("", png(Rasters.png(33, 7, depth, 0, 0)));
        }
        // Adam7 of 33 by 7 at 8 bits: rows and columns of the passes, counted by hand
        int dots = 1 * (1 + 5) + 1 * (1 + 4) + 1 * (1 + 9) + 2 * (1 + 8) + 2 * (1 + 17) + 4 * (1 + 16) + 3 * (1 + 33);
        assertEquals("", png(Rasters.png(33, 7, 8, 0, 1, Rasters.deflated(dots))));
    }

    @Test
    void bombsAreRefusedFromTheHeaderOrByCounting() {
        assertEquals("50000 by 50000", png(Rasters.png(50_000, 50_000, 8, 2, 0, new byte[10])));
        assertEquals("4294967295 by 4294967295", png(Rasters.png(-1, -1, 8, 2, 0, new byte[10])));
        assertEquals("0 by 5", png(Rasters.png(0, 5, 8, 2, 0, new byte[10])));
        assertEquals("one that has not as many dots as its header says",
                png(Rasters.png(10, 10, 8, 0, 0, Rasters.bomb())));
        byte[] profile = Rasters.join(new byte[] {'a', 0, 0}, Rasters.bomb());
        assertEquals("one with a text or profile in it that grows beyond 1 MiB", png(with("iCCP", profile)));
        assertEquals("one with a text or profile in it that grows beyond 1 MiB", png(with("zTXt", profile)));
        assertEquals("one with a text or profile in it that grows beyond 1 MiB", png(with("iTXt",
                Rasters.join(new byte[] {'a', 0, 1, 0, 'e', 'n', 0, 'b', 0}, Rasters.bomb()))));
    }

    private static byte[] with(String chunk, byte[] content) {
        return Rasters.join(Rasters.signature(), Rasters.header(4, 1, 8, 0, 0), Rasters.chunk(chunk, content),
                Rasters.chunk("IDAT", Rasters.deflated(5)), Rasters.chunk("IEND", new byte[0]));
    }

    @Test
    void oddOnesAreSaid() {
        assertEquals("one of 16 bits a colour", png(Rasters.png(4, 4, 16, 2, 0)));
        assertEquals("one that moves", png(with("acTL", new byte[8])));
        assertEquals("one of an unknown kind", png(Rasters.png(4, 4, 8, 5, 0)));
        assertEquals("one that has not as many dots as its header says", png(Rasters.png(4, 4, 8, 3, 0)));
        assertEquals("", png(with("tEXt", "a\0b".getBytes(StandardCharsets.US_ASCII))));
        assertEquals("one of the other kind", png(Rasters.written("jpg", 4, 4, BufferedImage.TYPE_INT_RGB)));
        assertEquals("one of the other kind", jpeg(Rasters.written("png", 4, 4, BufferedImage.TYPE_INT_RGB)));
        byte[] sound = Rasters.written("jpg", 40, 30, BufferedImage.TYPE_INT_RGB);
        int frame = frame(sound);
        assertEquals("one of 4 colours, as in CMYK", jpeg(changed(sound, frame + 9, 4)));
        assertEquals("one of 12 bits a colour", jpeg(changed(sound, frame + 4, 12)));
        assertEquals("one of a kind that few programs read", jpeg(changed(sound, frame + 1, 0xc9)));
        byte[] scan = Arrays.copyOfRange(sound, scan(sound), sound.length - 2);
        byte[][] layers = new byte[102][];
        Arrays.fill(layers, scan);
        layers[0] = Arrays.copyOf(sound, sound.length - 2);
        assertEquals("one of more than 100 layers", jpeg(Rasters.join(layers)));
    }

    private static byte[] changed(byte[] bytes, int at, int value) {
        byte[] other = bytes.clone();
        other[at] = (byte) value;
        return other;
    }

    private static int frame(byte[] jpeg) {
        return marker(jpeg, 0xc0);
    }

    private static int scan(byte[] jpeg) {
        return marker(jpeg, 0xda);
    }

    private static int marker(byte[] jpeg, int marker) {
        int at = 0;
        while ((jpeg[at] & 0xff) != 0xff || (jpeg[at + 1] & 0xff) != marker) {
            at++;
        }
        return at;
    }

    @Test
    void cutOrChangedAnywhereItIsAFindingOrAPicture() {
        byte[] png = Rasters.written("png", 30, 20, BufferedImage.TYPE_INT_RGB);
        byte[] jpeg = Rasters.written("jpg", 30, 20, BufferedImage.TYPE_INT_RGB);
        for (int at = 0; at < png.length; at++) {
            assertTrue(!png(Arrays.copyOf(png, at)).isEmpty(), "cut at " + at);
            assertTrue(!png(changed(png, at, png[at] ^ 0x55)).isEmpty(), "changed at " + at);
        }
        for (int at = 0; at < jpeg.length; at++) {
            assertTrue(!jpeg(Arrays.copyOf(jpeg, at)).isEmpty(), "cut at " + at);
            jpeg(changed(jpeg, at, jpeg[at] ^ 0x55));
        }
    }
}
