package org.fieldfold.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.fieldfold.source.Finding;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FolderTest {
    @TempDir
    Path temporary;
    private Base base;

    @BeforeEach
    void open() {
        base = new Base(temporary);
    }

    private List<String> rules() {
        return base.load().findings().stream().map(finding -> finding.span().place() + " "
                + finding.severity().word()
                + " " + finding.rule()).toList();
    }

    @Test
    void onlyAFolderThatIsNotThereIsAnException() {
        assertThrows(IOException.class, () -> BaseLoader.load(temporary.resolve("none")));
        assertThrows(IOException.class, () -> BaseLoader.load(base.folder().resolve("edition.yaml")));
    }

    @Test
    void aFolderWithoutAnEditionHasNoBase() throws IOException {
        Files.delete(base.folder().resolve("edition.yaml"));
        assertEquals(List.of("content/edition.yaml:1:1 error missing-file"), rules());
        assertTrue(base.load().base().isEmpty());
    }

    @Test
    void aSlipInTheEditionDoesNotHideTheRest() {
        base.with("edition.yaml", Base.EDITION + "colour: blue\n").with("practices/a.yaml", "name: A\n");
        assertEquals(List.of("content/edition.yaml:13:1 error unknown-key",
                "content/practices/a.yaml:1:1 error "
                + "missing-key"), rules().stream().distinct().toList());
        assertTrue(base.load().base().isPresent());
    }

    @Test
    void whatIsNotReadIsSaid() {
        base.with("notes.txt", "x").with("pests/x.yml", "x").with("pest/x.yaml", "x").with("es/pest/x.yaml",
                "x")
                .with("README.md", "x").with(".schema/pest.json", "{}");
        assertEquals(List.of("content/es/pest:1:1 info unexpected-file",
                "content/notes.txt:1:1 info unexpected-file",
                "content/pest:1:1 info unexpected-file", "content/pests/x.yml:1:1 info unexpected-file"),
                        rules());
        assertEquals("did you mean 'pests'?", base.load().findings().get(2).hint());
    }

    @Test
    void namesOfFilesAreIds() {
        base.with("practices/Row Cover.yaml", "x").with("practices/row_cover.yaml", "x")
                .with("practices/-a.yaml", "x");
        assertEquals(List.of("content/practices/-a.yaml:1:1 error bad-id",
                "content/practices/Row Cover.yaml:1:1 error "
                + "bad-id", "content/practices/row_cover.yaml:1:1 error bad-id"), rules());
    }

    @Test
    void linksThatLeaveAreRefused() throws IOException {
        Path outside = Files.writeString(temporary.resolve("outside.yaml"), "name: A\n");
        Path pests = Files.createDirectories(base.folder().resolve("practices"));
        Files.createSymbolicLink(pests.resolve("away.yaml"), outside);
        Files.createSymbolicLink(pests.resolve("nowhere.yaml"), temporary.resolve("none"));
        Files.createSymbolicLink(pests.resolve("itself.yaml"), pests.resolve("itself.yaml"));
        Files.createSymbolicLink(base.folder().resolve("weather"), temporary);
        base.with("practices/row-cover.yaml", "name: A\ntier: 2\nkind: row-cover\nsummary: B\n");
        Files.createSymbolicLink(pests.resolve("inside.yaml"), pests.resolve("row-cover.yaml"));
        assertEquals(List.of("content/practices/away.yaml:1:1 error link-leaves-folder",
                "content/practices/itself.yaml:1:1 error link-leaves-folder",
                "content/practices/nowhere.yaml:1:1 error link-leaves-folder",
                "content/weather:1:1 error link-leaves-folder"), rules());
        assertEquals(2, base.load().base().orElseThrow().practices().size());
    }

    @Test
    void tooLargeIsNotRead() {
        base.with("practices/a.yaml", "#".repeat((1 << 20) + 1)).with("weather/w.csv", new byte[(5 << 20)
                + 1]);
        assertEquals(List.of("content/practices/a.yaml:1:1 error file-too-large",
                "content/weather/w.csv:1:1 error file-too-large"), rules());
        // by its size; one that is read up to its limit is only known to be larger
        assertEquals(List.of("expected at most 1 MiB, found 2 MiB", "expected at most 5 MiB, found 6 MiB"),
                base.load().findings().stream().map(Finding::message).toList());
    }

    @Test
    void emptyFilesOfAllKinds() {
        base.with("practices/a.yaml", "").with("practices/b.yaml", "# only a comment\n").with("chapters/c.md",
                " \n")
                .with("crops.yaml", "\n");
        assertEquals(List.of("content/chapters/c.md:1:1 error empty-file",
                "content/crops.yaml:1:1 error empty-file",
                "content/practices/a.yaml:1:1 error empty-file",
                        "content/practices/b.yaml:1:1 error empty-file"), rules());
    }

    @Test
    void aBrokenEntryIsUnreadAndStillKnown() {
        base.with("pests/mite.yaml", "names: {common: mite\n").with("guides/bed.yaml", """
                title: Bed
                purpose: Find it
                audience: garden
                entries: [mite, mitee]
                scheme: accordion-4
                """);
        LoadedBase loaded = base.load();
        assertEquals(List.of("content/guides/bed.yaml:4:17 error unknown-reference",
                "content/pests/mite.yaml:1:8 error unclosed-bracket"), rules());
        assertEquals(List.of("mite"), List.copyOf(loaded.base().orElseThrow().unread().keySet()));
        assertEquals("did you mean 'mite'?", loaded.findings().stream().filter(finding -> finding.rule()
                .equals("unknown-reference")).map(Finding::hint).findFirst().orElseThrow());
    }

    @Test
    void aSlipInAListBreaksOnlyItsItem() {
        String pea = "  - {id: %s, name: pea, scientific: Pisum sativum, pollination: self, ink: "
                + "\"#2a5a1a\"}\n";
        base.with("crops.yaml", "crops:\n" + pea.formatted("pea") + pea.formatted("bean").replace("name: pea",
                "name: @")
                + pea.formatted("lentil").replace("self", "bees")).with("guides/bed.yaml", """
                title: Bed
                purpose: Find it
                audience: garden
                crops: [pea, bean, lentil, chickpea]
                scheme: accordion-4
                """);
        assertEquals(List.of("content/crops.yaml:3:22 error reserved-start",
                "content/crops.yaml:4:69 error unknown-word",
                "content/guides/bed.yaml:4:28 error unknown-reference"), rules());
        assertEquals(List.of("pea"), List.copyOf(base.load().base().orElseThrow().crops().keySet()));
    }

    @Test
    void aListThatCannotBeReadIsBlamedOnce() {
        base.with("crops.yaml", "\n").with("guides/bed.yaml", """
                title: Bed
                purpose: Find it
                audience: garden
                crops: [pea, bean]
                scheme: accordion-4
                """);
        assertEquals(List.of("content/crops.yaml:1:1 error empty-file"), rules());
    }

    @Test
    void inputsAreAllFilesThatWereRead() {
        base.with("weather/w.csv", "date,min,max\n").with("issued/2026.json", "{}");
        assertEquals(List.of("content/edition.yaml", "content/issued/2026.json", "content/weather/w.csv"),
                base.load().inputs().stream().map(InputFile::path).toList());
        // SHA-256 of '{}': FIPS 180-4, computed with coreutils' sha256sum
        assertEquals("44136fa355b3678a1146ad16f7e8649e94fb4fc21fe77e8310c060f61caaff8a",
                base.load().inputs().get(1).sha256());
    }
}
