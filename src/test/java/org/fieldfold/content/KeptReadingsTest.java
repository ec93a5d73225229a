package org.fieldfold.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was understood of files goes from one process to the next without a loss. */
class KeptReadingsTest {
    @TempDir
    private Path folder;

    /** Every kind of record of the demo base has a form in the bytes. */
    @Test
    void theDemoBaseIsTheSameWithoutReadingAFile() throws IOException {
        assertNothingIsReadAgain(Path.of("content"));
    }

    @Test
    void slipsLinksAndOddValuesAreTheSame() throws IOException {
        Base base = new Base(folder)
                .with("weather/high.csv", "date,min,max\n2026-01-01,-0.0,3.25\n2026-01-05,-12.5,0\n")
                .with("weather/low.csv", "date,min,max\n2026-01-01,4,3\n")
                .with("chapters/walk.md", "# How to *count*\r\n\r\nWalk, see [it](#owl) and [it](#none).\r\n")
                .with("chapters/bytes.md", new byte[] {'#', ' ', (byte) 0xff, '\n'})
                .with("figures/owl.png", Rasters.png(2, 2, 8, 2, 0))
                .with("figures/crow.jpg", "no image".getBytes(StandardCharsets.UTF_8))
                .with("figures/crow.svg", "<svg xmlns='http://www.w3.org/2000/svg'><script/></svg>")
                .with("schemes/half.fold", "scheme half\ntitle Half\nsheet landscape\ncolumns 1 1\n"
                        + "rows 1\nfold x1 left over\n")
                .with("schemes/none.fold", "scheme none\ntitle None\n")
                .with("pests/owl.yaml", "names: \"\\u0007\"\nx: [\n")
                .with("crops.yaml", "crops:\n- {id: leek, name: \"Le\\u200Bek\"}\n- {id: leek}\n")
                .with("es/glossary.yaml", "terms: []\n").with("prices.yaml", "");
        LoadedBase loaded = base.load();
        assertTrue(loaded.findings().size() > 10, loaded.findings().toString());
        assertNothingIsReadAgain(base.folder());
    }

    private static void assertNothingIsReadAgain(Path content) throws IOException {
        KeptReadings first = new KeptReadings();
        String expected = WholeTree.of(BaseLoader.load(content));
        assertEquals(expected, WholeTree.of(first.load(content)));
        assertFalse(first.isAsWritten());
        KeptReadings second = new KeptReadings(first.bytes());
        assertEquals(expected, WholeTree.of(second.load(content)));
        assertEquals(0, second.understood());
        assertTrue(second.isAsWritten());
    }

    /** No bytes of UTF-8 would give it back. */
    @Test
    void halfAPairOfSignsIsReadEveryTime() throws IOException {
        Base base = new Base(folder).with("prices.yaml", "prices: [\"\\ud800\"]\n");
        KeptReadings first = new KeptReadings();
        String expected = WholeTree.of(first.load(base.folder()));
        assertTrue(expected.contains("\ud800"), expected);
        KeptReadings second = new KeptReadings(first.bytes());
        assertEquals(expected, WholeTree.of(second.load(base.folder())));
        assertEquals(1, second.understood());
    }

    @Test
    void onlyWhatChangedIsReadAndWhatIsGoneIsForgotten() throws IOException {
        Base base = new Base(folder).with("chapters/one.md", "# One\n\nText.\n").with("chapters/two.md",
                "# Two\n\nText.\n");
        KeptReadings first = new KeptReadings();
        first.load(base.folder());
        base.with("chapters/two.md", "# One\n\nText.\n");
        KeptReadings second = new KeptReadings(first.bytes());
        second.load(base.folder());
        assertEquals(1, second.understood(), "the bytes of another file do not do");
        Files.delete(base.folder().resolve("chapters/one.md"));
        KeptReadings third = new KeptReadings(second.bytes());
        third.load(base.folder());
        assertEquals(0, third.understood());
        assertFalse(third.isAsWritten());
        KeptReadings fourth = new KeptReadings(third.bytes());
        fourth.load(base.folder());
        assertTrue(fourth.isAsWritten());
    }

    /** The store hands out whole bytes only; whatever it hands out, a base is read. */
    @Test
    void anyBytesDoNoHarm() throws IOException {
        Base base = new Base(folder).with("chapters/one.md", "# One\n\nSee [two](#two).\n");
        KeptReadings first = new KeptReadings();
        first.load(base.folder());
        byte[] sound = first.bytes();
        String expected = WholeTree.of(base.load());
        for (int length = 0; length < sound.length; length++) {
            assertEquals(expected, WholeTree.of(new KeptReadings(java.util.Arrays.copyOf(sound, length))
                    .load(base.folder())), "cut at " + length);
        }
        Random random = new Random(7);
        for (int round = 0; round < 2_000; round++) {
            byte[] damaged = sound.clone();
            damaged[random.nextInt(damaged.length)] = (byte) random.nextInt(256);
            new KeptReadings(damaged).load(base.folder());
        }
        byte[] deep = new byte[1 << 20];
        java.util.Arrays.fill(deep, (byte) 'o');
        new KeptReadings(deep).load(base.folder());
    }
}
