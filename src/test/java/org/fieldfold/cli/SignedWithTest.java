package org.fieldfold.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.fieldfold.FolderCopy;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A signature covers what stands with the entry on paper: its materials' waiting times, its drawings. */
class SignedWithTest {
    private static final String[] ALL = {"potato-beetle", "squash-beetle", "ground-beetle", "clean-up", "low-tunnel",
        "rotation", "row-cover"};

    @TempDir
    private Path folder;

    private Path content;
    private LocalDate today = LocalDate.of(2026, 12, 20);

    private Desk.Run run(String... args) {
        List<String> all = new ArrayList<>(List.of(args));
        all.add("--content=" + content);
        return Desk.run((out, err) -> new Terminal(out, err, false, () -> 0, () -> today),
                all.toArray(String[]::new));
    }

    private Desk.Run sign(String... more) {
        List<String> all = new ArrayList<>(List.of("sign", "--by=rowan"));
        all.addAll(List.of(more));
        return run(all.toArray(String[]::new));
    }

    private Desk.Run issue() {
        return run("edition", "issue", "--out=" + folder.resolve("out"));
    }

    private void edit(String file, String was, String is) throws IOException {
        Path path = content.resolve(file);
        String text = Files.readString(path);
        assertTrue(text.contains(was), was + " in " + file);
        Files.writeString(path, text.replaceFirst(Pattern.quote(was), Matcher.quoteReplacement(is)));
    }

    @BeforeEach
    void signedBase() throws IOException {
        content = folder.resolve("content");
        FolderCopy.of(Desk.SOUND, content);
        assertEquals(0, sign(ALL).status());
    }

    private List<String> due() {
        return run("worklist").out().lines().filter(line -> line.contains("[to sign]"))
                .map(line -> line.strip().split(" ")[0]).toList();
    }

    /** Whoever edits an entry of the demo, or what stands with it, signs it again: {@code sign ID --by REVIEWER}. */
    @Test
    void theDemoIsSignedAsItStands() {
        String worklist = Desk.run((out, err) -> new Terminal(out, err, false, () -> 0, () -> today), "worklist",
                "--content=content").out();
        assertTrue(worklist.startsWith("edition 2027: 56 of 56 entries signed, 0 still to be signed\n"), worklist);
    }

    /** Every entry of the demo, with other line ends and a byte-order mark in front of every second one. */
    @Test
    void signingAnyEntryOfTheDemoLeavesAllOtherBytes() throws IOException {
        content = folder.resolve("demo");
        FolderCopy.of(Path.of("content"), content);
        Map<Path, String> before = new TreeMap<>();
        for (String kind : List.of("pests", "natural-enemies", "practices")) {
            try (Stream<Path> files = Files.list(content.resolve(kind))) {
                for (Path file : files.sorted().toList()) {
                    String text = (before.size() % 2 == 0 ? "\uFEFF" : "")
                            + Files.readString(file).replace("\n", "\r\n").replaceFirst("revised: ", "revised:   ");
                    Files.writeString(file, text);
                    before.put(file, text);
                }
            }
        }
        List<String> sign = new ArrayList<>(List.of("sign", "--by=dalia"));
        before.keySet().forEach(file -> sign.add(file.getFileName().toString().replace(".yaml", "")));
        Desk.Run signed = run(sign.toArray(String[]::new));
        assertEquals(0, signed.status(), signed.err());
        String written = "(?m)^(revised: +|reviser: |signed-facts: |signed-with: )[^\r\n]*";
        for (Map.Entry<Path, String> file : before.entrySet()) {
            String after = Files.readString(file.getKey());
            assertTrue(after.contains("revised:   2026-12-20\r\n") && after.contains("reviser: dalia\r\n"), after);
            assertEquals(file.getValue().replaceAll(written, "$1"), after.replaceAll(written, "$1"),
                    file.getKey().toString());
        }
    }

