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
import java.util.TreeMap;
import java.util.stream.Stream;

/** The schemes that ship: every file in {@code schemes/} beside this class is one. */
public final class FoldSchemes {
    private static final String FOLDER = "schemes";
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

    /** All schemes that ship, by id. */
    public static List<FoldScheme> all() {
        return List.copyOf(Shipped.BY_ID.values());
    }

    /**
     * Reads a scheme of somebody's own.
     *
     * @param name the file's name, for messages
     * @throws FoldException saying file, line, what was expected and what was found
     */
    public static FoldScheme read(String name, String text) {
        return SchemeReader.read(name, text);
    }

    private static final class Shipped {
        static final Map<String, FoldScheme> BY_ID = load();

        private static Map<String, FoldScheme> load() {
            URL folder = FoldSchemes.class.getResource(FOLDER);
            if (folder == null) {
                throw new IllegalStateException("the shipped fold schemes are missing");
            }
            try {
                URLConnection connection = folder.openConnection();
                if (connection instanceof JarURLConnection jar) {
                    try (FileSystem files = FileSystems.newFileSystem(Path.of(jar.getJarFileURL().toURI()))) {
                        return read(files.getPath(jar.getEntryName()));
                    }
                }
                return read(Path.of(folder.toURI()));
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
