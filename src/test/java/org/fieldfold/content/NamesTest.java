package org.fieldfold.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.fieldfold.Outside;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Names that collide, name a device, or lead out of the content base. */
class NamesTest {
    private static final String PRACTICE = "name: A\ntier: 2\nkind: row-cover\nsummary: B\n";

    @TempDir
    Path temporary;
    private Base base;

    @BeforeEach
    void open() {
        base = new Base(temporary);
    }

    private List<String> rules() {
        return base.load().findings().stream().map(finding -> finding.span().place() + " " + finding.rule()).toList();
    }

    @Test
    void namesThatSomeMachinesTakeForOne() {
        base.with("practices/row-cover.yaml", PRACTICE).with("practices/Row-Cover.yaml", PRACTICE)
                .with("practices/m\u00fcsli.yaml", PRACTICE).with("practices/mu\u0308sli.yaml", PRACTICE)
                .with("practices/stra\u00dfe.yaml", PRACTICE).with("practices/STRASSE.yaml", PRACTICE)
                .with("readme.md", "x").with("README.md", "x").with("es/Practices/a.yaml", "x")
                .with("es/practices/a.yaml", "# none\n");
        assertEquals(List.of("content/es/Practices:1:1 unexpected-file", "content/es/practices:1:1 colliding-id",
                "content/practices/Row-Cover.yaml:1:1 bad-id", "content/practices/STRASSE.yaml:1:1 bad-id",
                "content/practices/mu\u0308sli.yaml:1:1 bad-id", "content/practices/m\u00fcsli.yaml:1:1 bad-id",
                "content/practices/m\u00fcsli.yaml:1:1 colliding-id",
                "content/practices/row-cover.yaml:1:1 colliding-id",
                "content/practices/stra\u00dfe.yaml:1:1 bad-id", "content/practices/stra\u00dfe.yaml:1:1 colliding-id",
                "content/readme.md:1:1 colliding-id", "content/readme.md:1:1 unexpected-file"), rules());
    }

    @Test
    void entriesOfOneId() {
        base.with("practices/mite.yaml", PRACTICE).with("chapters/mite.md", "# A\n\nB\n")
                .with("guides/mite.yaml", "title: Bed\npurpose: Find it\naudience: garden\nscheme: accordion-4\n");
        assertEquals(List.of("content/practices/mite.yaml:1:1 colliding-id"), rules());
    }

    @Test
    void idsThatDifferInNothingThatCounts() {
        base.with("crops.yaml", "crops:\n" + crop("pea") + crop("Pea") + crop("PEA") + crop("p\u00e9a")
                + crop("pe\u0301a") + crop("pea"));
        assertEquals(List.of("content/crops.yaml:3:10 bad-id", "content/crops.yaml:4:10 bad-id",
                "content/crops.yaml:5:10 bad-id", "content/crops.yaml:6:10 bad-id",
                "content/crops.yaml:7:10 colliding-id"), rules());
    }

    private static String crop(String id) {
        return "  - {id: " + id + ", name: pea, scientific: Pisum sativum, pollination: self, ink: \"#2a5a1a\"}\n";
    }

    @Test
    void namesOfDevices() {
        base.with("practices/con.yaml", PRACTICE).with("practices/aux.yaml", PRACTICE)
                .with("figures/nul.svg", "x").with("chapters/com1.md", "# A\n").with("es/practices/prn.yaml", "x")
                .with("weather/lpt9.csv", "x").with("practices/console.yaml", PRACTICE);
        assertEquals(List.of("content/chapters/com1.md:1:1 bad-id", "content/es/practices/prn.yaml:1:1 bad-id",
                "content/figures/nul.svg:1:1 bad-id", "content/practices/aux.yaml:1:1 bad-id",
                "content/practices/con.yaml:1:1 bad-id", "content/weather/lpt9.csv:1:1 bad-id"), rules());
        assertEquals(List.of("console"), List.copyOf(base.load().base().orElseThrow().practices().keySet()));
    }

