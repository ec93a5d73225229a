package org.fieldfold.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.fieldfold.FolderCopy;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** One winter on a copy of the demo base, command by command, from one issued edition to the next. */
class WinterTest {
    private static final Path DEMO = Path.of("content");

    @TempDir
    private Path folder;

    private Path content;
    private LocalDate today = LocalDate.of(2027, 1, 15);

    private Desk.Run run(String... args) {
        List<String> all = new ArrayList<>(List.of(args));
        all.add("--content=" + content);
        return Desk.run((out, err) -> new Terminal(out, err, false, () -> 0, () -> today),
                all.toArray(String[]::new));
    }

    private Desk.Run issue() {
        return run("edition", "issue", "--out=" + folder.resolve("out"));
    }

    /** The demo base with all entries, but one guide, one paper, one language: a winter in seconds. */
    private void copyDemoBase() throws IOException {
        content = FolderCopy.of(DEMO, folder.resolve("content"), file -> !file.startsWith(DEMO.resolve("es")));
        Path edition = content.resolve("edition.yaml");
        Files.writeString(edition, Files.readString(edition)
                .replaceAll("papers: \\[.*\\]", "papers: [letter]")
                .replaceAll("languages: \\[.*\\]", "languages: [en]"));
        for (String kind : List.of("guides", "offices")) {
            try (Stream<Path> files = Files.list(content.resolve(kind))) {
                for (Path file : files.toList()) {
                    if (!file.endsWith("onion-family.yaml")) {
                        Files.delete(file);
                    } else {
                        Files.writeString(file, Files.readString(file)
                                .replaceAll("(?m)^papers: .*", "papers: [letter]"));
                    }
                }
            }
        }
    }

    private void edit(String file, String was, String is) throws IOException {
        Path path = content.resolve(file);
        String text = Files.readString(path);
        assertEquals(1, text.split(Pattern.quote(was), -1).length - 1, was + " once in " + file);
        Files.writeString(path, text.replace(was, is));
    }

    private List<String> due() throws IOException {
        List<String> ids = new ArrayList<>();
        for (String kind : List.of("pests", "natural-enemies", "practices")) {
            try (Stream<Path> files = Files.list(content.resolve(kind))) {
                files.map(file -> file.getFileName().toString().replace(".yaml", "")).sorted()
                        .forEach(ids::add);
            }
        }
        return ids;
    }

