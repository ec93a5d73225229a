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

    /** What a zip says of a file, before it and once more at its end, with a name as long as those of packs. */
    private static final int MOST_ABOUT_A_FILE = 160;

    private PackZip() {
    }

    /** @param folder the folder that they are unpacked into */
    public static byte[] of(String folder, SortedMap<String, byte[]> files) {
        // as large as it will be: grown step by step, a zip leaves several times its size behind
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(files.entrySet().stream()
                .mapToInt(file -> file.getValue().length + 2 * MOST_ABOUT_A_FILE).sum());
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
