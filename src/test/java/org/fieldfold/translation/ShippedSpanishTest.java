package org.fieldfold.translation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.fieldfold.check.Rulebook;
import org.fieldfold.content.BaseLoader;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Translation;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The Spanish of the demo base: complete, current, with the same numbers, in the words of its glossary. */
class ShippedSpanishTest {
    private static ContentBase base;

    @BeforeAll
    static void load() throws IOException {
        base = BaseLoader.load(Path.of("content")).base().orElseThrow();
    }

    @Test
    void everyTextIsTranslatedAndCurrent() {
        Translation spanish = base.translations().get("es");
        assertTrue(BaseTexts.of(base).values().stream().mapToInt(List::size).sum() > 2_000);
        List<String> open = BaseTexts.of(base).entrySet().stream().flatMap(file -> {
            Translation.Page page = spanish.files().get(file.getKey());
            return Matching.of(file.getValue(), page == null ? List.of() : page.passages()).pairs().stream()
                    .filter(pair -> pair.state() != Matching.State.CURRENT && !pair.text().optional())
                    .map(pair -> file.getKey() + " " + pair.text().path() + " " + pair.state());
        }).toList();
        assertEquals(List.of(), open, "'fieldfold draft translation es' marks them TO DO");
    }

    @Test
    void noRuleFindsAnythingInIt() {
        assertEquals(List.of(), Rulebook.check(base, base.edition().value().issued()).stream()
                .filter(finding -> finding.rule().startsWith("translation-")).collect(Collectors.toList()));
    }

    /** Words of a pocket text are few: a translation that is much longer says more than the base does. */
    @Test
    void noTextIsTwiceAsLongAsTheBase() {
        Translation spanish = base.translations().get("es");
        BaseTexts.of(base).forEach((file, texts) -> Matching.of(texts, spanish.files().containsKey(file)
                ? spanish.files().get(file).passages() : List.of()).pairs().stream()
                .filter(pair -> pair.state() == Matching.State.CURRENT && pair.text().words().length() > 25)
                .forEach(pair -> assertTrue(pair.passage().orElseThrow().words().orElseThrow().markdown()
                        .length() < 2 * pair.text().words().length(), file + " " + pair.text().path())));
    }
}
