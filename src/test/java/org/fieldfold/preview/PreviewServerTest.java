package org.fieldfold.preview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Bytes as anybody could send them, over bare sockets. */
class PreviewServerTest {
    /** More than two machines keep for each other between them. */
    private static final int LARGE = 64 << 20;

    private PreviewServer server;

    @BeforeEach
    void open() throws IOException {
        server = PreviewServer.open(0, PreviewServerTest::shelf);
    }

    private static Optional<Resource> shelf(String path) {
        return path.equals("/") ? Optional.of(Resource.text("here"))
                : path.equals("/large") ? Optional.of(Resource.text("x".repeat(LARGE))) : Optional.empty();
    }

    @AfterEach
    void close() {
        server.close();
    }

    private Socket socket() throws IOException {
        return socket(server.port());
    }

    private static Socket socket(int port) throws IOException {
        Socket socket = new Socket("127.0.0.1", port);
        socket.setSoTimeout(5_000);
        return socket;
    }

    private String host() {
        return "Host: 127.0.0.1:" + server.port() + "\r\n";
    }

    /** Everything that comes back until the connection ends, or nothing more comes. */
    private String answer(String request) throws IOException {
        try (Socket socket = socket()) {
            try {
                socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
                return all(socket.getInputStream());
            } catch (SocketTimeoutException open) {
                throw open;
            } catch (IOException cutOff) {
                return "";
            }
        }
    }

    private static String all(InputStream in) throws IOException {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        in.transferTo(all);
        return all.toString(StandardCharsets.UTF_8);
    }

    private String get(String path, String headers) throws IOException {
        return answer("GET " + path + " HTTP/1.1\r\n" + headers + "Connection: close\r\n\r\n");
    }

    private static String status(String answer) {
        return answer.isEmpty() ? "" : answer.substring(9, 12);
    }

    @Test
    void whatLiesOnTheShelfIsServedWithAPolicyAndNotKept() throws IOException {
        String answer = get("/", host());
        assertEquals("200", status(answer));
        assertTrue(answer.endsWith("here\n"), answer);
        assertTrue(answer.contains("default-src 'none'"), answer);
        assertTrue(answer.contains("no-store"), answer);
    }

    @Test
    void onlyTheHeadIsSentWhereOnlyTheHeadIsAskedFor() throws IOException {
        String answer = answer("HEAD / HTTP/1.1\r\n" + host() + "Connection: close\r\n\r\n");
        assertEquals("200", status(answer));
        assertTrue(answer.endsWith("\r\n\r\n"), answer);
    }

    /** A name that was made to lead to this machine is another host all the same (DNS rebinding). */
    @ParameterizedTest
    @ValueSource(strings = {"Host: evil.example\r\n", "Host: evil.example:PORT\r\n", "Host: 127.0.0.1\r\n",
        "Host: 127.0.0.1:1\r\n", "Host: 127.0.0.1:PORT.evil.example\r\n", "", "Host: \r\n",
        "Host: 127.0.0.1:PORT\r\nHost: evil.example\r\n"})
    void anotherHostIsRefused(String hosts) throws IOException {
        assertEquals("403", status(get("/", hosts.replace("PORT", String.valueOf(server.port())))));
    }

    @ParameterizedTest
    @ValueSource(strings = {"http://evil.example", "null", "https://127.0.0.1:PORT", "http://localhost:1",
        "file://", "http://127.0.0.1:PORT.evil.example"})
    void anotherOriginIsRefused(String origin) throws IOException {
        assertEquals("403", status(get("/", host() + "Origin: "
                + origin.replace("PORT", String.valueOf(server.port())) + "\r\n")));
    }

