package org.fieldfold.typeset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.fieldfold.prose.Run;
import org.junit.jupiter.api.Test;

/** Who learns words from whom. */
class WordCaseTest {
    private static final double ROOM = 10_000;

    private int asked;
    /** Is asked once for each character of a text that is cut into words. */
    private final WordCase all = new WordCase(new TypeMetrics() {
        @Override
        public double width(Face face, String text) {
            return 500.0 * text.length();
        }

        @Override
        public boolean has(Face face, int codePoint) {
            asked++;
            return true;
        }

        @Override
        public double capHeight(Face face) {
            return 660;
        }
    });

    private static WordCase.Text text(WordCase words, String text) {
        return words.text(List.of(Run.plain(text)), Voice.TEXT, Abbreviations.NONE);
    }

    @Test
    void aTextIsCutOnceForGuidesBesideOneAnother() {
        WordCase letter = all.beside();
        WordCase a4 = all.beside();
        WordSplitter.Cut cut = text(letter, "beetles on leaves").cut();
        int once = asked;
        assertTrue(once > 0);
        assertSame(cut, text(a4, "beetles on leaves").cut());
        assertSame(text(letter, "beetles on leaves").lines(ROOM), text(letter, "beetles on leaves").lines(ROOM));
        assertEquals(once, asked);
    }

    @Test
    void anOfficeKnowsWhatGuidesKnowAndTeachesNothing() {
        WordCase guide = all.beside();
        WordCase.Broken lines = text(guide, "beetles on leaves").lines(ROOM);
        int known = asked;
        WordCase office = guide.apart();
        assertSame(lines, text(office, "beetles on leaves").lines(ROOM));
        assertEquals(known, asked);
        WordCase.Broken narrow = text(office, "beetles on leaves").lines(ROOM / 2);
        assertEquals(narrow, text(guide, "beetles on leaves").lines(ROOM / 2));
        assertTrue(narrow != text(guide, "beetles on leaves").lines(ROOM / 2), "it kept that to itself");

        text(office, "call us");
        int own = asked;
        assertTrue(own > known);
        text(office, "call us");
        assertEquals(own, asked);
        text(guide.apart(), "call us");
        assertTrue(asked > own, "another office cuts the same words itself");
    }

    @Test
    void textsOfTheSameLettersAreNotTakenForOneAnother() {
        List<Run> plain = List.of(Run.plain("scout the IPM trap"));
        Abbreviations english = Abbreviations.in("en");
        String shortened = english.expansions().keySet().iterator().next();
        List<Run> said = List.of(Run.plain("the " + shortened + " here"));
        WordCase.Text apart = all.text(said, Voice.TEXT, english);
        assertEquals(3, apart.runs().size());
        assertEquals(1, all.text(said, Voice.TEXT, Abbreviations.NONE).runs().size());
        assertEquals(apart.runs().stream().map(Run::text).collect(Collectors.joining()), said.get(0).text());
        assertNotEquals(all.text(plain, Voice.TEXT, english).cut(),
                all.text(List.of(Run.strong("scout the IPM trap")), Voice.TEXT, english).cut());
        assertNotEquals(all.text(plain, Voice.TEXT, english).cut(), all.text(plain, Voice.HEADING, english).cut());
    }
}
