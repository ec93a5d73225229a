package org.fieldfold.pdf;

import java.io.DataInputStream;
import java.io.DataOutputStream;
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
    private record Part(COSBase sample, List<COSName> keys, List<Object> values, byte[] data) {
        Kind kind() {
            return sample instanceof COSArray ? Kind.ARRAY
                    : sample instanceof COSStream || sample instanceof StreamObject ? Kind.STREAM : Kind.DICTIONARY;
        }
    }

    /** What a part is. */
    private enum Kind {
        ARRAY, STREAM, DICTIONARY;

        COSBase empty() {
            return this == ARRAY ? new COSArray() : this == STREAM ? new StreamObject(new byte[0])
                    : new COSDictionary();
        }
    }

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

    /** As bytes, for {@link #read}. */
    void write(DataOutputStream out) throws IOException {
        out.writeInt(parts.size());
        for (Part part : parts) {
            out.writeByte(part.kind().ordinal());
            out.writeBoolean(part.sample().isDirect());
            out.writeInt(part.values().size());
            for (int i = 0; i < part.values().size(); i++) {
                if (part.kind() != Kind.ARRAY) {
                    out.writeUTF(part.keys().get(i).getName());
                }
                FrozenValue.write(part.values().get(i), out);
            }
            out.writeInt(part.data().length);
            out.write(part.data());
        }
    }

    /** @throws IOException for bytes of another form */
    static Frozen read(DataInputStream in) throws IOException {
        Frozen frozen = new Frozen();
        for (int left = in.readInt(); left > 0; left--) {
            Kind kind = Kind.values()[in.readByte()];
            COSBase sample = kind.empty();
            sample.setDirect(in.readBoolean());
            List<COSName> keys = new ArrayList<>();
            List<Object> values = new ArrayList<>();
            for (int more = in.readInt(); more > 0; more--) {
                if (kind != Kind.ARRAY) {
                    keys.add(COSName.getPDFName(in.readUTF()));
                }
                values.add(FrozenValue.read(in));
            }
            frozen.parts.add(new Part(sample, keys, values, in.readNBytes(in.readInt())));
        }
        return frozen;
    }

    /** A copy for one file, or for the part that several share. */
    COSBase copy() {
        COSBase[] copies = new COSBase[parts.size()];
        for (int i = 0; i < copies.length; i++) {
            Part part = parts.get(i);
            copies[i] = part.kind() == Kind.STREAM ? new StreamObject(part.data) : part.kind().empty();
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
