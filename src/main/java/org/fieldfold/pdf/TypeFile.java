package org.fieldfold.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.fieldfold.typeset.Face;

/** One face as it comes from its font file: which glyph a character has, and how wide it is. */
final class TypeFile {
    private static final String FOLDER = "/fonts/ttf/SourceSansPro/SourceSansPro-";

    private final Face face;
    private final TrueTypeFont font;
    private final CmapLookup glyphs;
    private final int[] widths;
    private final double capHeight;

    private TypeFile(Face face, TrueTypeFont font) throws IOException {
        this.face = face;
        this.font = font;
        // no substitutions: one character, one glyph, so that what is read aloud is what is seen
        font.setEnableGsub(false);
        this.glyphs = font.getUnicodeCmapLookup(true);
        double thousandths = 1000.0 / font.getUnitsPerEm();
        this.widths = new int[font.getNumberOfGlyphs()];
        for (int glyph = 0; glyph < widths.length; glyph++) {
            widths[glyph] = (int) Math.round(font.getAdvanceWidth(glyph) * thousandths);
        }
        this.capHeight = font.getOS2Windows().getCapHeight() * thousandths;
    }

    static TypeFile load(Face face) {
        try {
            return new TypeFile(face, new TTFParser().parse(new RandomAccessReadBuffer(bytes(face))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The font file itself. */
    static byte[] bytes(Face face) {
        String name = switch (face) {
            case REGULAR -> "Regular";
            case BOLD -> "Bold";
            case ITALIC -> "Italic";
            case BOLD_ITALIC -> "BoldItalic";
        };
        try (InputStream in = TypeFile.class.getResourceAsStream(FOLDER + name + ".ttf")) {
            if (in == null) {
                throw new IllegalStateException("the font file " + FOLDER + name + ".ttf is missing");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Face face() {
        return face;
    }

    TrueTypeFont font() {
        return font;
    }

    /** The glyph of a character; 0 where there is none. */
    int glyph(int codePoint) {
        return glyphs.getGlyphId(codePoint);
    }

    /** Width in thousandths of the type size. */
    int width(int glyph) {
        return widths[glyph];
    }

    double capHeight() {
        return capHeight;
    }
}
