package org.fieldfold.pdf;

import java.io.IOException;
import java.util.Arrays;
import java.util.Set;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.fieldfold.typeset.Face;

/** A face cut down once to the characters of a publication, ready to be copied into documents. */
record FrozenFace(Face face, Frozen font, int[] codePoints, int[] glyphs) {

    static FrozenFace cut(TypeFile file, Set<Integer> codePoints) {
        int[] kept = codePoints.stream().mapToInt(Integer::intValue).filter(c -> file.glyph(c) != 0).sorted().toArray();
        try (PDDocument scratch = new PDDocument()) {
            PDType0Font font = PDType0Font.load(scratch, file.font(), true);
            for (int codePoint : kept) {
                font.addToSubset(codePoint);
            }
            font.subset();
            return new FrozenFace(file.face(), Frozen.of(font.getCOSObject()), kept,
                    Arrays.stream(kept).map(file::glyph).toArray());
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** The glyph to show for a character. */
    int glyph(int codePoint, String text) {
        int place = Arrays.binarySearch(codePoints, codePoint);
        if (place < 0) {
            throw new IllegalArgumentException(String.format(java.util.Locale.ROOT,
                    "no glyph for U+%04X '%s' in the %s face, in \"%s\"; it must be in the type and among the"
                    + " characters that the press was frozen for", codePoint, Character.toString(codePoint), face, text));
        }
        return glyphs[place];
    }
}
