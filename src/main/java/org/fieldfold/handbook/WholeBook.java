package org.fieldfold.handbook;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * The pages of a book that stand in one file, in the bytes of that file as soon as they are written: as text, with
 * a copy for every step on its way, a book of thousands of pages would take several times the memory of its base.
 */
final class WholeBook {
    /** Where the pages stand in what is around them; text becomes markup in a way that never writes it. */
    private static final String PLACE = "<!--pages-->";
    /** Where the script stands; the head before it holds neither content's words nor a script. */
    private static final String SCRIPT = "<!--script-->";

    private final List<byte[]> pages = new ArrayList<>();

    void add(String page) {
        pages.add(bytes(page));
    }

    /** Marks the place of the pages in a body. */
    static void place(Markup body) {
        body.written(PLACE);
    }

    /** Stands for the script in the frame. */
    static String scriptPlace() {
        return SCRIPT;
    }

    /**
     * The file.
     *
     * @param around with the place of the pages in it, which is the last one that looks like it, and that of the
     *     script before it
     */
    byte[] in(String around, String script) {
        int at = around.lastIndexOf(PLACE);
        int code = around.lastIndexOf(SCRIPT, at);
        List<byte[]> parts = new ArrayList<>(List.of(bytes(around.substring(0, code)), bytes(script),
                bytes(around.substring(code + SCRIPT.length(), at))));
        parts.addAll(pages);
        parts.add(bytes(around.substring(at + PLACE.length())));
        int length = 0;
        for (byte[] part : parts) {
            length = Math.addExact(length, part.length);
        }
        byte[] whole = new byte[length];
        int end = 0;
        for (byte[] part : parts) {
            System.arraycopy(part, 0, whole, end, part.length);
            end += part.length;
        }
        return whole;
    }

    private static byte[] bytes(String text) {
        return text.replace("\r\n", "\n").getBytes(StandardCharsets.UTF_8);
    }
}
