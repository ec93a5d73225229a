package org.fieldfold.pdf;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import org.apache.pdfbox.cos.COSBoolean;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;

/** A value of a {@link Frozen} part as bytes: the place of another part, or one that stands for itself. */
final class FrozenValue {
    private FrozenValue() {}

    static void write(Object value, DataOutputStream out) throws IOException {
        if (value instanceof Integer place) {
            out.writeByte('p');
            out.writeInt(place);
        } else if (value instanceof COSName name) {
            out.writeByte('n');
            out.writeUTF(name.getName());
        } else if (value instanceof COSInteger whole) {
            out.writeByte('i');
            out.writeLong(whole.longValue());
        } else if (value instanceof COSFloat number) {
            out.writeByte('f');
            out.writeFloat(number.floatValue());
        } else if (value instanceof COSBoolean truth) {
            out.writeByte('b');
            out.writeBoolean(truth.getValue());
        } else if (value instanceof COSString text) {
            out.writeByte('s');
            out.writeInt(text.getBytes().length);
            out.write(text.getBytes());
        } else {
            throw new IOException("expected a value of a sheet's file, found " + value);
        }
    }

    static Object read(DataInputStream in) throws IOException {
        int kind = in.readByte();
        return switch (kind) {
            case 'p' -> in.readInt();
            case 'n' -> COSName.getPDFName(in.readUTF());
            case 'i' -> COSInteger.get(in.readLong());
            case 'f' -> new COSFloat(in.readFloat());
            case 'b' -> COSBoolean.getBoolean(in.readBoolean());
            case 's' -> new COSString(in.readNBytes(in.readInt()));
            default -> throw new IOException("expected a kind of value, found " + kind);
        };
    }
}
