package org.fieldfold.kept;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.jar.Attributes;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import org.fieldfold.report.Checksums;

/**
 * What tells this program from all others: every byte of all that it is loaded from, as it was when somebody first
 * asked, and the Java that runs it.
 */
public final class Program {
    /** What runs does not change while it runs, whatever is written over its files meanwhile. */
    private static final ClassValue<Optional<String>> CODE = new ClassValue<>() {
        @Override
        protected Optional<String> computeValue(Class<?> type) {
            return read(type);
        }
    };

    private Program() {
    }

    /**
     * The program that a class belongs to, as a hash; empty when it cannot be told what it was loaded from,
     * and so nothing that it makes may be kept.
     */
    public static Optional<String> of(Class<?> type) {
        return code(type).map(code -> {
            Digest digest = new Digest();
            for (String property : List.of("java.vm.name", "java.vm.version", "java.runtime.version", "os.name",
                    "os.arch")) {
                digest.text(System.getProperty(property, ""));
            }
            digest.text(code);
            return digest.hex();
        });
    }

    /** The same, whatever Java and machine run it: for what several machines make together. */
    public static Optional<String> code(Class<?> type) {
        return CODE.get(type);
    }

    private static Optional<String> read(Class<?> type) {
        try {
            List<Path> places = places(type.getClassLoader());
            Path own = Path.of(type.getProtectionDomain().getCodeSource().getLocation().toURI()).toRealPath();
            Digest digest = new Digest();
            for (Path place : places) {
                if (Files.isDirectory(place)) {
                    folder(place, digest);
                } else {
                    file(place, digest);
                }
            }
            return places.contains(own) ? Optional.of(digest.hex()) : Optional.empty();
        } catch (IOException | URISyntaxException | RuntimeException unknown) {
            return Optional.empty();
        }
    }

    private static List<Path> places(ClassLoader loader) throws IOException, URISyntaxException {
        List<Path> places = new ArrayList<>();
        if (loader instanceof URLClassLoader urls) {
            for (URL url : urls.getURLs()) {
                add(Path.of(new URI(url.toString())), places);
            }
        } else {
            for (String one : System.getProperty("java.class.path", "").split(
                    java.io.File.pathSeparator)) {
                add(Path.of(one), places);
            }
        }
        return places;
    }

    /** A jar may lead to others, as those do that test runners make. */
    private static void add(Path place, List<Path> places) throws IOException, URISyntaxException {
        if (!Files.exists(place) || places.contains(place.toRealPath())) {
            return;
        }
        Path real = place.toRealPath();
        places.add(real);
        if (!Files.isDirectory(real)) {
            try (JarFile jar = new JarFile(real.toFile())) {
                String others = jar.getManifest() == null ? null
                        : jar.getManifest().getMainAttributes().getValue(Attributes.Name.CLASS_PATH);
                for (String other : others == null ? new String[0] : others.trim().split("\\s+")) {
                    add(Path.of(real.toUri().resolve(new URI(other))), places);
                }
            }
        }
    }

    private static void folder(Path folder, Digest digest) throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.walk(folder)) {
            files = all.filter(Files::isRegularFile).sorted(Comparator.comparing(Path::toString)).toList();
        }
        digest.number(files.size());
        for (Path file : files) {
            digest.text(folder.relativize(file).toString());
            file(file, digest);
        }
    }

    private static void file(Path file, Digest digest) throws IOException {
        digest.number(Files.size(file));
        try (InputStream in = Files.newInputStream(file)) {
            digest.number(Checksums.of(in));
        }
    }
}
