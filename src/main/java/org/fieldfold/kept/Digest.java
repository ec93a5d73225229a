package org.fieldfold.kept;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.fieldfold.source.Span;

/** Bytes to be hashed, as they gather, and the places met on the way. */
final class Digest {
    private byte[] bytes = new byte[1 << 12];
    private int length;
    private final Map<Span, Integer> places = new LinkedHashMap<>();
    private final Set<String> named = new LinkedHashSet<>();

    static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java platform has SHA-256", impossible);
        }
    }

    void tag(char kind) {
        room(1);
        bytes[length++] = (byte) kind;
    }

    /** Seven bits a byte, the last one marked: lengths are small, and every byte more is hashed as well. */
    void number(long number) {
        room(10);
        long rest = number;
        while ((rest & ~0x7FL) != 0) {
            bytes[length++] = (byte) (rest & 0x7F);
            rest >>>= 7;
        }
        bytes[length++] = (byte) (rest | 0x80);
    }

    /**
     * With its length before it, so that no two runs of texts look alike; half a pair of signs has no UTF-8.
     */
    void text(String text) {
        boolean plain = true;
        for (int i = 0; plain && i < text.length(); i++) {
            plain = !Character.isSurrogate(text.charAt(i));
        }
        if (plain) {
            tag('1');
            bytes(text.getBytes(StandardCharsets.UTF_8));
        } else {
            tag('2');
            number(text.length());
            text.chars().forEach(this::number);
        }
    }

    void bytes(byte[] more) {
        number(more.length);
        room(more.length);
        System.arraycopy(more, 0, bytes, length, more.length);
        length += more.length;
    }

    void place(Span span) {
        number(places.computeIfAbsent(span, unseen -> places.size()));
    }

    void name(String name) {
        named.add(name);
    }

    private void room(int more) {
        if (length + more > bytes.length) {
            bytes = Arrays.copyOf(bytes, Math.max(bytes.length * 2, length + more));
        }
    }

    Set<Span> places() {
        return places.keySet();
    }

    Set<String> named() {
        return named;
    }

    byte[] hash() {
        MessageDigest digest = sha256();
        digest.update(bytes, 0, length);
        return digest.digest();
    }

    String hex() {
        return HexFormat.of().formatHex(hash());
    }
}
