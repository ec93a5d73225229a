package org.fieldfold.fold;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLConnection;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The schemes that ship: every file in {@code schemes/} beside this class is one. */
public final class FoldSchemes {
    /** Any one of the shipped files shows where they all are, also in a jar that lists no folders. */
    private static final String ONE_OF_THEM = "schemes/letter.fold";
    private static final String SUFFIX = ".fold";

    private FoldSchemes() {
    }

    /** The scheme with this id; an unknown one is a {@link FoldException} that lists those there are. */
    public static FoldScheme named(String id) {
        FoldScheme scheme = Shipped.BY_ID.get(id);
        if (scheme == null) {
            throw new FoldException("expected a fold scheme (" + String.join(", ", Shipped.BY_ID.keySet())
                    + "), found '" + id + "'");
        }
        return scheme;
    }

    /** The shipped scheme with this id, if there is one. */
    public static Optional<FoldScheme> find(String id) {
        return Optional.ofNullable(Shipped.BY_ID.get(id));
    }

    /** All schemes that ship, by id. */
    public static List<FoldScheme> all() {
        return List.copyOf(Shipped.BY_ID.values());
    }

    /**
     * Reads a scheme of somebody's own. A file holds one statement a line; {@code #} begins a comment. The
     * sheet is laid before the folder, either side up; left, right, top and bottom are meant as the piece
     * lies at that moment, and {@code x2} is the line between the sheet's second and third columns, wherever
     * it lies by then.
     *
     * <pre>
     * scheme letter            small letters, digits and hyphens; the file is letter.fold
     * title Letter fold
     * sheet landscape          or portrait
     * columns 1 1 1            widths in proportion; what is tucked in is narrowed by itself
     * rows 1
     * print one-sided          or both-sides, unless said
     * read leafing             a book; or opening, unless said
     * head left                the sheet's edge that is uppermost in the reader's hand; top, unless said
     * cut y1 from x1 to x3     x0 is the sheet's left edge
     * fold x2 right over       which part is moved, and whether over or under the rest
     * fold x1 left over, x3 right over                 opened by the reader in one pull
     * gather x1 valley, x3 row 2 mountain              all that is left, pushed together
     * trim top right           edges of the folded piece that are cut off
     * </pre>
     *
     * @param name the file's name, for messages
     * @throws FoldException saying file, line, what was expected and what was found
     */
    public static FoldScheme read(String name, String text) {
        return SchemeReader.read(name, text);
    }

    /**
     * Refuses a scheme that no paper can be folded by: a line that is never folded, a flap wider than what it
     * is folded into, a page that nobody reaches. On a small paper a panel may still be too narrow for its
     * margins, which {@link Imposition#of} says.
     */
    public static void prove(FoldScheme scheme) {
        Imposition.of(scheme, Paper.TABLOID, FlipEdge.SHORT);
        Imposition.of(scheme, Paper.A3, FlipEdge.SHORT);
    }

    private static final class Shipped {
        static final Map<String, FoldScheme> BY_ID = load();

        private static Map<String, FoldScheme> load() {
            URL one = FoldSchemes.class.getResource(ONE_OF_THEM);
            if (one == null) {
                throw new IllegalStateException("the shipped fold schemes are missing");
            }
            try {
                URLConnection connection = one.openConnection();
                if (connection instanceof JarURLConnection jar) {
                    try (FileSystem files = FileSystems.newFileSystem(Path.of(jar.getJarFileURL().toURI()))) {
                        return read(files.getPath(jar.getEntryName()).getParent());
                    }
                }
                return read(Path.of(one.toURI()).getParent());
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            } catch (URISyntaxException e) {
                throw new IllegalStateException(e);
            }
        }

        private static Map<String, FoldScheme> read(Path folder) throws IOException {
            Collection<Path> files;
            try (Stream<Path> found = Files.list(folder)) {
                files = found.filter(file -> file.toString().endsWith(SUFFIX)).sorted().toList();
            }
            Map<String, FoldScheme> schemes = new TreeMap<>();
            for (Path file : files) {
                String name = file.getFileName().toString();
                FoldScheme scheme = FoldSchemes.read(name, Files.readString(file, StandardCharsets.UTF_8));
                if (!name.equals(scheme.id() + SUFFIX)) {
                    throw new FoldException(name + ": expected the file name " + scheme.id() + SUFFIX);
                }
                schemes.put(scheme.id(), scheme);
            }
            return schemes;
        }
    }
}
