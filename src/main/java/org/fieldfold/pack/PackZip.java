package org.fieldfold.pack;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.SortedMap;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * A pack in one file, to be sent. Its files are stored as they are: sheets are packed already, and no two
 * versions of a packing library need agree for the same files to give the same bytes.
 */
public final class PackZip {
    /** No clock gets in. */
    private static final LocalDateTime ALWAYS = LocalDateTime.of(1980, 2, 1, 0, 0);

    private PackZip() {
    }

    /** @param folder the folder that they are unpacked into */
    public static byte[] of(String folder, SortedMap<String, byte[]> files) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
            zip.setMethod(ZipOutputStream.STORED);
            for (var file : files.entrySet()) {
                ZipEntry entry = new ZipEntry(folder + "/" + file.getKey());
                CRC32 sum = new CRC32();
                sum.update(file.getValue());
                entry.setSize(file.getValue().length);
                entry.setCrc(sum.getValue());
                entry.setTimeLocal(ALWAYS);
                zip.putNextEntry(entry);
                zip.write(file.getValue());
                zip.closeEntry();
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException("writing to memory can't fail", impossible);
        }
        return bytes.toByteArray();
    }
}
