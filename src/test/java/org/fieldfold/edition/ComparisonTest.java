package org.fieldfold.edition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.fieldfold.FolderCopy;
import org.fieldfold.content.BaseLoader;
import org.fieldfold.entry.Text;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How changes are told, to the letter. */
class ComparisonTest {
    @TempDir
    private Path folder;

    private Snapshot before;

    @BeforeEach
    void copyDemoBase() throws IOException {
        FolderCopy.of(Path.of("content"), folder, file -> file.toString().endsWith(".yaml")
                && !file.startsWith("content/figures"));
        before = snapshot();
    }

    private Snapshot snapshot() throws IOException {
        return Snapshot.of(BaseLoader.load(folder).base().orElseThrow());
    }

    private void edit(String file, String was, String is) throws IOException {
        Path path = folder.resolve(file);
        String text = Files.readString(path);
        assertTrue(text.contains(was), was + " in " + file);
        Files.writeString(path, text.replace(was, is));
    }

    private List<String> told() throws IOException {
        return told(before, snapshot());
    }

    /** A record as it may be one day, with components that nobody has words for. */
    public record Later(String name, Optional<Integer> hoursOfSun, List<String> drinks, Optional<Text> rest) {
    }

    @Test
    void aNewComponentJoinsByItselfAndIsToldAsItIsWritten() {
        Snapshot was = later(new Later("gnat", Optional.empty(), List.of("dew"), Optional.empty()));
        Snapshot is = later(new Later("gnat", Optional.of(3), List.of("dew", "sap"),
                Optional.of(Text.of("In the shade."))));
        assertEquals(List.of("OTHER gnat: drinks added: sap", "OTHER gnat: hours of sun added: 3",
                "OTHER gnat: rest added: 'In the shade.'"), told(was, is));
        assertEquals(List.of("OTHER gnat: drinks withdrawn: sap", "OTHER gnat: hours of sun withdrawn: 3",
                "OTHER gnat: rest withdrawn: 'In the shade.'"), told(is, was));
        assertTrue(was.get("pests", "x").orElseThrow().facts().canonical()
                .equals("{\"drinks\":[\"dew\"],\"name\":\"gnat\"}"), "what is absent leaves no trace");
    }

    private static Snapshot later(Later record) {
        return new Snapshot(new TreeMap<>(Map.of("pests", new TreeMap<>(Map.of("x", new Snapshot.Known(
                (Fact.Group) FactForm.of(record).orElseThrow(), Fact.group()))))));
    }

    private static List<String> told(Snapshot was, Snapshot is) {
        return Comparison.of("", was, "", is).changes().stream()
                .map(change -> change.group() + " " + change.sentence()).toList();
    }

    @Test
    void tellsInTheWordsOfTheTrade() throws IOException {
        String thrips = "pests/onion-thrips.yaml";
        edit(thrips, "    value: 3\n    per: 1\n    counted: thrips\n    monitoring: leaves",
                "    value: 2\n    per: 1\n    counted: thrips\n    monitoring: leaves");
        edit(thrips, "    source: ontario-onion-thrips\n    audiences", "    source: cornell-onion-thrips\n"
                + "    audiences");
        edit(thrips, "    sample: 20\n", "    sample: 30\n");
        edit(thrips, "  - tier: 3\n    material: abamectin\n    when: past the count\n"
                + "    against: [adult, larva]\n    stages: {from: 12, to: 47}\n    note: Second in turn.\n"
                + "    audiences: [field, tunnel]\n", "");
        edit(thrips, "spare: [minute-pirate-bug, green-lacewing]", "spare: [green-lacewing]");
        edit(thrips, "Slim splinter, yellow to brown", "Slim splinter, yellowish to brown");
        edit(thrips, "  - stage: larva\n    size: {from: 0.4, to: 1}",
                "  - stage: larva\n    size: {from: 0.5, to: 1}");
        edit("active-ingredients.yaml", "  - id: spinetoram\n    name: spinetoram\n    group: 5\n"
                + "    kind: fermentation\n    organic: prohibited\n    phi-days: {from: 1, to: 7}",
                "  - id: spinetoram\n    name: spinetoram\n    group: 5\n"
                + "    kind: fermentation\n    organic: prohibited\n    phi-days: {from: 3, to: 7}");
        Files.delete(folder.resolve("pests/swede-midge.yaml"));
        assertEquals(List.of("ENTRIES swede midge: withdrawn",
                "THRESHOLDS onion thrips: action threshold (onion, after that, field, tunnel) 3 -> 2 thrips "
                        + "per leaf; source Ontario Ministry of Agriculture -> Cornell University",
                "MATERIALS spinetoram: pre-harvest interval 1–7 -> 3–7 days",
                "MATERIALS onion thrips: abamectin withdrawn",
                "IDENTIFICATION onion thrips: larva size 0.4–1 -> 0.5–1 mm",
                "MONITORING onion thrips: monitoring (leaf, garden) sample size 20 -> 30",
                "MEASURES onion thrips: natural enemies to spare withdrawn: minute pirate bug",
                "WORDING onion thrips: adult looks 'Slim splinter, yellow to brown; narrow fringed wings.' -> "
                        + "'Slim splinter, yellowish to brown; narrow fringed wings.'"), told());
    }
}