    /** An id is looked up among those that were read, and never made into a path. */
    @Test
    void idsThatClimb() throws IOException {
        Files.writeString(temporary.resolve("outside.yaml"), PRACTICE);
        List<String> climbing = List.of("../../outside", "../outside.yaml", "/etc/passwd", "C:\\x", "\\\\host\\x",
                "..", ".", "con", "file:///etc/passwd", "%2e%2e/outside", "..%2foutside", "a/../../b");
        for (String id : climbing) {
            String quoted = "'" + id + "'";
            base.with("guides/bed.yaml", "title: Bed\npurpose: Find it\naudience: garden\ncrops: [" + quoted
                    + "]\nentries: [" + quoted + "]\nscheme: accordion-4\n")
                    .with("offices/mill.yaml", "name: Mill\ncounty: Mill\ncontact: {phone: 555-0100, email: "
                            + "a@b.example, hours: always}\nlanguages: [en]\npaper: letter\nstation: " + quoted
                            + "\nguides: [" + quoted + "]\n")
                    .with("chapters/a.md", "# A\n\nSee [it](<entry:" + id + ">).\n");
            List<String> rules = rules();
            assertEquals(5, rules.stream().filter(rule -> rule.endsWith(" unknown-reference")).count(),
                    id + ": " + rules);
        }
    }

    @Test
    void linksThatLeaveOrTurnInACircle() throws IOException {
        base.with("practices/a.yaml", PRACTICE).with("es/practices/a.yaml", "# none\n");
        Path practices = base.folder().resolve("practices");
        Files.createSymbolicLink(practices.resolve("loop"), base.folder());
        Files.createSymbolicLink(practices.resolve("up.yaml"), Path.of("../../content/../outside.yaml"));
        Files.writeString(temporary.resolve("outside.yaml"), PRACTICE);
        Files.createSymbolicLink(practices.resolve("passwd.yaml"), Path.of("/etc/passwd"));
        Files.createSymbolicLink(base.folder().resolve("es/pests"), base.folder().resolve("es"));
        Files.createSymbolicLink(base.folder().resolve("fr"), Path.of("/etc"));
        Files.createSymbolicLink(base.folder().resolve("one"), base.folder().resolve("two"));
        Files.createSymbolicLink(base.folder().resolve("two"), base.folder().resolve("one"));
        assertEquals(List.of("content/es/pests:1:1 link-leaves-folder", "content/fr:1:1 link-leaves-folder",
                "content/one:1:1 link-leaves-folder", "content/practices/loop:1:1 link-leaves-folder",
                "content/practices/passwd.yaml:1:1 link-leaves-folder",
                "content/practices/up.yaml:1:1 link-leaves-folder", "content/two:1:1 link-leaves-folder"), rules());
    }

    /** Nobody writes into it: whoever opened it would wait for ever. */
    @Test
    void aPipeIsNotOpened() throws IOException, InterruptedException {
        Outside.need("mkfifo");
        base.with("practices/a.yaml", PRACTICE).with("issued/2026.json", "{}");
        Path pipe = base.folder().resolve("practices/pipe.yaml");
        assertEquals(0, Outside.run("mkfifo", pipe.toString()).status());
        assertEquals(0, Outside.run("mkfifo", base.folder().resolve("issued/2025.json").toString()).status());
        Files.createSymbolicLink(base.folder().resolve("practices/to-pipe.yaml"), pipe);
        assertEquals(List.of("content/issued/2025.json:1:1 unexpected-file",
                "content/practices/pipe.yaml:1:1 unexpected-file",
                "content/practices/to-pipe.yaml:1:1 link-leaves-folder"),
                assertTimeoutPreemptively(Duration.ofMinutes(5), this::rules));
        assertTrue(base.load().base().isPresent());
    }
}
