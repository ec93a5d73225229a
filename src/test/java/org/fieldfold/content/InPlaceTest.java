package org.fieldfold.content;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What an edit leaves alone, to the byte. */
class InPlaceTest {
    private static InPlace file(String text) throws EditRefused {
        return InPlace.of("x.yaml", text.getBytes(StandardCharsets.UTF_8));
    }

    private static String text(InPlace file) {
        return new String(file.bytes(), StandardCharsets.UTF_8);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            revised: 2026-11-19   # re-read in the hall | revised: 2027-12-01   # re-read in the hall
            revised: "2026-11-19" # so                  | revised: "2027-12-01" # so
            revised: '2026-11-19'                       | revised: '2027-12-01'
            {id: x, revised: 2026-11-19, by: y} # so    | {id: x, revised: 2027-12-01, by: y} # so
            """)
    void setsAValueInItsOwnStyle(String before, String after) throws EditRefused {
        assertEquals(after, text(file(before).set("2027-12-01", "revised")));
    }

    @Test
    void keepsByteOrderMarkAndLineEnds() throws EditRefused {
        String before = "\uFEFF# head\r\nrevised: 2026-11-19\r\n\r\nreviser: avery\r\n";
        assertEquals(before.replace("2026-11-19", "2027-12-01"),
                text(file(before).set("2027-12-01", "revised")));
        assertEquals(before + "carried-over: true\r\n", text(file(before).put("true", "carried-over")));
    }

    @Test
    void addsAKeyAtTheEndOfItsMap() throws EditRefused {
        String list = "list:\n  - id: a  # first\n    size: {from: 1}\n  - id: b\nend: 1";
        assertEquals(list.replace("{from: 1}", "{from: 1, to: 2}"), text(file(list).put("2", "list", "a",
                "size", "to")));
        assertEquals(list.replace("  - id: b", "    gone: 2028\n  - id: b"),
                text(file(list).put("2028", "list", "a", "gone")));
        assertEquals(list.replace("- id: b\n", "- id: b\n    gone: 2028\n"),
                text(file(list).put("2028", "list", 1, "gone")));
        assertEquals(list + "\nmore: x", text(file(list).put("x", "more")));
    }

    @Test
    void addsAKeyBehindTheLastWordsOfABlock() throws EditRefused {
        assertEquals("note: |+\n  kept\nmore: x\n\n\n", text(file("note: |+\n  kept\n\n\n")
                .put("x", "more")));
    }

    @Test
    void quotesWhatWouldReadAsSomethingElse() throws EditRefused {
        assertEquals("a: \"x: y\"", text(file("a: z").set("x: y", "a")));
        assertEquals("a: \"x #y\"", text(file("a: z").set("x #y", "a")));
        assertEquals("a: \"*x*\"", text(file("a: z").set("*x*", "a")));
        assertEquals("a: \"null\"", text(file("a: z").set("null", "a")));
        assertEquals("a: \"\"", text(file("a: z").set("", "a")));
        assertEquals("a: [x, \"y, z\"]", text(file("a: [x, y]").set("y, z", "a", 1)));
        assertEquals("a: 'it''s'", text(file("a: 'z'").set("it's", "a")));
        assertEquals("a: \"x\\ny\"", text(file("a: z").set("x\ny", "a")));
    }

    @Test
    void writesABlockAsABlock() throws EditRefused {
        String block = "how:\n  pocket: |  # short\n    One line\n    and two.\nnext: 1\n";
        assertEquals("how:\n  pocket: |  # short\n    Three\n    lines\n\n    now.\nnext: 1\n",
                text(file(block).set("Three\nlines\n\nnow.", "how", "pocket")));
    }

    @Test
    void takesAKeyOut() throws EditRefused {
        String text = "a: 1\nb: |\n  two\n  lines\nc: 3 # gone with it\nd: 4";
        assertEquals("b: |\n  two\n  lines\nc: 3 # gone with it\nd: 4", text(file(text).remove("a")));
        assertEquals("a: 1\nc: 3 # gone with it\nd: 4", text(file(text).remove("b")));
        assertEquals("a: 1\nb: |\n  two\n  lines\nd: 4", text(file(text).remove("c")));
        assertEquals("a: 1\nb: |\n  two\n  lines\nc: 3 # gone with it", text(file(text).remove("d")));
        assertEquals(text, text(file(text).remove("e")));
        assertEquals("- {b: 2}", text(file("- {a: 1, b: 2}").remove(0, "a")));
        assertEquals("- {a: 1}", text(file("- {a: 1, b: 2}").remove(0, "b")));
        assertEquals("- b: 2\n  c: 3", text(file("- a: 1\n  b: 2\n  c: 3").remove(0, "a")));
    }

    @Test
    void refusesWhatItCannotDoAlone() {
        assertThrows(EditRefused.class, () -> file("a: [1, 2]").set("3", "a"));
        assertThrows(EditRefused.class, () -> file("a: 1").set("3", "b"));
        assertThrows(EditRefused.class, () -> file("a: &x 1\nb: *x"));
        assertThrows(EditRefused.class, () -> file("a: 1\na: 2").put("3", "c", "d"));
        EditRefused broken = assertThrows(EditRefused.class, () -> file("a: \"open"));
        assertTrue(broken.getMessage().contains("mend the file"), broken.getMessage());
    }

    @Test
    void changesNothingWhereTheValueIsTheSame() throws EditRefused {
        byte[] bytes = "a:   'x'   \n# end".getBytes(StandardCharsets.UTF_8);
        assertArrayEquals(bytes, InPlace.of("x.yaml", bytes).set("x", "a").bytes());
    }
}
