package org.fieldfold.preview;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.SynchronousQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;

/**
 * Serves a shelf to a browser on this machine. It listens on the loopback addresses only, hands out what lies
 * on the shelf and never a file, and tells open pages when there is something new.
 */
public final class PreviewServer implements AutoCloseable {
    /** Pages listen here; what they show follows. */
    private static final String EVENTS = "/events/";
    /** A client that is slow to ask takes a hand until its patience ends: there are more than enough. */
    private static final int MOST_AT_ONCE = 256;
    private static final int PATIENCE_SECONDS = 10;
    private static final int HEARTBEAT_SECONDS = 15;

    private final List<HttpServer> servers = new ArrayList<>();
    private final EventStreams streams = new EventStreams();
    private final ExecutorService hands = new ThreadPoolExecutor(4, MOST_AT_ONCE, 30, TimeUnit.SECONDS,
            new SynchronousQueue<>(), PreviewServer::daemon);
    private final ScheduledExecutorService clock = Executors.newSingleThreadScheduledExecutor(
            PreviewServer::daemon);
    private final Shelf shelf;
    private final int port;
    private final Gate gate;

    private PreviewServer(int port, Shelf shelf) throws IOException {
        this.shelf = shelf;
        HttpServer first = listen(new byte[] {127, 0, 0, 1}, port);
        this.port = first.getAddress().getPort();
        this.gate = new Gate(this.port);
        servers.add(first);
        try {
            servers.add(listen(new byte[] {0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1}, this.port));
        } catch (IOException noSuchAddress) {
            // a machine without IPv6, or another program on its side of the port: the first address is enough
        }
        servers.forEach(server -> {
            server.createContext("/", this::answer);
            server.setExecutor(this::run);
            server.start();
        });
    }

    /**
     * Begins to serve.
     *
     * @param port 0 for any that is free
     * @throws IOException when the port is taken
     */
    public static PreviewServer open(int port, Shelf shelf) throws IOException {
        // read once, when the first server of a process is made
        set("sun.net.httpserver.maxReqTime", PATIENCE_SECONDS);
        set("sun.net.httpserver.maxReqHeaders", 100);
        set("sun.net.httpserver.maxReqHeaderSize", 32 * 1024);
        set("jdk.httpserver.maxConnections", MOST_AT_ONCE - EventStreams.MOST);
        // the body goes out behind its head at once, and not when the head was acknowledged, 40 ms later
        set("sun.net.httpserver.nodelay", true);
        return new PreviewServer(port, shelf);
    }

    public int port() {
        return port;
    }

    /** Where it listens. */
    List<InetAddress> addresses() {
        return servers.stream().map(server -> server.getAddress().getAddress()).toList();
    }

    /** What open pages show: the last part of the address at which they listen. */
    public Set<String> subjects() {
        return streams.subjects();
    }

    /** Tells every open page that a version can be fetched. */
    public void tell(long version) {
        streams.tell(version);
    }

    @Override
    public void close() {
        streams.end();
        servers.forEach(server -> server.stop(0));
        hands.shutdownNow();
        clock.shutdownNow();
    }

    private static void set(String property, Object value) {
        if (System.getProperty(property) == null) {
            System.setProperty(property, String.valueOf(value));
        }
    }

    private static HttpServer listen(byte[] address, int port) throws IOException {
        return HttpServer.create(new InetSocketAddress(InetAddress.getByAddress(address), port), 0);
    }

    private static Thread daemon(Runnable work) {
        Thread thread = new Thread(work, "preview");
        thread.setDaemon(true);
        return thread;
    }

    /** With all hands busy a request is dropped, and its connection with it. */
    private void run(Runnable exchange) {
        try {
            hands.execute(exchange);
        } catch (RejectedExecutionException busy) {
            throw new IllegalStateException("expected at most " + MOST_AT_ONCE + " requests at once", busy);
        }
    }

    private void answer(HttpExchange exchange) throws IOException {
        try (exchange) {
            Optional<Gate.Refusal> refusal = gate.refusal(exchange);
            String path = exchange.getRequestURI().toString();
            if (refusal.isPresent()) {
                refuse(exchange, refusal.get());
            } else if (path.startsWith(EVENTS) && exchange.getRequestMethod().equals("GET")) {
                listenIn(exchange, path.substring(EVENTS.length()));
            } else {
                Optional<Resource> found = shelf.find(path);
                send(exchange, found.isPresent() ? 200 : 404,
                        found.orElseGet(() -> Resource.text("nothing is kept at this address")));
            }
        }
    }

    private void refuse(HttpExchange exchange, Gate.Refusal refusal) throws IOException {
        exchange.getResponseHeaders().set("Connection", "close");
        if (refusal.status() == 405) {
            exchange.getResponseHeaders().set("Allow", "GET, HEAD");
        }
        send(exchange, refusal.status(), Resource.text(refusal.why()));
    }

    private void send(HttpExchange exchange, int status, Resource resource) throws IOException {
        Policy.put(exchange.getResponseHeaders(), exchange.getRequestURI().toString(), resource.type());
        if (exchange.getRequestMethod().equals("HEAD")) {
            exchange.getResponseHeaders().set("Content-Length", String.valueOf(resource.bytes().length));
            exchange.sendResponseHeaders(status, -1);
            return;
        }
        withPatience(exchange, () -> {
            exchange.sendResponseHeaders(status, resource.bytes().length == 0 ? -1 : resource.bytes().length);
            try (OutputStream out = exchange.getResponseBody()) {
                out.write(resource.bytes());
            }
        });
    }

    private void listenIn(HttpExchange exchange, String subject) throws IOException {
        if (!streams.takePlace()) {
            send(exchange, 503, Resource.text("expected at most " + EventStreams.MOST + " open pages"));
            return;
        }
        EventStreams.Stream stream = streams.open(subject);
        try {
            Policy.put(exchange.getResponseHeaders(), "", "text/event-stream; charset=utf-8");
            exchange.sendResponseHeaders(200, 0);
            OutputStream out = exchange.getResponseBody();
            write(exchange, out, "retry: 500\n\n");
            long version = 0;
            while ((version = stream.next(HEARTBEAT_SECONDS)) >= 0) {
                write(exchange, out, version == 0 ? ":\n\n" : "data: " + version + "\n\n");
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        } finally {
            streams.close(stream);
            streams.giveBack();
        }
    }

    private void write(HttpExchange exchange, OutputStream out, String words) throws IOException {
        withPatience(exchange, () -> {
            out.write(words.getBytes(StandardCharsets.UTF_8));
            out.flush();
        });
    }

    /** A reader who takes nothing for some seconds loses its connection. */
    private void withPatience(HttpExchange exchange, Writing writing) throws IOException {
        ScheduledFuture<?> end = clock.schedule(exchange::close, PATIENCE_SECONDS, TimeUnit.SECONDS);
        try {
            writing.run();
        } finally {
            end.cancel(false);
        }
    }

    /** Something that writes to a connection. */
    private interface Writing {
        void run() throws IOException;
    }
}
