package org.fieldfold.fold;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every scheme as a drawing; {@code -Dgolden.write=true} rewrites the expected ones in the source folder. */
class DrawingTest {
    @TestFactory
    List<DynamicTest> schemes() {
        return FoldSchemes.all().stream().map(scheme -> DynamicTest.dynamicTest(scheme.id(), () -> {
            String drawn = Imposition.of(scheme, Paper.LETTER, FlipEdge.SHORT).drawing() + "\n"
                    + Imposition.of(scheme, Paper.A4, FlipEdge.LONG).drawing();
            assertEquals(expected(scheme.id(), drawn), drawn);
        })).toList();
    }

    private static String expected(String id, String drawn) throws IOException {
        if (Boolean.getBoolean("golden.write")) {
            Path folder = Files.createDirectories(Path.of("src/test/resources/org/fieldfold/fold/drawings"));
            Files.writeString(folder.resolve(id + ".txt"), drawn);
        }
        try (InputStream in = DrawingTest.class.getResourceAsStream("drawings/" + id + ".txt")) {
            return in == null ? "(no drawing of " + id + " is expected yet)"
                    : new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