    @Test
    void fromOneEditionToTheNext() throws IOException {
        copyDemoBase();
        Desk.Run first = issue();
        assertEquals(0, first.status(), first.err());

        assertEquals(0, run("edition", "open", "2028").status());
        today = LocalDate.of(2027, 12, 3);
        List<String> entries = due();
        Desk.Run worklist = run("worklist");
        assertTrue(worklist.out().startsWith("edition 2028: 0 of " + entries.size() + " entries signed"),
                worklist.out().lines().findFirst().orElse(""));
        assertTrue(worklist.out().contains("label not checked this winter: abamectin, insecticidal soap, "),
                worklist.out());

        // a threshold with its source, a caution, a look, and words
        String thrips = "pests/onion-thrips.yaml";
        edit(thrips, "    value: 3\n    per: 1\n    counted: thrips\n    monitoring: leaves",
                "    value: 2\n    per: 1\n    counted: thrips\n    monitoring: leaves");
        edit(thrips, "  - pocket: Thrips outlive what is repeated. Two treatments of one group at most, then "
                + "change.", "  - pocket: Thrips outlive what is repeated. One treatment of a group, then change.");
        edit("pests/leek-moth.yaml", "    every-days: 7", "    every-days: 5");
        edit("pests/codling-moth.yaml", "kind: moth", "kind: small moth");
        // a material is withdrawn; the check says where it is still told of, and there it is taken out
        edit("active-ingredients.yaml", "  - id: hexythiazox\n", "  - id: hexythiazox\n    withdrawn: 2028\n");
        Desk.Run check = run("check");
        assertEquals(1, check.status());
        assertTrue(check.out().contains("content/pests/european-red-mite.yaml:") && check.out()
                .contains("found hexythiazox, withdrawn from 2028 [material-withdrawn]"), check.out());
        Path mite = content.resolve("pests/european-red-mite.yaml");
        Files.writeString(mite, Files.readString(mite)
                .replaceFirst("  - tier: 3\n    material: hexythiazox\n(?:    .*\n)+", ""));
        // lines that move and words that are broken otherwise are no change
        edit(thrips, "overwinters: field-edge\n", "\n\n# moved\noverwinters:   field-edge\n");

        Desk.Run refused = issue();
        assertEquals(1, refused.status());
        assertTrue(refused.err().contains("expected every entry re-read and signed, found "
                + entries.size() + " due"), refused.err());

        List<String> changed = List.of("onion-thrips", "leek-moth", "codling-moth",
                "european-red-mite");
        Desk.Run untrue = run("sign", "onion-thrips", "--by", "avery", "--carried-over");
        assertEquals(1, untrue.status());
        assertTrue(untrue.err().contains("expected 'onion-thrips' unchanged since edition 2027, found "
                + "action threshold"), untrue.err());
        byte[] before = Files.readAllBytes(content.resolve(thrips));
        List<String> signChanged = new ArrayList<>(List.of("sign", "--by=imre"));
        signChanged.addAll(changed);
        assertEquals(0, run(signChanged.toArray(String[]::new)).status());
        String hashes = "signed-facts: [0-9a-f]{12}\nsigned-with: [a-z0-9, -]+\n";
        String signedThrips = Files.readString(content.resolve(thrips));
        assertTrue(Pattern.compile(hashes).matcher(signedThrips).find(), signedThrips);
        assertEquals(new String(before, StandardCharsets.UTF_8)
                .replaceFirst("revised: [0-9-]+", "revised: 2027-12-03")
                .replaceFirst("reviser: [a-z]+", "reviser: imre").replaceFirst(hashes, ""),
                signedThrips.replaceFirst(hashes, ""));
        List<String> sign = new ArrayList<>(List.of("sign", "--by=avery", "--carried-over"));
        entries.stream().filter(id -> !changed.contains(id)).forEach(sign::add);
        Desk.Run signed = run(sign.toArray(String[]::new));
        assertEquals(0, signed.status(), signed.err());

        Path labels = content.resolve("active-ingredients.yaml");
        Files.writeString(labels, Files.readString(labels)
                .replaceAll("label-checked: [0-9-]+", "label-checked: 2027-11-20"));

        // an edit after signing: found, refused, signed again; a comment and a moved line are none
        edit("pests/leek-moth.yaml", "    every-days: 5", "    every-days: 4");
        edit("pests/codling-moth.yaml", "kind: small moth", "kind: small moth  # as the trials call it\n");
        Desk.Run afterwards = run("worklist");
        assertTrue(afterwards.out().startsWith("edition 2028: " + (entries.size() - 1) + " of "
                + entries.size() + " entries signed, 1 still to be signed\n"), afterwards.out());
        assertTrue(afterwards.out().contains("  leek-moth  [to sign]  last read 2027-12-03\n      changed since "
                + "signed: signed 2027-12-03 by imre\n"), afterwards.out());
        assertFalse(afterwards.out().contains("codling-moth  [to sign]"), afterwards.out());
        Desk.Run unsigned = issue();
        assertEquals(1, unsigned.status());
        assertTrue(unsigned.err().contains("found 1 due: leek-moth (changed since it was signed)"),
                unsigned.err());
        assertEquals(0, run("sign", "leek-moth", "--by=imre").status());

        // a price moves a threshold by itself
        edit("prices.yaml", "value: 12, unit: $ per bushel", "value: 8, unit: $ per bushel");
        // C = 76.5, I = 1, D = 6, K = 0.85, share 0.8: 61.2 / 5.1 V is 1 at V = 12 and 1.5 at V = 8
        String moved = run("worklist").out();
        assertTrue(moved.contains("price moved the threshold: 'fresh-cuts' printed as 1, today's prices give 1.5 "
                + "(+50 %); apples, graded, at the packing house 12 -> 8 $ per bushel since edition 2027\n"),
                moved);
        edit("prices.yaml", "value: 8, unit: $ per bushel", "value: 12, unit: $ per bushel");

        Desk.Run second = issue();
        assertEquals(0, second.status(), second.err());
        assertFalse(second.out().contains("by hand"), second.out());

        Desk.Run compare = run("edition", "compare", "2027", "2028", "--format", "json");
        JsonNode changes = JsonMapper.shared().readTree(compare.out()).get("changes");
        List<String> told = new ArrayList<>();
        changes.forEach(change -> told.add(change.get("group").asString() + ": "
                + change.get("sentence").asString()));
        List<String> expected = List.of(
                "thresholds: onion thrips: action threshold (onion, after that, field, tunnel) 3 -> 2 thrips "
                        + "per leaf",
                "materials: hexythiazox: withdrawn from 2028",
                "materials: European red mite: hexythiazox withdrawn",
                "cautions: onion thrips: caution 'Thrips outlive what is repeated. Two treatments of one "
                        + "group at most, then change.' -> 'Thrips outlive what is repeated. One treatment of a "
                        + "group, then change.'",
                "identification: codling moth: names, kind moth -> small moth",
                "monitoring: leek moth: monitoring (trap) looked at every 7 -> 4 days");
        assertEquals(String.join("\n", expected), String.join("\n", told));

        String page = Files.readString(folder.resolve("out/2028/review/changes.html"));
        List<String> lines = new ArrayList<>();
        Matcher item = Pattern.compile("<li><b>(.*?)</b>: (.*?)</li>").matcher(page);
        while (item.find()) {
            lines.add(item.group(1) + ": " + item.group(2).replace(" → ", " -> ").replace("&#39;", "'"));
        }
        assertEquals(expected.stream().map(line -> line.replaceFirst("^[a-z]+: ", "")).toList(), lines);

        assertTrue(run("edition", "list").out().matches("(?s)2027  issued 2027-01-15 .*\n2028  issued "
                + "2027-12-03 .*avery " + (entries.size() - 4) + ", imre 4.*\n"), run("edition", "list").out());
        assertEquals(0, run("check").status());
    }
}
