package org.fieldfold.handbook;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import org.fieldfold.kept.Kept;

/**
 * A style or a script that stands inside a page. What XML would read as markup stands in a section that XML reads as
 * text, and CSS and HTML as comments.
 *
 * @param parts one behind the other
 * @param hash by which the page's policy allows it (CSP 3, 2.3.1)
 */
record Embedded(List<byte[]> parts, String hash) {
    private record Hash(String text) {
    }

    static Embedded style(String style) {
        return style(List.of(utf8(style)), Kept.nothing(), Optional.empty());
    }

    /** @param madeOf a hash of all that it is made of */
    static Embedded style(List<byte[]> style, Kept kept, Optional<String> madeOf) {
        return of("/*<![CDATA[*/", style, "/*]]>*/", kept, madeOf);
    }

    /** @param madeOf a hash of all that it is made of */
    static Embedded script(List<byte[]> script, Kept kept, Optional<String> madeOf) {
        return of("//<![CDATA[\n", script, "//]]>", kept, madeOf);
    }

    private static Embedded of(String open, List<byte[]> within, String close, Kept kept, Optional<String> madeOf) {
        List<byte[]> parts = new ArrayList<>();
        parts.add(utf8(open));
        parts.addAll(within);
        parts.add(utf8(close));
        return new Embedded(parts, kept.value(madeOf.flatMap(hash -> kept.key("embedded", open, hash)), Hash.class,
                () -> hash(parts)).text());
    }

    private static Hash hash(List<byte[]> parts) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            parts.forEach(digest::update);
            return new Hash(Base64.getEncoder().encodeToString(digest.digest()));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java platform has SHA-256", impossible);
        }
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
