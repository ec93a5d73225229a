package org.fieldfold.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;

/**
 * A part of a PDF that is the same in every document: a font, a drawing, the colour profile. It is taken once
 * out of the document in which it was made, with its streams as they were compressed there, and copied into
 * any number of others, also at the same time.
 */
final class Frozen {
    /**
     * Array items or dictionary values are places in the list of parts, or values that stand for themselves.
     */
    private record Part(COSBase sample, List<COSName> keys, List<Object> values, byte[] data) {}

    private final List<Part> parts = new ArrayList<>();

    private Frozen() {}

    /** Takes {@code root} with everything that it refers to. */
    static Frozen of(COSBase root) throws IOException {
        Frozen frozen = new Frozen();
        frozen.take(root, new IdentityHashMap<>());
        return frozen;
    }

    private Object take(COSBase value, Map<COSBase, Integer> seen) throws IOException {
        COSBase base = value instanceof COSObject reference ? reference.getObject() : value;
        if (!(base instanceof COSDictionary) && !(base instanceof COSArray)) {
            return base;
        }
        Integer known = seen.get(base);
        if (known != null) {
            return known;
        }
        int place = parts.size();
        seen.put(base, place);
        parts.add(null);
        List<COSName> keys = new ArrayList<>();
        List<Object> values = new ArrayList<>();
        if (base instanceof COSArray array) {
            for (COSBase item : array) {
                values.add(take(item, seen));
            }
        } else {
            for (Map.Entry<COSName, COSBase> entry : ((COSDictionary) base).entrySet()) {
                if (!(base instanceof COSStream) || !entry.getKey().equals(COSName.LENGTH)) {
                    keys.add(entry.getKey());
                    values.add(take(entry.getValue(), seen));
                }
            }
        }
        parts.set(place, new Part(base, keys, values, data(base)));
        return place;
    }

    private static byte[] data(COSBase base) throws IOException {
        if (base instanceof StreamObject ready) {
            return ready.data();
        }
        if (base instanceof COSStream stream) {
            try (InputStream in = stream.createRawInputStream()) {
                return in.readAllBytes();
            }
        }
        return new byte[0];
    }

    /** A copy for one file, or for the part that several share. */
    COSBase copy() {
        COSBase[] copies = new COSBase[parts.size()];
        for (int i = 0; i < copies.length; i++) {
            Part part = parts.get(i);
            copies[i] = part.sample instanceof COSArray ? new COSArray()
                    : part.sample instanceof COSStream || part.sample instanceof StreamObject
                    ? new StreamObject(part.data)
                    : new COSDictionary();
            copies[i].setDirect(part.sample.isDirect());
        }
        for (int i = 0; i < copies.length; i++) {
            fill(copies[i], parts.get(i), copies);
        }
        return copies[0];
    }

    private static void fill(COSBase copy, Part part, COSBase[] copies) {
        for (int i = 0; i < part.values.size(); i++) {
            Object value = part.values.get(i);
            COSBase item = value instanceof Integer place ? copies[place] : (COSBase) value;
            if (copy instanceof COSArray array) {
                array.add(item);
            } else {
                ((COSDictionary) copy).setItem(part.keys.get(i), item);
            }
        }
    }
}
