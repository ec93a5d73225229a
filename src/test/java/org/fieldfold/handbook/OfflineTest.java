package org.fieldfold.handbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.fieldfold.manuscript.HandbookWriter;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The folder on a web server: visited once, it is read without a signal. */
class OfflineTest {
    private static final Map<String, HandbookFile> FILES = Shipped.FILES.stream()
            .collect(Collectors.toMap(HandbookFile::path, Function.identity()));

    @Test
    void aVisitedHandbookIsReadAfterTheServerHasGone() throws IOException {
        HttpServer server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.createContext("/", exchange -> {
            String path = exchange.getRequestURI().getPath().substring(1);
            HandbookFile file = FILES.get(path.endsWith("/") ? path + "index.html" : path);
            exchange.getResponseHeaders().set("Content-Type", type(path));
            exchange.sendResponseHeaders(file == null ? 404 : 200, file == null ? -1 : file.bytes().length);
            if (file != null) {
                exchange.getResponseBody().write(file.bytes());
            }
            exchange.close();
        });
        server.start();
        String at = "http://127.0.0.1:" + server.getAddress().getPort() + "/handbook/en/";
        try (Phone phone = Phone.open()) {
            phone.driver().get(at + "index.html");
            assertEquals(true, phone.driver().executeAsyncScript("""
                    const done = arguments[0];
                    navigator.serviceWorker.ready.then(worker => done(!!worker.active), () => done(false));
                    """));
            server.stop(0);
            phone.driver().get(at + "leek-moth.html");
            assertEquals("Leek moth", phone.text("h1"));
            assertEquals(true, phone.driver().executeAsyncScript("""
                    const done = arguments[0], picture = document.querySelector('img.pic');
                    picture.loading = 'eager';
                    picture.decode().then(() => done(picture.naturalWidth > 0), () => done(false));
                    """));
            phone.driver().get(at);
            assertTrue(phone.find("h1").isDisplayed());
            assertEquals(List.of(), phone.complaints());
            List<String> asked = phone.end();
            assertTrue(asked.contains(at + "leek-moth.html"), asked.toString());
            assertTrue(asked.stream().allMatch(url -> url.startsWith(at)), asked.toString());
        } finally {
            server.stop(0);
        }
    }

    private static String type(String path) {
        String ending = path.substring(path.lastIndexOf('.') + 1);
        return switch (ending) {
            case "css" -> "text/css";
            case "js" -> "text/javascript";
            case "svg" -> "image/svg+xml";
            case "webmanifest" -> "application/manifest+json";
            default -> "text/html; charset=utf-8";
        };
    }

    @Test
    void theWorkerKeepsEveryFileOfTheFolderAndNothingElse() {
        JsonNode kept = kept(FILES.get("handbook/en/worker.js"));
        List<String> names = FILES.keySet().stream().filter(path -> path.startsWith("handbook/en/"))
                .map(path -> path.substring("handbook/en/".length())).filter(path -> !path.equals("worker.js"))
                .sorted().toList();
        List<String> files = kept.get("files").valueStream().map(JsonNode::asString)
                .filter(path -> !path.equals("./")).sorted().toList();
        assertEquals(names, files);
        assertNotEquals(kept.get("name"), kept(Shipped.SPANISH.stream()
                .filter(file -> file.path().equals("handbook/es/worker.js")).findFirst().orElseThrow()).get("name"));
    }

    @Test
    void anotherByteIsAnotherHandbook() {
        List<HandbookFile> folder = Shipped.FILES.stream()
                .filter(file -> file.path().equals("handbook/en/index.html")).toList();
        HandbookFile changed = new HandbookFile("handbook/en/index.html", new byte[] {1});
        assertNotEquals(worker(folder), worker(List.of(changed)));
        assertEquals(worker(folder), worker(folder));
    }

    private static String worker(List<HandbookFile> folder) {
        Offline offline = new Offline(new HandbookWriter(Shipped.BASE, Shipped.PHRASES).write(false));
        folder.forEach(offline::add);
        List<HandbookFile> files = offline.files();
        return kept(files.get(files.size() - 1)).get("name").asString();
    }

    private static JsonNode kept(HandbookFile worker) {
        String text = new String(worker.bytes(), StandardCharsets.UTF_8);
        int from = text.indexOf("const kept=") + "const kept=".length();
        return JsonMapper.builder().build().readTree(text.substring(from, text.indexOf(";\n", from)));
    }

    @Test
    void theFirstPageSaysHowLargeTheOtherFormsAre() {
        Document start = Html.parse(FILES.get("handbook/en/index.html"));
        List<Element> links = Html.all(start, element -> element.hasAttribute("download"));
        assertEquals(List.of("../../handbook.en.html", "../../handbook.en.epub"),
                links.stream().map(link -> link.getAttribute("href")).toList());
        for (Element link : links) {
            String words = link.getParentNode().getTextContent();
            double said = Double.parseDouble(words.replaceFirst("(?s).*\\(([0-9.]+) MB\\).*", "$1"));
            double size = FILES.get(link.getAttribute("download")).bytes().length / 1e6;
            assertTrue(said >= size && said < size + 0.1, words + ", found " + size);
            assertFalse(words.isBlank());
        }
    }
}
