package org.fieldfold.preview;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Who is let in: a browser on this machine that was sent here by its user or by a page from here. A page from
 * elsewhere is refused even where its name was made to lead to this machine, by the host that it names.
 */
final class Gate {
    static final int LONGEST_PATH = 512;
    private static final int MOST_HEADERS = 64;
    private static final int LONGEST_HEADERS = 16 * 1024;

    private final Set<String> hosts;

    Gate(int port) {
        this.hosts = Set.of("127.0.0.1:" + port, "localhost:" + port, "[::1]:" + port);
    }

    /** A reason to let nobody in. */
    record Refusal(int status, String why) {
    }

    Optional<Refusal> refusal(HttpExchange exchange) {
        Headers headers = exchange.getRequestHeaders();
        String uri = exchange.getRequestURI().toString();
        if (uri.length() > LONGEST_PATH) {
            return refuse(414, "expected an address of at most " + LONGEST_PATH + " characters");
        }
        if (headers.size() > MOST_HEADERS || length(headers) > LONGEST_HEADERS) {
            return refuse(431, "expected at most " + MOST_HEADERS + " headers");
        }
        List<String> host = headers.getOrDefault("Host", List.of());
        if (host.size() != 1 || !hosts.contains(host.get(0))) {
            return refuse(403, "expected one of the hosts " + String.join(", ", hosts.stream().sorted().toList()));
        }
        if (!headers.getOrDefault("Origin", List.of()).stream().allMatch(this::isOurs)) {
            return refuse(403, "expected a request from this page itself");
        }
        List<String> sites = headers.getOrDefault("Sec-Fetch-Site", List.of());
        if (!Set.of("same-origin", "none").containsAll(sites)) {
            return refuse(403, "expected a request from this page itself; type its address by hand");
        }
        String method = exchange.getRequestMethod();
        if (!method.equals("GET") && !method.equals("HEAD")) {
            return refuse(405, "expected GET or HEAD");
        }
        String body = String.join("", headers.getOrDefault("Content-Length", List.of("0")));
        if (headers.containsKey("Transfer-Encoding") || !body.equals("0")) {
            return refuse(413, "expected a request without a body");
        }
        return Optional.empty();
    }

    private boolean isOurs(String origin) {
        return origin.startsWith("http://") && hosts.contains(origin.substring("http://".length()));
    }

    private static int length(Headers headers) {
        return headers.entrySet().stream().mapToInt(header -> header.getValue().stream()
                .mapToInt(value -> header.getKey().length() + value.length()).sum()).sum();
    }

    private static Optional<Refusal> refuse(int status, String why) {
        return Optional.of(new Refusal(status, why));
    }
}
