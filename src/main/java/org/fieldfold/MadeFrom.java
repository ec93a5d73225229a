package org.fieldfold;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.fieldfold.content.InputFile;
import org.fieldfold.kept.Program;
import org.fieldfold.report.Sha256;

/**
 * What packs are made from, told by hashes. Each pack says what it was made from, and their folder says which
 * content that belongs to: so that it is known from the files alone, without reading or setting anything, that
 * there is nothing to do.
 *
 * @param shared hash of what is common to all packs
 * @param own by office, the hashes of its own files
 */
record MadeFrom(String shared, Map<String, String> own) {
    /** Of no use to an office, so it is not in the zip. */
    static final String NAME = ".made-from";

    private static final String OFFICES = "/offices/";
    /** Another program may set or write something else; of one that cannot be told its version says so. */
    private static final String PROGRAM = Program.code(MadeFrom.class).orElse(Compiler.VERSION);

    /**
     * @param characters of all packs, for which the type is cut
     */
    static MadeFrom of(List<InputFile> inputs, Iterable<Integer> characters, boolean proof) {
        StringBuilder text = new StringBuilder(PROGRAM).append(' ').append(proof).append(' ')
                .append(characters).append('\n');
        SortedMap<String, String> hashes = new TreeMap<>();
        inputs.forEach(file -> hashes.put(file.path().substring(file.path().indexOf('/') + 1), file.sha256()));
        hashes.forEach((path, hash) -> {
            if (!("/" + path).contains(OFFICES)) {
                text.append(hash).append(' ').append(path).append('\n');
            }
        });
        return new MadeFrom(sha256(text), own(hashes));
    }

    private static Map<String, String> own(SortedMap<String, String> hashes) {
        Map<String, String> own = new HashMap<>();
        hashes.forEach((path, hash) -> {
            if (("/" + path).contains(OFFICES)) {
                own.merge(path.substring(path.lastIndexOf('/') + 1).replaceFirst("\\.yaml$", ""),
                        hash + " " + path + "\n", String::concat);
            }
        });
        return own;
    }

    /** What the pack of an office is made from. */
    String of(String office) {
        return sha256(shared + "\n" + own.getOrDefault(office, "")) + "\n";
    }

    /** Whether an office's pack is there and made from this. */
    boolean isThere(Path packs, String office) throws IOException {
        Path mark = packs.resolve(office).resolve(NAME);
        return Files.exists(mark) && Files.readString(mark).equals(of(office));
    }

    private static String sha256(CharSequence text) {
        return Sha256.of(text.toString().getBytes(StandardCharsets.UTF_8));
    }

    /** What all packs of a folder were made from, when it was this content. */
    static Optional<MadeFrom> known(Path packs, ContentFiles content, String asked) throws IOException {
        Path mark = packs.resolve(NAME);
        List<String> lines = Files.isRegularFile(mark) ? Files.readAllLines(mark) : List.of();
        return lines.size() == 2 && lines.get(0).equals(content.key(PROGRAM + " " + asked))
                ? Optional.of(new MadeFrom(lines.get(1), own(content.hashes()))) : Optional.empty();
    }

    /** Remembers it for {@link #known}. */
    void remember(Path packs, ContentFiles content, String asked) throws IOException {
        WholeFile.write(packs.resolve(NAME), (content.key(PROGRAM + " " + asked) + "\n" + shared + "\n")
                .getBytes(StandardCharsets.UTF_8));
    }
}
