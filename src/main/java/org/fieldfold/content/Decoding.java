package org.fieldfold.content;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.fieldfold.source.Finding;
import org.fieldfold.source.SourceFile;
import org.fieldfold.source.Span;

/** Bytes become text: UTF-8, with or without a byte-order mark. */
final class Decoding {
    private static final int MOST_FINDINGS = 20;

    private Decoding() {
    }

    /**
     * The text; bytes that are not UTF-8 come out as U+FFFD, each run of them with a finding at its place.
     */
    static SourceFile decode(String path, byte[] bytes, List<Finding> findings) {
        String text = new String(bytes, StandardCharsets.UTF_8);
        List<Integer> wrongAt = text.indexOf('\uFFFD') < 0 ? List.of() : new ArrayList<>();
        List<Integer> wrongBytes = new ArrayList<>();
        if (text.indexOf('\uFFFD') >= 0) {
            text = decodeSlowly(bytes, wrongAt, wrongBytes);
        }
        int mark = text.startsWith("\uFEFF") ? 1 : 0;
        SourceFile file = new SourceFile(path, text.substring(mark));
        for (int i = 0; i < wrongAt.size(); i++) {
            int at = Math.max(0, wrongAt.get(i) - mark);
            int offset = wrongBytes.get(i);
            findings.add(FormRule.NOT_UTF8.at(new Span(file, at, Math.min(at + 1, file.text().length())),
                    "expected UTF-8, found the byte 0x%02x at byte %d of the file"
                            .formatted(bytes[offset] & 0xff, offset),
                    isUtf16(bytes) ? "it looks like UTF-16: save the file as UTF-8"
                            : "save the file as UTF-8 and type this character again"));
        }
        return file;
    }

    private static boolean isUtf16(byte[] bytes) {
        return bytes.length >= 2 && (bytes[0] & 0xff) + (bytes[1] & 0xff) == 0xff + 0xfe;
    }

    private static String decodeSlowly(byte[] bytes, List<Integer> wrongAt, List<Integer> wrongBytes) {
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        int lastWrong = -2;
        while (true) {
            CoderResult result = decoder.decode(in, out, true);
            if (!result.isError()) {
                break;
            }
            if (wrongAt.size() < MOST_FINDINGS && lastWrong != out.position() - 1) {
                wrongAt.add(out.position());
                wrongBytes.add(in.position());
            }
            lastWrong = out.position();
            out.put('\uFFFD');
            in.position(in.position() + result.length());
        }
        return out.flip().toString();
    }
}
