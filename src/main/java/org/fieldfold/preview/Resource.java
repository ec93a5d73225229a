package org.fieldfold.preview;

import java.nio.charset.StandardCharsets;
import java.util.Map;

/**
 * What is served under an address.
 *
 * @param type media type
 * @param bytes of the body
 */
public record Resource(String type, byte[] bytes) {
    private static final Map<String, String> TYPES = Map.of("html", "text/html; charset=utf-8",
            "css", "text/css; charset=utf-8", "js", "text/javascript; charset=utf-8",
            "json", "application/json; charset=utf-8", "svg", "image/svg+xml", "png", "image/png",
            "jpg", "image/jpeg", "ttf", "font/ttf", "ics", "text/calendar; charset=utf-8");

    /** A resource whose type follows from the ending of its name. */
    public static Resource named(String name, byte[] bytes) {
        return new Resource(TYPES.getOrDefault(name.substring(name.lastIndexOf('.') + 1), "text/plain; charset=utf-8"),
                bytes);
    }

    static Resource text(String words) {
        return new Resource("text/plain; charset=utf-8", (words + "\n").getBytes(StandardCharsets.UTF_8));
    }
}
