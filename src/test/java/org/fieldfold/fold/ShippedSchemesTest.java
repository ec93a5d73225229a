package org.fieldfold.fold;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.net.URI;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The schemes are found in a folder of classes (every other test) and in a jar, listed folders or not. */
class ShippedSchemesTest {
    @Test
    void areFoundInAJar(@TempDir Path folder) throws Exception {
        Path jar = folder.resolve("a jar.jar");
        pack(Path.of(FoldSchemes.class.getProtectionDomain().getCodeSource().getLocation().toURI()), jar);
        URL[] path = {new URI("file", null, jar.toString(), null).toURL()};
        try (URLClassLoader loader = new URLClassLoader(path, ClassLoader.getPlatformClassLoader())) {
            List<?> schemes = (List<?>) loader.loadClass(FoldSchemes.class.getName()).getMethod("all")
                    .invoke(null);
            assertEquals(FoldSchemes.all().toString(), schemes.toString());
        }
    }

    private static void pack(Path classes, Path jar) throws IOException {
        try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar));
                Stream<Path> files = Files.walk(classes.resolve("org/fieldfold/fold"))) {
            for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                out.putNextEntry(new JarEntry(classes.relativize(file).toString().replace('\\', '/')));
                out.write(Files.readAllBytes(file));
                out.closeEntry();
            }
        }
    }
}
