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

    private final List<byte[]> pages = new ArrayList<>();

    void add(String page) {
        pages.add(bytes(page));
    }

    /** Marks the place of the pages in a body. */
    static void place(Markup body) {
        body.written(PLACE);
    }

    /** @param around with the place of the pages in it, which is the last one that looks like it */
    byte[] in(String around) {
        int at = around.lastIndexOf(PLACE);
        byte[] before = bytes(around.substring(0, at));
        byte[] behind = bytes(around.substring(at + PLACE.length()));
        int length = before.length + behind.length;
        for (byte[] page : pages) {
            length = Math.addExact(length, page.length);
        }
        byte[] whole = new byte[length];
        System.arraycopy(before, 0, whole, 0, before.length);
        int end = before.length;
        for (byte[] page : pages) {
            System.arraycopy(page, 0, whole, end, page.length);
            end += page.length;
        }
        System.arraycopy(behind, 0, whole, end, behind.length);
        return whole;
    }

    private static byte[] bytes(String text) {
        return text.replace("\r\n", "\n").getBytes(StandardCharsets.UTF_8);
    }
}
