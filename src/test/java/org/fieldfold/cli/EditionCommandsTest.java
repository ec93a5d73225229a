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
import java.util.SortedMap;
import java.util.TreeMap;
import org.fieldfold.FolderCopy;
import org.fieldfold.edition.Ledger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.ObjectMapper;

/** The year as the specialist runs it, on the small sound base. */
class EditionCommandsTest {
    @TempDir
    private Path folder;

    private Path content;
    private LocalDate today = LocalDate.of(2027, 1, 14);

    private Desk.Run run(String... args) {
        List<String> all = new ArrayList<>(List.of(args));
        all.add("--content=" + content);
        return Desk.run((out, err) -> new Terminal(out, err, false, () -> 0, () -> today),
                all.toArray(String[]::new));
    }

    private Desk.Run issue() {
        return run("edition", "issue", "--out=" + folder.resolve("out"));
    }

    @BeforeEach
    void copySoundBase() throws IOException {
        content = folder.resolve("content");
        FolderCopy.of(Desk.SOUND, content);
    }

    private void edit(String file, String was, String is) throws IOException {
        Path path = content.resolve(file);
        String text = Files.readString(path);
        assertTrue(text.contains(was), was + " in " + file);
        Files.writeString(path, text.replace(was, is));
    }

    @Test
    void anIssuedYearIsBuiltAgainByteForByteOrNotAtAll() throws IOException {
        Desk.Run issued = issue();
        assertEquals(0, issued.status(), issued.out() + issued.err());
        assertTrue(Files.exists(content.resolve("issued/2027.json")));
        String manifest = Files.readString(folder.resolve("out/2027/manifest.json"));
        Desk.Run again = run("compile", "--out=" + folder.resolve("again"));
        assertEquals(0, again.status(), again.err());
        assertEquals(manifest, Files.readString(folder.resolve("again/2027/manifest.json")));

        edit("pests/potato-beetle.yaml", "value: 25", "value: 20");
        Desk.Run changed = run("compile", "--out=" + folder.resolve("again"));
        assertEquals(1, changed.status());
        assertTrue(changed.err().contains("[issued-facts-differ]"), changed.err());
        assertTrue(changed.err().contains("25 -> 20"), changed.err());
        assertEquals(1, run("compile", "--proof", "--out=" + folder.resolve("again")).status());
        assertEquals(manifest, Files.readString(folder.resolve("again/2027/manifest.json")), "stays");
    }

    @Test
    void anIssuedYearIsNeverIssuedAgain() {
        assertEquals(0, issue().status());
        Desk.Run other = run("edition", "issue", "2028", "--out=" + folder.resolve("out"));
        assertEquals(1, other.status());
        assertTrue(other.err().contains("expected 2027, the year of edition.yaml, found 2028"), other.err());
        Desk.Run again = issue();
        assertEquals(1, again.status());
        assertTrue(again.err().contains("was issued already on 2027-01-14"), again.err());
    }

    @Test
    void anotherFieldfoldThatGivesOtherBytesIsRefused() throws IOException {
        assertEquals(0, issue().status());
        Path file = content.resolve("issued/2027.json");
        Ledger ledger = Ledger.read(Files.readString(file)).orElseThrow().ledger();
        SortedMap<String, String> outputs = new TreeMap<>(ledger.outputs());
        outputs.put("handbook.en.html", "0".repeat(64));
        Files.writeString(file, new Ledger(2027, ledger.issuedOn(), "0.0.9", ledger.follows(), ledger.facts(),
                outputs).text());
        Desk.Run run = run("compile", "--out=" + folder.resolve("out"));
        assertEquals(1, run.status());
        assertTrue(run.err().contains("found 1 that differ: handbook.en.html [issued-bytes-differ]"),
                run.err());
        assertTrue(run.err().contains("build it with Fieldfold 0.0.9, which issued it"), run.err());
    }

