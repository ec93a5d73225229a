package org.fieldfold.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.fieldfold.entry.ContentBase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A fold scheme of a base's own is a file and nothing else, and is refused where paper would refuse it. */
class SchemesTest {
    private static final String ROLL = """
            scheme roll
            title Roll fold
            sheet landscape
            columns 1 1 1 1
            rows 1
            fold x3 right over
            fold x2 right over
            fold x1 left over
            """;

    @TempDir
    Path temporary;

    private List<String> found(String text) {
        return new Base(temporary).with("schemes/roll.fold", text).findings();
    }

    @Test
    void isReadFromItsFile() {
        ContentBase base = new Base(temporary).with("schemes/roll.fold", ROLL).load().base().orElseThrow();
        assertEquals("Roll fold", base.scheme("roll").orElseThrow().title());
        assertEquals("letter", base.scheme("letter").orElseThrow().id());
        assertTrue(base.scheme("leter").isEmpty());
    }

    @Test
    void oneThatCannotBeReadIsKnownToBeThereAllTheSame() {
        ContentBase base = new Base(temporary).with("schemes/roll.fold", ROLL.replace("over", "onto")).load()
                .base().orElseThrow();
        assertTrue(base.schemes().containsKey("roll"));
        assertTrue(base.scheme("roll").isEmpty());
    }

    @Test
    void whatIsWrittenWronglyIsFoundAtItsLine() {
        assertEquals(List.of("content/schemes/roll.fold:7:1: error: expected a line such as 'x1' (between "
                + "columns) or 'y1' (between rows), found '2' [fold-scheme-broken] hint: run 'fieldfold "
                + "explain fold-scheme-broken' for a scheme to begin from"),
                found(ROLL.replace("fold x2", "fold 2")));
    }

    @Test
    void whatPaperDoesNotAllowIsFoundAtTheFolds() {
        assertEquals(List.of("content/schemes/roll.fold:6:1: error: expected a sheet that can be folded and "
                + "read so, found that line x2 is never folded between the panel in column 2, row 1 and the "
                + "panel in column 3, row 1 [fold-scheme-broken] hint: fold a sheet of paper by these lines "
                + "and follow it"), found(ROLL.replace("fold x2 right over\n", "")));
        // rolled in from the left, the outermost panel is the narrowest
        assertTrue(found(ROLL.replace("1 1 1 1", "2 2 2 3")).get(0)
                .contains("what is folded in must not be wider than what it is folded into"));
        // a book whose second leaf is shut in by the fold at its head
        assertTrue(found("scheme roll\ntitle Book\nsheet landscape\ncolumns 1 1\nrows 1 1\nread leafing\n"
                + "fold y1 top over\nfold x1 left over\n").get(0).contains("can't be reached"));
    }

    @Test
    void aNameIsGivenOnce() {
        assertTrue(found(ROLL.replace("scheme roll", "scheme rolls")).get(0)
                .contains("roll.fold:1:1: error: expected 'scheme roll', as the file is named, found "
                        + "'scheme rolls'"));
        assertTrue(new Base(temporary.resolve("other")).with("schemes/letter.fold",
                ROLL.replace("scheme roll", "scheme letter")).findings().get(0)
                .contains("found 'letter', which is always there"));
    }
}