    @Test
    void theNamesStandInTheFileAndNowhereElse() throws IOException {
        assertTrue(Files.readString(content.resolve("pests/potato-beetle.yaml")).matches("(?s).*\nsigned-with: "
                + "acetamiprid [0-9a-f]{8}, bifenthrin [0-9a-f]{8}, drawing potato-beetle-adult [0-9a-f]{8}, "
                + "(drawing [a-z-]+ [0-9a-f]{8}, )*spinosad [0-9a-f]{8}\n.*"),
                Files.readString(content.resolve("pests/potato-beetle.yaml")));
        assertFalse(Files.readString(content.resolve("practices/rotation.yaml")).contains("signed-with"));
        assertEquals(List.of(), due());
    }

    @Test
    void aWaitingTimeThatChangedMakesItsEntriesDueAndNoOther() throws IOException {
        edit("active-ingredients.yaml", "phi-days: {from: 7, to: 7}", "phi-days: {from: 14, to: 14}");
        assertEquals(List.of("potato-beetle"), due());
        assertTrue(run("worklist").out().contains("      a material, price or drawing changed: acetamiprid, since it "
                + "was signed on 2026-12-20\n"), run("worklist").out());
        Desk.Run refused = issue();
        assertEquals(1, refused.status());
        assertTrue(refused.err().contains("found 1 due: potato-beetle (acetamiprid changed since it was signed)"),
                refused.err());
        assertEquals(0, sign("potato-beetle").status());
        assertEquals(List.of(), due());
        assertEquals(0, issue().status());
    }

    @Test
    void whereTheLastEditionPrintedItAsItWasSignedTheWorklistSaysFromWhatToWhat() throws IOException {
        assertEquals(0, issue().status());
        assertEquals(0, run("edition", "open", "2028").status());
        today = LocalDate.of(2027, 12, 3);
        assertEquals(0, sign(ALL).status());
        edit("active-ingredients.yaml", "phi-days: {from: 7, to: 7}", "phi-days: {from: 14, to: 14}");
        assertTrue(run("worklist").out().contains("a material, price or drawing changed: acetamiprid: pre-harvest "
                + "interval 7 -> 14 days, since it was signed on 2027-12-03\n"), run("worklist").out());
        Desk.Run untrue = sign("potato-beetle", "--carried-over");
        assertEquals(1, untrue.status());
        assertTrue(untrue.err().contains("expected 'potato-beetle' unchanged since edition 2027, found acetamiprid: "
                + "pre-harvest interval 7 -> 14 days; "), untrue.err());
        assertEquals(0, sign("squash-beetle", "--carried-over").status());
        assertEquals(0, sign("potato-beetle").status());
        edit("pests/potato-beetle.yaml", "reviser: rowan", "reviser: rowan\ncarried-over: true");
        assertTrue(run("check").out().contains("[carried-over-changed]"), "a statement written by hand is held too");
    }

    @Test
    void aDrawingThatChangedMakesItsEntryDue() throws IOException {
        edit("figures/potato-beetle-adult.yaml", "caption: ", "caption: new ");
        assertEquals(List.of("potato-beetle"), due());
    }

    /** A label that was looked at again and says the same, and a use lost on another crop, are no change here. */
    @Test
    void whatTheEntryDoesNotPrintIsNoChange() throws IOException {
        edit("active-ingredients.yaml", "label-checked: 2026-11-10\n    sources: [moa]",
                "label-checked: 2026-12-24\n    sources: [moa, trials]");
        edit("active-ingredients.yaml", "restricted-use: true", "restricted-use: true\n    lost-uses: [squash]");
        edit("figures/potato-beetle-adult.yaml", "credit: ", "credit: the studio of ");
        assertEquals(List.of(), due());
        edit("active-ingredients.yaml", "lost-uses: [squash]", "lost-uses: [squash, potato]");
        assertEquals(List.of("potato-beetle"), due());
    }
}