    @Test
    void aLedgerThatWasChangedByHandIsFound() throws IOException {
        assertEquals(0, issue().status());
        edit("issued/2027.json", "\"issued-on\" : \"2027-01-14\"", "\"issued-on\" : \"2027-01-12\"");
        Desk.Run check = run("check");
        assertEquals(1, check.status());
        assertTrue(check.out().contains("content/issued/2027.json:1:1: error: expected a ledger as it was "
                + "written on 2027-01-12, found that it was changed since"), check.out());
        Desk.Run compare = run("edition", "compare", "2027");
        assertEquals(1, compare.status());
        assertTrue(compare.err().contains("expected the ledger of edition 2027 as it was written, found that "),
                compare.err());
        edit("issued/2027.json", "{", "");
        assertTrue(run("check").out().contains("[ledger-altered]"));
    }

    @Test
    void anOldLedgerThatWasSealedAnewIsFoundByTheNext() throws IOException {
        assertEquals(0, issue().status());
        assertEquals(0, run("edition", "open", "2028").status());
        today = LocalDate.of(2027, 12, 3);
        assertEquals(0, run("sign", "--by=rowan", "--carried-over", "potato-beetle", "squash-beetle",
                "ground-beetle", "clean-up", "low-tunnel", "rotation", "row-cover").status());
        edit("active-ingredients.yaml", "label-checked: 2026-11-10", "label-checked: 2027-11-10");
        Desk.Run second = issue();
        assertEquals(0, second.status(), second.err());
        assertEquals(0, run("check").status(), run("check").out());
        Path file = content.resolve("issued/2027.json");
        Ledger ledger = Ledger.read(Files.readString(file)).orElseThrow().ledger();
        Files.writeString(file, new Ledger(2027, LocalDate.of(2027, 1, 10), ledger.version(),
                ledger.follows(), ledger.facts(), ledger.outputs()).text());
        Desk.Run check = run("check");
        assertEquals(1, check.status());
        assertTrue(check.out().contains("content/issued/2027.json:1:1: error: expected the ledger that the one "
                + "of 2028 names, with the seal " + ledger.seal().substring(0, 12)), check.out());
    }

    @Test
    void tablesGoOutAndComeBack() throws IOException {
        Path csv = folder.resolve("thresholds.csv");
        assertEquals(0, run("table", "export", "thresholds", "--to=" + csv).status());
        assertEquals("no change\n", run("table", "import", "thresholds", csv.toString()).out());
        String entry = "pests/potato-beetle.yaml";
        String before = Files.readString(content.resolve(entry));
        Files.writeString(csv, Files.readString(csv).replace(",25,50,", ",20,50,"));
        assertEquals("pests/potato-beetle.yaml: potato-beetle/adults, value: 25 -> 20 (row 2)\n"
                + "1 change; --apply makes them\n", run("table", "import", "thresholds", csv.toString()).out());
        assertEquals(before, Files.readString(content.resolve(entry)), "nothing is touched without --apply");
        assertEquals(0, run("table", "import", "thresholds", csv.toString(), "--apply").status());
        assertEquals(before.replace("value: 25", "value: 20"), Files.readString(content.resolve(entry)));
        Files.writeString(csv, Files.readString(csv).replace(",20,50,", ",many,50,"));
        Desk.Run refused = run("table", "import", "thresholds", csv.toString(), "--apply");
        assertEquals(1, refused.status());
        assertTrue(refused.err().startsWith("fieldfold: row 2, column value: expected a number, found 'many'\n"),
                refused.err());
        assertEquals(3, run("table", "import", "materials", folder.resolve("none.csv").toString()).status());
        assertEquals(2, run("table", "export", "prices", "--to=" + csv).status());
    }

