package org.fieldfold.handbook;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fieldfold.manuscript.Book;

/**
 * What lets a visited folder be read without a signal: a service worker that keeps all of its files, and a
 * web app manifest so that it can stand among a telephone's programs.
 */
final class Offline {
    static final String MANIFEST = "handbook.webmanifest";
    static final String ICON = "icon.svg";
    private static final String WORKER = "worker.js";

    private final Book book;
    private final String at;
    private final List<Object> names = new ArrayList<>(List.of("./"));
    private final MessageDigest digest = sha256();

    Offline(Book book) {
        this.book = book;
        this.at = "handbook/" + book.language() + "/";
    }

    /** Adds a file of the folder; the next has to be another. */
    void add(String path, HandbookFiles.Standing file) {
        names.add(path.substring(at.length()));
        digest.update(path.getBytes(StandardCharsets.UTF_8));
        digest.update(ByteBuffer.allocate(1 + Integer.BYTES + Long.BYTES).put((byte) 0).putInt(file.size())
                .putLong(file.check()).array());
    }

    void add(HandbookFile file) {
        add(file.path(), HandbookFiles.Standing.of(file.bytes()));
    }

    /**
     * The three files that keep those which were added. The worker names what it keeps by the files' content,
     * so that one changed byte is a new handbook.
     */
    List<HandbookFile> files() {
        HandbookFile icon = text(at + ICON, Sheet.read(ICON));
        HandbookFile manifest = text(at + MANIFEST, manifest(book));
        add(icon);
        add(manifest);
        Map<String, Object> kept = new LinkedHashMap<>();
        kept.put("of", "fieldfold." + book.language() + ".");
        kept.put("name", "fieldfold." + book.language() + "." + book.year() + "."
                + HexFormat.of().formatHex(digest.digest(), 0, 8));
        kept.put("files", names);
        return List.of(icon, manifest, text(at + WORKER, "'use strict';\nconst kept=" + Json.of(kept) + ";\n"
                + Sheet.read(WORKER)));
    }

    private static String manifest(Book book) {
        Map<String, Object> icon = new LinkedHashMap<>();
        icon.put("src", ICON);
        icon.put("type", "image/svg+xml");
        icon.put("sizes", "any");
        Map<String, Object> manifest = new LinkedHashMap<>();
        manifest.put("name", book.title() + " · " + book.year());
        manifest.put("short_name", String.valueOf(book.year()));
        manifest.put("description", book.edition());
        manifest.put("lang", book.language());
        manifest.put("start_url", "index.html");
        manifest.put("scope", "./");
        manifest.put("display", "standalone");
        manifest.put("icons", List.of(icon));
        return Json.of(manifest) + "\n";
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java platform has SHA-256", impossible);
        }
    }

    private static HandbookFile text(String path, String text) {
        return new HandbookFile(path, text.getBytes(StandardCharsets.UTF_8));
    }
}
