package org.fieldfold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.fieldfold.source.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A drawing that has the form of one and does not print is said at its file, and nothing is built. */
class FigureProofTest {
    private static final String BLANK = ":1:1: expected a drawing that leaves ink on paper, found none that is seen";
    private static final List<String> SAID = List.of("content/figures/leek-moth-adult.svg" + BLANK,
            "content/figures/onion-maggot-adult.svg" + BLANK);

    @TempDir
    Path folder;

    private static List<String> said(List<Finding> findings) {
        return findings.stream().filter(finding -> finding.rule().equals("figure-unprintable"))
                .map(finding -> finding.span().place() + ": " + finding.message())
                .toList();
    }

    @Test
    void beforeAnySheet() throws IOException {
        Path content = FolderCopy.of(Path.of("content"), folder.resolve("content"));
        Path out = folder.resolve("out");
        String head = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 40 20\">";
        Files.writeString(content.resolve("figures/leek-moth-adult.svg"), head + "<circle cx=\"60\" r=\"9\"/></svg>");
        Files.writeString(content.resolve("figures/onion-maggot-adult.svg"), head
                + "<g transform=\"scale(1000000)\">".repeat(7) + "<path d=\"M1 0h9v9\"/>" + "</g>".repeat(7)
                + "</svg>");
        assertEquals(List.of(), said(Compiler.check(content, Optional.empty()).findings()));
        for (boolean proof : new boolean[] {false, true}) {
            // the second build with the same bytes takes the answer from the first
            Compiler.Built built = Compiler.compile(new Compiler.Request(content, out, Optional.empty(), proof, false),
                    step -> { });
            assertEquals(SAID, said(built.findings()));
            assertEquals(Optional.empty(), built.folder());
            Packs.Packed packed = Packs.pack(new Packs.Request(content, out, Optional.empty(), proof,
                    OfficeChoice.of("..", "1/1"), false), (done, made, of) -> { }, () -> false);
            assertEquals(SAID, said(packed.findings()));
        }
        assertFalse(Files.exists(out.resolve("2027")) || Files.exists(out.resolve("packs-2027")));
    }
}
