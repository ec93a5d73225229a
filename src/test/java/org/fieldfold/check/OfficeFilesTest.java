package org.fieldfold.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.fieldfold.content.BaseLoader;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Office;
import org.fieldfold.entry.Placed;
import org.fieldfold.source.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What stands in an office's file is checked like all else, and can be nothing but an office's. */
class OfficeFilesTest {
    private static final String NOTE = "notes:\n  - entry: potato-beetle\n    text: Seen by the mill.\n"
            + "    by: Rowan Ash\n    date: 2026-09-01\n";
    @TempDir
    private Path folder;

    private List<Finding> found(String more) throws IOException {
        Path content = Sample.laid(Sample.RESOURCES.resolve("base"), folder).content();
        Path office = content.resolve("offices/mill.yaml");
        Files.writeString(office, Files.readString(office) + more, StandardCharsets.UTF_8);
        return BaseLoader.load(content).findings();
    }

    @ParameterizedTest
    @ValueSource(strings = {"thresholds: [{metric: mean-per-unit, value: 9}]", "controls: [{tier: 1}]",
        "cautions: [None here.]", "order: [3, 2, 1]", "stages: []", "rates: {spinosad: 1}",
                "materials: [spinosad]",
        "tiers: 3", "notice: none", "valid-until: 2030-01-01"})
    void noOtherKeyGetsIn(String line) throws IOException {
        List<Finding> found = found(line + "\n");
        assertEquals(List.of("unknown-key"), found.stream().map(Finding::rule).toList(), found.toString());
        assertEquals("error", found.get(0).severity().word());
    }

    @ParameterizedTest
    @ValueSource(strings = {"tier: 1", "before: controls", "threshold: 9", "caution: none", "mark: none"})
    void aNoteHasNoOtherKeyEither(String line) throws IOException {
        assertEquals(List.of("unknown-key"), found(NOTE + "    " + line + "\n").stream().map(Finding::rule)
                .toList());
    }

    @ParameterizedTest
    @ValueSource(strings = {"by", "date", "text", "entry"})
    void aNoteIsWholeOrRefused(String key) throws IOException {
        assertEquals(List.of("missing-key"), found(NOTE.replaceFirst("(?m)^ {2}[ -] " + key + ": .*\n",
                key.equals("entry") ? "  -\n" : "")).stream().map(Finding::rule).toList());
    }

    @Test
    void idsAreKnown() throws IOException {
        assertEquals(List.of("unknown-reference", "unknown-reference"), found("leave-out: [potatoe-beetle]\n"
                + NOTE.replace("entry: potato", "entry: tomato")).stream().map(Finding::rule).toList());
    }

    /** Texts that change a fact in other words than the samples; the last are what offices do write. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "A dozen is nothing; act from 3 beetles a plant on.                  | true",
        "Half of the plants with eggs is early enough, that is 50 percent.   | true",
        "Here 4 in 10 plants are enough.                                     | true",
        "Our threshold is higher.                                            | true",
        "Spinosad has done well here.                                        | true",
        "Mix 2 tbsp to the gallon.                                           | true",
        "The label is too careful; enter after 2 hours.                      | true",
        "Trap crops do not work here, skip them.                             | true",
        "En vez de contar, mire desde lejos.                                 | true",
        "Actúe con 3 por planta.                                             | true",
        "First seen on 3 June 2026, in two fields by the river.              | false",
        "Flies a week later up here. Our trap hangs at the gate; ask for the count. | false",
        "Bring a beetle in a jar; we tell you on Tuesdays, 9 to 4.           | false",
        "Llega una semana después. Traiga una hoja el martes.                | false"})
    void aNoteThatChangesAFactIsFound(String words, boolean changes) throws IOException {
        Path content = Sample.laid(Sample.RESOURCES.resolve("base"), folder).content();
        Path office = content.resolve("offices/mill.yaml");
        Files.writeString(office, Files.readString(office) + NOTE.replace("Seen by the mill.",
                '"' + words + '"'),
                StandardCharsets.UTF_8);
        List<Finding> found = new ArrayList<>();
        ContentBase base = BaseLoader.load(content).base().orElseThrow();
        new LocalNoteFacts().check(base, base.edition().value().issued(), found::add);
        assertEquals(changes, !found.isEmpty(), found.toString());
    }

    /** 'All three kinds of caterpillar' are counted as one: a guide has all of them or none. */
    @Test
    void whatIsCountedTogetherIsLeftOutTogether() throws IOException {
        ContentBase base = BaseLoader.load(Path.of("content")).base().orElseThrow();
        Office lowbridge = base.offices().get("lowbridge").value();
        List<String> one = errors(base, lowbridge, List.of("cabbage-looper"));
        assertTrue(!one.isEmpty() && one.stream().allMatch(said -> said.contains("counted together")),
                one.toString());
        assertEquals(List.of(), errors(base, lowbridge, List.of("cabbage-looper", "diamondback-moth",
                "imported-cabbageworm")));
    }

    private static List<String> errors(ContentBase base, Office office, List<String> leaveOut) {
        Placed<Office> placed = new Placed<>(new Office(office.id(), office.name(), office.county(),
                office.languages(),
                office.paper(), office.flip(), office.units(), office.station(), office.guides(), office.forms(),
                leaveOut, office.notes(),
                office.contact(), office.requests()), base.offices().get(office.id()).spans());
        TreeMap<String, Placed<Office>> offices = new TreeMap<>();
        offices.put(office.id(), placed);
        List<Finding> found = new ArrayList<>();
        new OfficeLeavesOut().check(new ContentBase(base.edition(), base.crops(), base.materials(),
                base.sources(),
                base.prices(), base.pests(), base.enemies(), base.practices(), base.guides(), offices,
                base.figures(),
                base.chapters(), base.stations(), base.schemes(), base.unread(), base.translations()),
                base.edition().value().issued(), found::add);
        return found.stream().filter(one -> one.severity().word().equals("error")).map(Finding::message)
                .toList();
    }
}
