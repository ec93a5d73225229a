package org.fieldfold.translation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.List;
import java.util.Optional;
import org.fieldfold.entry.Translation;
import org.fieldfold.prose.Prose;
import org.fieldfold.source.SourceFile;
import org.fieldfold.source.Span;
import org.junit.jupiter.api.Test;

class MatchingTest {
    private static final Span PLACE = Span.startOf(new SourceFile("es/x.yaml", ""));
    private static final BaseText FIRST = text("a", "Move potatoes to another field.");
    private static final BaseText SECOND = text("b", "Cover from planting on.");

    private static BaseText text(String path, String words) {
        return new BaseText(path, words, false, false, PLACE);
    }

    private static Translation.Passage passage(String path, BaseText of, String words) {
        return new Translation.Passage(path, of.hash(),
                words.isEmpty() ? Optional.empty() : Optional.of(Prose.plain(words)), PLACE, PLACE);
    }

    private static List<Matching.State> states(Matching matching) {
        return matching.pairs().stream().map(Matching.Pair::state).toList();
    }

    /** SHA-256 of 'abc' from FIPS 180-2, appendix B.1: ba7816bf … */
    @Test
    void aHashIsTheBeginningOfSha256AndKnowsNoLineBreaks() {
        assertEquals("ba7816bf", text("a", "abc").hash());
        assertEquals(text("a", "one two\nthree\n").hash(), text("b", "one  two three").hash());
        assertNotEquals(text("a", "one two").hash(), text("a", "one 2").hash());
    }

    @Test
    void aTranslationOfTheWordsAsTheyAreIsCurrent() {
        Matching matching = Matching.of(List.of(FIRST, SECOND),
                List.of(passage("a", FIRST, "Cambie de campo."), passage("b", SECOND, "Cubra.")));
        assertEquals(List.of(Matching.State.CURRENT, Matching.State.CURRENT), states(matching));
        assertEquals(List.of(), matching.left());
    }

    @Test
    void textsThatChangePlacesKeepTheirTranslations() {
        Matching matching = Matching.of(List.of(text("a", SECOND.words()), text("b", FIRST.words())),
                List.of(passage("a", FIRST, "Cambie de campo."), passage("b", SECOND, "Cubra.")));
        assertEquals(List.of(Matching.State.CURRENT, Matching.State.CURRENT), states(matching));
        assertEquals(List.of("Cubra.", "Cambie de campo."), matching.pairs().stream()
                .map(pair -> pair.passage().orElseThrow().words().orElseThrow().markdown()).toList());
    }

    @Test
    void oneChangedTextIsDueAndNoOther() {
        Matching matching = Matching.of(List.of(text("a", "Move potatoes far away."), SECOND),
                List.of(passage("a", FIRST, "Cambie de campo."), passage("b", SECOND, "Cubra.")));
        assertEquals(List.of(Matching.State.DUE, Matching.State.CURRENT), states(matching));
    }

    @Test
    void aNewTextBeforeAnOldOneIsMissingAndTheOldOneIsKept() {
        Matching matching = Matching.of(List.of(text("a", "Rotate."), text("b", FIRST.words())),
                List.of(passage("a", FIRST, "Cambie de campo.")));
        assertEquals(List.of(Matching.State.MISSING, Matching.State.CURRENT), states(matching));
    }

    @Test
    void anEmptyTextIsMissingAndWhatAnswersToNothingIsLeft() {
        Matching matching = Matching.of(List.of(FIRST), List.of(passage("a", FIRST, ""),
                passage("z", SECOND, "Cubra.")));
        assertEquals(List.of(Matching.State.MISSING), states(matching));
        assertEquals(List.of("z"), matching.left().stream().map(Translation.Passage::path).toList());
    }
}
