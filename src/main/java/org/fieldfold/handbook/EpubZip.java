package org.fieldfold.handbook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.List;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** The container of an EPUB (EPUB 3.3, 4.3): a zip whose first entry says what it is. The same files, the same bytes. */
final class EpubZip {
    private static final String TYPE = "application/epub+zip";

    /** No clock gets in. In the first minute of 1980 Java writes a field more, which the format forbids. */
    private static final LocalDateTime ALWAYS = LocalDateTime.of(1980, 2, 1, 0, 0);

    private EpubZip() {
    }

    static byte[] of(String packagePath, List<HandbookFile> files) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
            stored(zip, "mimetype", TYPE.getBytes(StandardCharsets.US_ASCII));
            put(zip, "META-INF/container.xml", container(packagePath).getBytes(StandardCharsets.UTF_8));
            for (HandbookFile file : files) {
                put(zip, file.path(), file.bytes());
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException("writing to memory can't fail", impossible);
        }
        return bytes.toByteArray();
    }

    private static String container(String packagePath) {
        Markup out = new Markup();
        out.open("container", "version", "1.0", "xmlns", "urn:oasis:names:tc:opendocument:xmlns:container");
        out.open("rootfiles").empty("rootfile", "full-path", packagePath, "media-type",
                "application/oebps-package+xml").close().close().line();
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + out;
    }

    private static void put(ZipOutputStream zip, String path, byte[] content) throws IOException {
        ZipEntry entry = new ZipEntry(path);
        entry.setTimeLocal(ALWAYS);
        zip.putNextEntry(entry);
        zip.write(content);
        zip.closeEntry();
    }

    /** Readers find the type by its place in the file, so it is stored as it is. */
    private static void stored(ZipOutputStream zip, String path, byte[] content) throws IOException {
        CRC32 sum = new CRC32();
        sum.update(content);
        ZipEntry entry = new ZipEntry(path);
        entry.setMethod(ZipEntry.STORED);
        entry.setSize(content.length);
        entry.setCrc(sum.getValue());
        entry.setTimeLocal(ALWAYS);
        zip.putNextEntry(entry);
        zip.write(content);
        zip.closeEntry();
    }
}
