package org.fieldfold.translation;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.regex.Pattern;
import org.fieldfold.source.Span;

/**
 * One text of the base.
 *
 * @param path keys, and in lists ids or 0-based positions, joined by {@code /}
 * @param words as they stand in the file
 * @param oneLine whether they are words of one line, without marks of style
 * @param optional whether they may stand in another language as they are
 */
public record BaseText(String path, String words, boolean oneLine, boolean optional, Span span) {
    /** How lists of words stand in one text. */
    public static final String BETWEEN = "; ";
    private static final int BYTES = 4;
    private static final Pattern SPACE = Pattern.compile("\\s+");

    /**
     * What a translation names it by: the first 8 hexadecimal digits of the SHA-256 of its words, with all
     * white space as single spaces, so that breaking lines anew is no change.
     */
    public String hash() {
        return hash(words);
    }

    /** The same of any words, as of those that stood there once. */
    public static String hash(String words) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256")
                    .digest(SPACE.matcher(words.strip()).replaceAll(" ").getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash, 0, BYTES);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java platform has SHA-256", impossible);
        }
    }
}