    @Test
    void itsOwnOriginIsLetIn() throws IOException {
        assertEquals("200", status(get("/", host() + "Origin: http://localhost:" + server.port() + "\r\n")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"cross-site", "same-site"})
    void aPictureOnAPageFromElsewhereIsRefused(String site) throws IOException {
        assertEquals("403", status(get("/", host() + "Sec-Fetch-Site: " + site + "\r\n")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"POST", "PUT", "DELETE", "OPTIONS", "TRACE", "PATCH", "get"})
    void otherMethodsAreRefused(String method) throws IOException {
        assertEquals("405", status(answer(method + " / HTTP/1.1\r\n" + host() + "Connection: close\r\n\r\n")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/../../etc/passwd", "/..%2f..%2fetc/passwd", "/%2e%2e/%2e%2e/etc/passwd",
        "/book/../../../etc/passwd", "/book/..%5c..%5cetc", "//etc/passwd", "/%00", "/book/%252e%252e/x",
        "/?x=1", "/.", "/%2f", "/etc/passwd"})
    void noPathLeadsOffTheShelf(String path) throws IOException {
        String answer = get(path, host());
        assertTrue(List.of("404", "400").contains(status(answer)), answer);
        assertFalse(answer.contains("root:"), answer);
    }

    @Test
    void aLongAddressIsRefused() throws IOException {
        assertEquals("414", status(get("/" + "a".repeat(Gate.LONGEST_PATH), host())));
    }

    @Test
    void manyOrLongHeadersAreRefused() throws IOException {
        StringBuilder many = new StringBuilder();
        for (int i = 0; i < 70; i++) {
            many.append("X-").append(i).append(": 1\r\n");
        }
        assertEquals("431", status(get("/", host() + many)));
        assertEquals("431", status(get("/", host() + "X-Long: " + "a".repeat(20_000) + "\r\n")));
        // past the reader's own bound the connection ends, with or without a word
        assertFalse(get("/", host() + "X-Long: " + "a".repeat(2_000_000) + "\r\n").contains("here"));
    }

    @Test
    void aBodyIsRefused() throws IOException {
        String head = "GET / HTTP/1.1\r\n" + host() + "Connection: close\r\n";
        assertEquals("413", status(answer(head + "Content-Length: 4\r\n\r\nabcd")));
        assertEquals("413", status(answer(head + "Transfer-Encoding: chunked\r\n\r\n1\r\na\r\n0\r\n\r\n")));
    }

    @Test
    void aHundredOpenStreamsAreTooMany() throws IOException {
        List<Socket> open = new ArrayList<>();
        int served = 0;
        int refused = 0;
        try {
            for (int i = 0; i < 100; i++) {
                Socket socket = socket();
                open.add(socket);
                socket.getOutputStream().write(("GET /events/x HTTP/1.1\r\n" + host() + "\r\n")
                        .getBytes(StandardCharsets.ISO_8859_1));
                String status = new String(socket.getInputStream().readNBytes(12), StandardCharsets.UTF_8);
                served += status.endsWith("200") ? 1 : 0;
                refused += status.endsWith("503") ? 1 : 0;
            }
            assertEquals(EventStreams.MOST, served);
            assertEquals(100 - EventStreams.MOST, refused);
            assertEquals("200", status(get("/", host())), "pages are served all the same");
        } finally {
            for (Socket socket : open) {
                socket.close();
            }
        }
    }

    @Test
    void anOpenStreamIsToldOfAVersion() throws Exception {
        try (Socket socket = socket()) {
            socket.getOutputStream().write(("GET /events/leek-moth HTTP/1.1\r\n" + host() + "\r\n")
                    .getBytes(StandardCharsets.ISO_8859_1));
            StringBuilder heard = new StringBuilder();
            read(socket, heard, "retry: 500");
            assertEquals(Collections.singleton("leek-moth"), server.subjects());
            server.tell(7);
            read(socket, heard, "data: 7\n\n");
        }
    }

    private static void read(Socket socket, StringBuilder heard, String until) throws IOException {
        while (heard.indexOf(until) < 0) {
            int next = socket.getInputStream().read();
            assertTrue(next >= 0, heard.toString());
            heard.append((char) next);
        }
    }

    @Test
    void aClientThatSendsNothingKeepsNobodyWaiting() throws IOException {
        List<Socket> slow = new ArrayList<>();
        try {
            for (int i = 0; i < 40; i++) {
                Socket socket = socket();
                slow.add(socket);
                socket.getOutputStream().write("GET / HTTP/1.1\r\nHo".getBytes(StandardCharsets.ISO_8859_1));
            }
            assertEquals("200", status(get("/", host())));
        } finally {
            for (Socket socket : slow) {
                socket.close();
            }
        }
    }

    /** A server in a process of its own: the patience of one is set before the first server of the process is made. */
    static final class Alone {
        private Alone() {
        }

        /** Serves until its input ends. */
        public static void main(String[] none) throws IOException {
            try (PreviewServer alone = PreviewServer.open(0, PreviewServerTest::shelf)) {
                System.out.println(alone.port());
                all(System.in);
            }
        }
    }

    /** One who sends half a request, and one who takes nothing of a large answer: after ten seconds both are left. */
    @Test
    void patienceEnds() throws Exception {
        Process alone = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-cp",
                System.getProperty("java.class.path"), Alone.class.getName())
                .redirectError(ProcessBuilder.Redirect.INHERIT).start();
        try (BufferedReader said = alone.inputReader(StandardCharsets.UTF_8)) {
            int port = Integer.parseInt(said.readLine());
            try (Socket half = socket(port); Socket lazy = socket(port)) {
                half.setSoTimeout(40_000);
                lazy.setSoTimeout(40_000);
                half.getOutputStream().write("GET / HTTP/1.1\r\nHo".getBytes(StandardCharsets.ISO_8859_1));
                lazy.getOutputStream().write(("GET /large HTTP/1.1\r\nHost: 127.0.0.1:" + port + "\r\n\r\n")
                        .getBytes(StandardCharsets.ISO_8859_1));
                assertEquals("", rest(half), "half a request is no request");
                Thread.sleep(5_000);
                assertTrue(rest(lazy).length() < LARGE, "the large answer was kept ready");
            }
        } finally {
            alone.destroyForcibly();
        }
    }

    /** What comes until the connection ends, in whatever way. */
    private static String rest(Socket socket) throws IOException {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        try {
            socket.getInputStream().transferTo(all);
        } catch (SocketTimeoutException open) {
            throw open;
        } catch (IOException cutOff) {
            // reset is an end too
        }
        return all.toString(StandardCharsets.ISO_8859_1);
    }

    @Test
    void itListensOnLoopbackAloneWhateverNetworkThereIs() {
        assertFalse(server.addresses().isEmpty());
        assertTrue(server.addresses().stream().allMatch(InetAddress::isLoopbackAddress), server.addresses().toString());
    }

    @Test
    void otherMachinesFindNobody() throws IOException {
        for (NetworkInterface one : Collections.list(NetworkInterface.getNetworkInterfaces())) {
            for (InetAddress address : Collections.list(one.getInetAddresses())) {
                if (!address.isLoopbackAddress()) {
                    boolean connected;
                    try (Socket socket = new Socket()) {
                        socket.connect(new java.net.InetSocketAddress(address, server.port()), 500);
                        connected = true;
                    } catch (IOException refused) {
                        connected = false;
                    }
                    assertFalse(connected, address.toString());
                }
            }
        }
    }
}
