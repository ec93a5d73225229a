package org.fieldfold.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.fieldfold.prose.Run;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Bindings of numbers, dashes and names are common practice of the trade, no source. */
class WordSplitterTest {
    private static List<Word> split(Run... runs) {
        return WordSplitter.split(List.of(runs), Voice.TEXT, new FixedWidth()).words();
    }

    private static String text(Word word) {
        return word.pieces().stream().map(Piece::text).collect(Collectors.joining());
    }

    /** {@code |} stands where a line may end. */
    @ParameterizedTest
    @ValueSource(strings = {
        "ten |beetles", "20–30 % |of |leaves", "5–|", "about |5 mm", "5–10 mm |long", "¼ mile |away",
                "2-3 days",
        "2½ in |deep", "hump-|backed", "V-walk", "edge/|row |count", "and/or", "≥ 5 |larvae",
        "spring – |or |fall",
        "spring—|or |fall", "1/4 mile", "28 °C", "10 a.m.", "novaluron |(15) · |spinosad", "8 |to |noon",
        "https://field.|example/|2027", "ask@|marrow.|example", "fig. |5", "until |January 31, |2028",
        "31 January |2028", "May |be"
    })
    void linesEndOnlyAtBars(String marked) {
        String wanted = marked.endsWith("–|") ? marked.substring(0, marked.length() - 1) : marked;
        List<Word> words = split(Run.plain(wanted.replace("|", "")));
        assertEquals(Arrays.asList(wanted.split("\\|")), words.stream()
                .map(word -> text(word) + word.space().map(Piece::text).orElse("")).toList());
    }

    @Test
    void noBreakSpacesHold() {
        assertEquals(1, split(Run.plain("Perillus\u00a0bug")).size());
        assertEquals("Perillus bug", text(split(Run.plain("Perillus\u00a0bug")).get(0)));
    }

    @Test
    void aGenusInitialStaysWithItsSpecies() {
        assertEquals(2, split(Run.name("L. decemlineata"), Run.plain(" adults")).size());
    }

    @Test
    void facesChangeInsideAWord() {
        Word word = split(Run.plain("("), Run.name("Perillus"), Run.plain("),")).get(0);
        assertEquals(List.of(Face.REGULAR, Face.ITALIC, Face.REGULAR),
                word.pieces().stream().map(Piece::face).toList());
        assertEquals(11 * 500, word.width());
    }

    @Test
    void headingsSetNamesInBoldItalic() {
        assertEquals(Face.BOLD_ITALIC, Voice.HEADING.face(Run.Style.NAME));
        assertEquals(Face.BOLD, Voice.HEADING.face(Run.Style.PLAIN));
    }

    @Test
    void spacesBetweenRunsAreOne() {
        assertEquals(2, split(Run.strong("Look for "), Run.plain(" eggs")).stream().skip(1).count());
    }

    @Test
    void aCharacterThatTheTypeLacksIsSaidAndDrawnAsAQuestion() {
        WordSplitter.Cut cut = WordSplitter.split(List.of(Run.plain("cold ☃ now")), Voice.TEXT,
                new FixedWidth());
        assertEquals("?", text(cut.words().get(1)));
        assertEquals(List.of(new WordSplitter.Missing(Face.REGULAR, 0x2603)), cut.missing());
    }
}
