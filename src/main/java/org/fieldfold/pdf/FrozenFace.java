package org.fieldfold.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Set;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.fieldfold.typeset.Face;

/**
 * A face cut down once to the characters of a publication, ready to be copied into documents.
 *
 * @param glyphs by code point, up to the highest; 0 where there is none
 */
record FrozenFace(Face face, Frozen font, int[] glyphs) {

    static FrozenFace cut(TypeFile file, Set<Integer> codePoints) {
        int[] kept = codePoints.stream().mapToInt(Integer::intValue).filter(c -> file.glyph(c) != 0).sorted()
                .toArray();
        int[] glyphs = new int[kept[kept.length - 1] + 1];
        try (PDDocument scratch = new PDDocument()) {
            PDType0Font font = PDType0Font.load(scratch, file.font(), true);
            for (int codePoint : kept) {
                font.addToSubset(codePoint);
                glyphs[codePoint] = file.glyph(codePoint);
            }
            font.subset();
            return new FrozenFace(file.face(), Frozen.of(font.getCOSObject()), glyphs);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The glyph to show for a character; a sheet with a character that it cannot show is not printed. */
    int glyph(int codePoint, String text) {
        if (codePoint >= glyphs.length || glyphs[codePoint] == 0) {
            throw new IllegalArgumentException(String.format(Locale.ROOT,
                    "no glyph for U+%04X '%s' in the %s face, in"
                    + " \"%s\"; it must be in the type and among the characters that the press"
                    + " was frozen for",
                    codePoint, Character.toString(codePoint), face, text));
        }
        return glyphs[codePoint];
    }
}
