package org.fieldfold.pdf;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.fieldfold.typeset.Face;

/**
 * What the pages of one sheet draw with: the faces and figures in use, by the names they have on the pages.
 */
final class Resources {
    private final Set<Face> faces = new TreeSet<>();
    private final Map<String, Integer> figures = new LinkedHashMap<>();

    /** Takes over names that were given before. */
    void take(Resources before) {
        faces.addAll(before.faces);
        figures.putAll(before.figures);
    }

    String font(Face face) {
        faces.add(face);
        return "/F" + (face.ordinal() + 1);
    }

    String figure(String id) {
        return "/X" + figures.computeIfAbsent(id, unseen -> figures.size() + 1);
    }

    /** Whether there is nothing in use but what is in these. */
    boolean isAmong(Set<String> names) {
        return faces.stream().allMatch(face -> names.contains(font(face)))
                && figures.keySet().stream().allMatch(id -> names.contains(figure(id)));
    }

    /** @param made fonts and drawings of this file by name; what is not among them is added */
    COSDictionary toDictionary(FrozenType type, ArtRoom art, Map<String, COSBase> made) {
        COSDictionary fonts = new COSDictionary();
        for (Face face : faces) {
            fonts.setItem(name(font(face)), made.computeIfAbsent(font(face),
                    name -> type.face(face).font().copy()));
        }
        COSDictionary drawings = new COSDictionary();
        for (String id : figures.keySet()) {
            drawings.setItem(name(figure(id)), made.computeIfAbsent(figure(id),
                    name -> art.artwork(id).copy()));
        }
        COSDictionary resources = new COSDictionary();
        resources.setItem(COSName.FONT, fonts);
        if (!figures.isEmpty()) {
            resources.setItem(COSName.XOBJECT, drawings);
        }
        return resources;
    }

    private static COSName name(String operand) {
        return COSName.getPDFName(operand.substring(1));
    }
}
