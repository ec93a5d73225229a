package org.fieldfold.preview;

import com.sun.net.httpserver.Headers;

/** What a browser may do with what it is sent: nothing that leaves this machine, and keep nothing. */
final class Policy {
    private static final String NOTHING = "default-src 'none'; base-uri 'none'; form-action 'none'; ";
    private static final String OWN = "script-src 'self'; style-src 'self'; img-src 'self'; font-src 'self'; ";

    private Policy() {
    }

    static void put(Headers headers, String path, String type) {
        headers.set("Content-Type", type);
        headers.set("Cache-Control", "no-store");
        headers.set("X-Content-Type-Options", "nosniff");
        headers.set("Referrer-Policy", "no-referrer");
        headers.set("Cross-Origin-Resource-Policy", "same-origin");
        headers.set("Cross-Origin-Opener-Policy", "same-origin");
        headers.set("Content-Security-Policy", policy(path, type));
    }

    private static String policy(String path, String type) {
        if (type.startsWith("image/svg")) {
            return NOTHING + "style-src 'unsafe-inline'; sandbox";
        }
        return path.startsWith("/book/") ? NOTHING + OWN + "frame-ancestors 'self'"
                : NOTHING + OWN + "connect-src 'self'; frame-src 'self'; frame-ancestors 'none'";
    }
}