    @Test
    void theNextYearMakesEveryEntryDueAndComparesWithTheLast() throws Exception {
        assertEquals(0, issue().status());
        String before = Files.readString(content.resolve("edition.yaml"));
        Desk.Run open = run("edition", "open", "2028");
        assertEquals(0, open.status(), open.err());
        String after = Files.readString(content.resolve("edition.yaml"));
        assertEquals(before.lines().count() + 1, after.lines().count(), after);
        assertTrue(after.contains("year: 2028") && after.contains("re-read-after: 2027-01-15"), after);
        assertEquals(0, run("check").status(), run("check").out());

        today = LocalDate.of(2028, 1, 10);
        Desk.Run refused = issue();
        assertEquals(1, refused.status());
        assertTrue(refused.err().contains("expected every entry re-read and signed, found "), refused.err());
        assertTrue(refused.err().contains("potato-beetle"), refused.err());

        assertEquals("from edition 2027 to 2028 as it stands: no fact changed\n",
                run("edition", "compare").out());
        edit("pests/potato-beetle.yaml", "value: 25", "value: 20");
        Desk.Run compare = run("edition", "compare", "2027");
        assertTrue(compare.out().contains("from edition 2027 to 2028 as it stands: 1 change\n\nThresholds\n"
                + "  Colorado potato beetle: action threshold"), compare.out());
        assertTrue(compare.out().contains("25 -> 20 "), compare.out());
        Desk.Run compiled = run("compile", "--out=" + folder.resolve("next"));
        assertEquals(0, compiled.status(), compiled.err());
        String page = Files.readString(folder.resolve("next/2028/review/changes.html"));
        assertTrue(page.contains("<b>Colorado potato beetle</b>: action threshold (potato, before bloom) "
                + "25 → 20 adults per 50 stems</li>"), page);
        assertEquals(1, page.split("<li>", -1).length - 1);
        String book = Files.readString(folder.resolve("next/2028/handbook.en.html"));
        assertTrue(book.contains("act at 20, no longer at 25"), "new this year");
        assertFalse(Files.readString(folder.resolve("out/2027/handbook.en.html")).contains("New this year"));
        assertEquals("thresholds", new ObjectMapper().readTree(run("edition", "compare", "--format", "json")
                .out()).get("changes").get(0).get("group").asString());
        assertTrue(run("edition", "list").out().matches("(?s)2027  issued 2027-01-14  holds .*2028  open, "
                + "planned for 2028-01-15.* still due\n"), run("edition", "list").out());
    }

    /** It is the day that stands in the file which counts; nothing is claimed of an edition that never was. */
    @Test
    void aDayThatIsTooEarlyIsRefusedWithoutAnEditionThatWasIssued() {
        assertTrue(run("edition", "open", "2028").out().contains("edition 2027 was never issued here"));
        today = LocalDate.of(2027, 1, 15);
        assertEquals("fieldfold: expected a day after 2027-01-15, which edition.yaml has as 're-read-after': what was "
                + "signed until then is due again, found 2027-01-15; look at the date of this machine\n",
                run("sign", "potato-beetle", "--by", "rowan").err());
        today = LocalDate.of(2027, 1, 16);
        assertEquals(0, run("sign", "potato-beetle", "--by", "rowan").status());
    }

    @Test
    void signingChangesDateAndNameAndNothingElse() throws IOException {
        assertEquals(0, issue().status());
        String entry = "pests/potato-beetle.yaml";
        assertTrue(run("sign", "potato-beetle", "--by", "rowan").err()
                .contains("edition 2027 is issued"), "before the next is open");
        assertEquals(0, run("edition", "open", "2028").status());
        today = LocalDate.of(2027, 1, 15);
        assertTrue(run("sign", "potato-beetle", "--by", "rowan").err()
                .contains("expected a day after 2027-01-15, which edition.yaml has as 're-read-after'"));
        today = LocalDate.of(2027, 12, 3);
        assertTrue(run("sign", "potato-betle", "--by", "rowan").err()
                .contains("did you mean 'potato-beetle'?"));
        assertTrue(run("sign", "potato-beetle", "--by", "nobody").err()
                .contains("expected a reviewer of edition.yaml, one of rowan"));

        Path file = content.resolve(entry);
        String before = "\uFEFF" + Files.readString(file).replace("\n", "\r\n")
                .replace("revised: 2026-12-01", "revised:   \"2026-12-01\"  # in the hall");
        Files.writeString(file, before);
        assertEquals(0, run("sign", "potato-beetle", "--by", "rowan", "--carried-over").status());
        String carried = before.replace("2026-12-01", "2027-12-03")
                + "signed-facts: [0-9a-f]{12}\r\ncarried-over: true\r\n";
        assertEquals(carried, withoutHash(file));

        edit(entry, "value: 25", "value: 20");
        Desk.Run check = run("check");
        assertEquals(1, check.status());
        assertTrue(check.out().contains("[carried-over-changed]") && check.out().contains("25 -> 20"),
                check.out());
        assertTrue(run("sign", "potato-beetle", "--by", "rowan", "--carried-over").err()
                .contains("sign it without --carried-over"));
        assertEquals(0, run("sign", "potato-beetle", "--by", "rowan").status());
        assertEquals(before.replace("2026-12-01", "2027-12-03").replace("value: 25", "value: 20")
                + "signed-facts: [0-9a-f]{12}\r\n", withoutHash(file));
    }

