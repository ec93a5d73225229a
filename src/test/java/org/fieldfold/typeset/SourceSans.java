package org.fieldfold.typeset;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;

/** The real type, read by the Java runtime: another reader than the one that writes the PDF. */
final class SourceSans implements TypeMetrics {
    private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);
    private final Map<Face, Font> fonts = new EnumMap<>(Face.class);
    private final Map<Face, Map<Integer, Double>> advances = new EnumMap<>(Face.class);

    SourceSans() {
        for (Face face : Face.values()) {
            advances.put(face, new java.util.HashMap<>());
        }
        fonts.put(Face.REGULAR, font("Regular"));
        fonts.put(Face.BOLD, font("Bold"));
        fonts.put(Face.ITALIC, font("Italic"));
        fonts.put(Face.BOLD_ITALIC, font("BoldItalic"));
    }

    private static Font font(String name) {
        String path = "/fonts/ttf/SourceSansPro/SourceSansPro-" + name + ".ttf";
        try (InputStream in = SourceSans.class.getResourceAsStream(path)) {
            return Font.createFont(Font.TRUETYPE_FONT, in).deriveFont(1000f);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (FontFormatException e) {
            throw new IllegalStateException(e);
        }
    }

    GlyphVector glyphs(Face face, String text) {
        return fonts.get(face).createGlyphVector(EXACT, text);
    }

    @Override
    public double width(Face face, String text) {
        return text.codePoints().mapToDouble(code -> advances.get(face).computeIfAbsent(code, unseen ->
                (double) glyphs(face, Character.toString(code)).getGlyphMetrics(0).getAdvanceX())).sum();
    }

    @Override
    public boolean has(Face face, int codePoint) {
        return fonts.get(face).canDisplay(codePoint);
    }

    @Override
    public double capHeight(Face face) {
        return -glyphs(face, "H").getVisualBounds().getY();
    }
}
