package org.fieldfold.handbook;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/**
 * The container of an EPUB (EPUB 3.3, 4.3): a zip whose first entry says what it is. The same files, the same bytes.
 * It is put together from files that are packed already, so that one that has not changed is packed once.
 */
final class EpubZip {
    private static final String TYPE = "application/epub+zip";

    /** The date of every file, as the format counts it, so that no clock gets in: 1 February 1980. */
    private static final short ALWAYS = 2 << 5 | 1;
    private static final short UTF_8_NAMES = 1 << 11;
    private static final short STORED = 0;
    private static final short DEFLATED = 8;
    private static final short VERSION = 20;
    private static final int LOCAL = 0x04034b50;
    private static final int CENTRAL = 0x02014b50;
    private static final int END = 0x06054b50;

    private EpubZip() {
    }

    /**
     * A file as it lies in the container.
     *
     * @param crc CRC-32 of the file
     * @param size of the file, in bytes
     */
    record Packed(boolean deflated, int crc, int size, byte[] bytes) {
    }

    record Item(String path, Packed file) {
    }

    static Packed packed(byte[] content) {
        Deflater deflater = new Deflater(Deflater.DEFAULT_COMPRESSION, true);
        try {
            deflater.setInput(content);
            deflater.finish();
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            byte[] buffer = new byte[1 << 13];
            while (!deflater.finished()) {
                out.write(buffer, 0, deflater.deflate(buffer));
            }
            return new Packed(true, crc(content), content.length, out.toByteArray());
        } finally {
            deflater.end();
        }
    }

    private static int crc(byte[] content) {
        CRC32 sum = new CRC32();
        sum.update(content);
        return (int) sum.getValue();
    }

    static byte[] of(String packagePath, List<Item> files) {
        List<Item> all = new ArrayList<>();
        // readers find the type by its place in the file, so it is stored as it is
        byte[] type = TYPE.getBytes(StandardCharsets.US_ASCII);
        all.add(new Item("mimetype", new Packed(false, crc(type), type.length, type)));
        all.add(new Item("META-INF/container.xml", packed(container(packagePath)
                .getBytes(StandardCharsets.UTF_8))));
        all.addAll(files);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream directory = new ByteArrayOutputStream();
        for (Item item : all) {
            byte[] name = item.path().getBytes(StandardCharsets.UTF_8);
            directory.writeBytes(record(46 + name.length).putInt(CENTRAL).putShort(VERSION).putShort(VERSION)
                    .put(facts(item.file(), name)).putShort((short) 0).putShort((short) 0).putShort((short) 0)
                    .putInt(0).putInt(out.size()).put(name).array());
            out.writeBytes(record(30 + name.length).putInt(LOCAL).putShort(VERSION)
                    .put(facts(item.file(), name)).put(name).array());
            out.writeBytes(item.file().bytes());
        }
        int at = out.size();
        out.writeBytes(directory.toByteArray());
        out.writeBytes(record(22).putInt(END).putInt(0).putShort((short) all.size()).putShort((short) all.size())
                .putInt(directory.size()).putInt(at).putShort((short) 0).array());
        return out.toByteArray();
    }

    /** What both headers of a file say. */
    private static byte[] facts(Packed file, byte[] name) {
        return record(24).putShort(UTF_8_NAMES).putShort(file.deflated() ? DEFLATED : STORED)
                .putShort((short) 0).putShort(ALWAYS).putInt(file.crc()).putInt(file.bytes().length)
                .putInt(file.size()).putShort((short) name.length).putShort((short) 0).array();
    }

    private static ByteBuffer record(int length) {
        return ByteBuffer.allocate(length).order(ByteOrder.LITTLE_ENDIAN);
    }

    private static String container(String packagePath) {
        Markup out = new Markup();
        out.open("container", "version", "1.0", "xmlns", "urn:oasis:names:tc:opendocument:xmlns:container");
        out.open("rootfiles").empty("rootfile", "full-path", packagePath, "media-type",
                "application/oebps-package+xml").close().close().line();
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + out;
    }
}
