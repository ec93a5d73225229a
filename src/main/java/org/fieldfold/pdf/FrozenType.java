package org.fieldfold.pdf;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.fieldfold.typeset.Face;

/** The four faces, cut down to the characters of one publication. */
record FrozenType(Map<Face, FrozenFace> faces, TypeCase metrics) {

    static FrozenType cut(TypeCase type, Set<Integer> codePoints) {
        Set<Integer> wanted = new TreeSet<>(codePoints);
        // a subset is never empty, and a line's end is always a space
        wanted.add((int) ' ');
        Map<Face, FrozenFace> faces = new EnumMap<>(Face.class);
        Arrays.stream(Face.values()).parallel().map(face -> FrozenFace.cut(type.file(face), wanted)).toList()
                .forEach(face -> faces.put(face.face(), face));
        return new FrozenType(faces, type);
    }

    FrozenFace face(Face face) {
        return faces.get(face);
    }
}
