package org.fieldfold.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Control;
import org.fieldfold.entry.Names;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Text;
import org.fieldfold.source.Finding;
import org.fieldfold.source.SourceFile;
import org.fieldfold.source.Spans;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * 7 CFR 205.206: a producer must use preventive practices (a) and may use mechanical and biological ones (b);
 * only when these are insufficient may a material be applied, and the conditions for its use are documented
 * (e). Each case writes the tiers of an entry in the order of its file; {@code 3!} is a material without a
 * condition.
 */
class TierRulesTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "1 2 3     |                                             ",
        "1 1 2 2 3 |                                             ",
        "1 2       |                                             ",
        "1 3       | tier-missing                                ",
        "2 3       | tier-missing                                ",
        "3         | tier-missing tier-missing                   ",
        "2 1 3     | tier-order                                  ",
        "1 3 2     | tier-order                                  ",
        "3 2 1     | tier-order tier-order                       ",
        "1 2 3!    | insecticide-without-condition               ",
        "1 2 3! 3! | insecticide-without-condition insecticide-without-condition",
        "3! 1      | insecticide-without-condition tier-missing tier-order"})
    void preventionThenBarriersThenAMaterialOnACondition(String tiers, String broken)
            throws IOException {
        Placed<PestEntry> pest = entry(tiers.strip().split(" "));
        ContentBase base = Sample.laid(Sample.RESOURCES.resolve("base"), folder).base();
        List<Finding> found = new ArrayList<>();
        for (PestRule rule : List.of(new InsecticideWithoutCondition(), new TierMissing(), new TierOrder())) {
            rule.check(pest, base, LocalDate.of(2027, 1, 15), found::add);
        }
        assertEquals(broken == null ? "" : broken.strip(), String.join(" ", found.stream().map(Finding::rule)
                .toList()));
    }

    private static Placed<PestEntry> entry(String... tiers) {
        List<Control> controls = IntStream.range(0, tiers.length).mapToObj(i -> control(tiers[i])).toList();
        PestEntry entry = new PestEntry("leek-moth", new Names("", "", "", "", List.of()), List.of(),
                List.of(), List.of(),
                List.of(), List.of(), Optional.empty(), Optional.empty(), List.of(), List.of(), controls,
                Optional.empty(), List.of(),
                List.of(), List.of(), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty());
        return new Placed<>(entry, new Spans(new SourceFile("leek-moth.yaml", ""), Map.of()));
    }

    private static Control control(String tier) {
        return switch (tier) {
            case "1" -> new Control.Cultural(Optional.empty(), Text.of("Move the crop."), List.of());
            case "2" -> new Control.Exclusion(Optional.empty(), Optional.empty(), Text.of("Cover it."),
                    Optional.empty(), List.of());
            default -> new Control.Insecticide("soap", tier.endsWith("!") ? Optional.empty()
                    : Optional.of(Text.of("past the count")), List.of(), Optional.empty(), Optional.empty(),
                    Optional.empty(), List.of());
        };
    }
}
