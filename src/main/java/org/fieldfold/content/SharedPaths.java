package org.fieldfold.content;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The paths of facts in records, each held once: thousands of entries have the same few hundred, and would
 * hold more bytes of them than of their own words.
 */
final class SharedPaths {
    /** Ten times those of the demo base; what a base has beyond is held as often as it is there. */
    private static final int MOST = 10_000;

    private static final Map<String, String> KNOWN = new ConcurrentHashMap<>();

    private SharedPaths() {
    }

    /** An equal path, the same for everybody while there are not too many. */
    static String of(String path) {
        String known = KNOWN.get(path);
        if (known == null && KNOWN.size() < MOST) {
            known = KNOWN.putIfAbsent(path, path);
        }
        return known == null ? path : known;
    }
}