    /** A signed file with the form of a hash in place of the hash, and without those of what stands with it. */
    private static String withoutHash(Path file) throws IOException {
        return Files.readString(file).replaceAll("signed-facts: [0-9a-f]{12}(?=\r?\n)",
                "signed-facts: [0-9a-f]{12}").replaceAll("signed-with: [a-z0-9, -]+\r?\n", "");
    }

    @Test
    void theWorklistSaysWhatIsDueAndWhyGravestFirst() throws IOException {
        assertEquals("edition 2027: 7 of 7 entries signed, 0 still to be signed; 7 signed by hand, so that a "
                + "later edit is not found\n", run("worklist").out());
        assertEquals(0, issue().status());
        assertEquals(0, run("edition", "open", "2028").status());
        edit("sources.yaml", "  - id: trials\n", "  - id: trials\n    superseded-by: moa\n");
        Files.writeString(content.resolve("offices/mill.yaml"), Files.readString(content
                .resolve("offices/mill.yaml"))
                + "requests:\n  - {entry: ground-beetle, what: =how to keep it}\n");
        edit("figures/squash-beetle-adult.yaml", "release: own-work\n", "");
        Desk.Run run = run("worklist");
        assertTrue(run.out().contains("      figure without release: squash-beetle-adult.yaml line 1, expected a "
                + "release for figure 'squash-beetle-adult', found none"), run.out());
        assertTrue(run.out().startsWith("edition 2028: 0 of 7 entries signed, 7 still to be signed\n\n"
                + "rowan (7)\n  potato-beetle  [to sign]  last read 2026-12-01\n      label not checked this winter: "
                + "acetamiprid, bifenthrin, spinosad, last on 2026-11-10\n"), run.out());
        assertTrue(run.out().contains("      source superseded: "), run.out());
        assertTrue(run.out().contains("      asked for by an office: "), run.out());
        assertTrue(run.out().indexOf("ground-beetle  [to sign]") < run.out().indexOf("clean-up  [to sign]"),
                run.out());
        String csv = run("worklist", "--format", "csv").out();
        assertTrue(csv.startsWith("risk,reviewer,entry,name,to sign,last read,reason,detail,file\r\n1,rowan,"
                + "potato-beetle,Colorado potato beetle,yes,2026-12-01,label not checked this winter,"), csv);
        assertFalse(csv.contains(",="), csv);
        today = LocalDate.of(2027, 12, 3);
        assertEquals(0, run("sign", "clean-up", "rotation", "--by", "rowan").status());
        assertTrue(run("worklist", "--by", "rowan").out().startsWith("edition 2028: 2 of 7 entries signed"));
    }

    @Test
    void refusalsSayWhatToDo() {
        Desk.Run back = run("edition", "open", "2027");
        assertEquals(1, back.status());
        assertTrue(back.err().contains("expected a year after 2027"), back.err());
        Desk.Run none = run("edition", "compare", "2020");
        assertEquals(1, none.status());
        assertTrue(none.err().contains("expected the ledger of edition 2020, found none at all"), none.err());
        today = LocalDate.of(2030, 1, 1);
        assertTrue(issue().err().contains("found that it ended on 2028-01-31"), issue().err());
        assertFalse(Files.exists(content.resolve("issued")));
    }
}
