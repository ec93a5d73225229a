package org.fieldfold.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A base that is too large in every way is checked by a process of its own, with a heap smaller than its files. */
class BoundedMemoryTest {
    /** What DEVELOPERS.md promises; 96 was seen to do, 80 was not. */
    private static final String HEAP = "-Xmx128m";
    private static final int MINUTES = 10;
    private static final int MEBIBYTE = 1 << 20;
    private static final int ALMOST = MEBIBYTE - 200;

    @TempDir
    Path folder;

    private void sparse(Base base, String path) throws IOException {
        base.with(path, "");
        try (RandomAccessFile file = new RandomAccessFile(base.folder().resolve(path).toFile(), "rw")) {
            file.setLength(100L * MEBIBYTE);
        }
    }

    private Base hostile() throws IOException {
        Base base = new Base(folder);
        for (String path : List.of("pests/sparse.yaml", "crops.yaml", "weather/sparse.csv", "figures/sparse.svg",
                "figures/sparse-photo.png", "issued/1999.json", "chapters/sparse.md")) {
            sparse(base, path);
        }
        base.with("sources.yaml", "sources: [" + "a,".repeat(1_000_000) + "]");
        base.with("guides/list.yaml", "title: A\npurpose: B\naudience: garden\nscheme: accordion-4\nentries: ["
                + "a,".repeat(490_000) + "]");
        base.with("active-ingredients.yaml", "active-ingredients:\n" + "- a\n".repeat(ALMOST / 4 - 10));
        base.with("prices.yaml", "prices:\n" + "- {id: a}\n".repeat(ALMOST / 10));
        base.with("pests/deep-brackets.yaml", "[".repeat(ALMOST))
                .with("pests/deep-maps.yaml", "{a: ".repeat(ALMOST / 4));
        base.with("pests/deep-blocks.yaml", "- ".repeat(ALMOST / 2));
        base.with("figures/deep.svg", "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\">"
                + "<g>".repeat(1_500_000));
        base.with("chapters/deep.md", "# T\n\n" + "> ".repeat(ALMOST / 2 - 10));
        base.with("es/practices/deep.yaml", "{a: ".repeat(ALMOST / 4));
        Path practices = Files.createDirectories(base.folder().resolve("practices"));
        long files;
        try (Stream<Path> all = Files.walk(base.folder())) {
            files = all.filter(Files::isRegularFile).count();
        }
        for (long i = files; i < Folder.MOST_FILES; i++) {
            Files.writeString(practices.resolve("p" + i + ".yaml"), "name: Row cover\ntier: 2\nkind: row-cover\n"
                    + "summary: Cover on hoops.\n" + ("wrong-" + i + ": 1\n").repeat(40));
        }
        return base;
    }

    @Test
    void itGivesFindingsInASmallHeapAndInBoundedTime() throws Exception {
        Base base = hostile();
        Path said = folder.resolve("said");
        Path failed = folder.resolve("failed");
        Process check = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), HEAP,
                "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Djava.awt.headless=true", "-cp",
                System.getProperty("java.class.path"), "org.fieldfold.cli.Main", "check", "--format", "json",
                "--content", base.folder().toString()).redirectOutput(said.toFile())
                .redirectError(failed.toFile()).start();
        boolean ended = check.waitFor(MINUTES, TimeUnit.MINUTES);
        check.destroyForcibly();
        assertTrue(ended, "not done after " + MINUTES + " minutes");
        assertEquals("", Files.readString(failed));
        assertEquals(1, check.exitValue());
        String findings = Files.readString(said);
        for (String expected : List.of("pests/sparse.yaml file-too-large", "crops.yaml file-too-large",
                "weather/sparse.csv file-too-large", "figures/sparse.svg file-too-large",
                "figures/sparse-photo.png file-too-large", "issued/1999.json file-too-large",
                "chapters/sparse.md file-too-large", "sources.yaml file-too-large", "guides/list.yaml file-too-large",
                "active-ingredients.yaml file-too-large", "prices.yaml file-too-large",
                "pests/deep-brackets.yaml too-deep", "pests/deep-maps.yaml too-deep", "pests/deep-blocks.yaml too-deep",
                "figures/deep.svg svg-not-printable", "chapters/deep.md paragraph-too-long",
                "es/practices/deep.yaml too-deep", "practices/p" + (Folder.MOST_FILES - 1) + ".yaml unknown-key")) {
            assertTrue(saysOf(findings, expected.split(" ")), expected);
        }
        assertFalse(findings.contains("too-many-files"));
    }

    /** Whether one of the findings is of this file and this rule, whatever stands around them. */
    private static boolean saysOf(String findings, String[] expected) {
        return Stream.of(findings.split("\\}")).anyMatch(finding -> finding.contains("content/" + expected[0] + "\"")
                && finding.contains("\"" + expected[1] + "\""));
    }
}
