package org.fieldfold.pdf;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import org.fieldfold.typeset.Face;
import org.fieldfold.typeset.TypeMetrics;

/** The four faces that ship, and how wide they run. */
final class TypeCase implements TypeMetrics {
    private final Map<Face, TypeFile> files = new EnumMap<>(Face.class);

    TypeCase() {
        Arrays.stream(Face.values()).parallel().map(TypeFile::load).toList()
                .forEach(file -> files.put(file.face(), file));
    }

    TypeFile file(Face face) {
        return files.get(face);
    }

    @Override
    public double width(Face face, String text) {
        TypeFile file = files.get(face);
        int width = 0;
        for (int i = 0; i < text.length(); ) {
            int codePoint = text.codePointAt(i);
            width += file.width(file.glyph(codePoint));
            i += Character.charCount(codePoint);
        }
        return width;
    }

    @Override
    public boolean has(Face face, int codePoint) {
        return files.get(face).glyph(codePoint) != 0;
    }

    @Override
    public double capHeight(Face face) {
        return files.get(face).capHeight();
    }
}
