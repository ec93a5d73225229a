package org.fieldfold.edition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.fieldfold.FolderCopy;
import org.fieldfold.content.BaseLoader;
import org.fieldfold.content.InputFile;
import org.fieldfold.content.LoadedBase;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Reviewed;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What there is to re-read in the demo base, from save to save, by processes that know what the one before wrote. */
class KeptRereadingsTest {
    @TempDir
    private Path content;
    private Optional<byte[]> written = Optional.empty();
    private Optional<Ledger> last = Optional.empty();

    @BeforeEach
    void lay() throws IOException {
        FolderCopy.of(Path.of("content"), content);
    }

    /** Which are due, after they were held to those that are found out anew. */
    private List<String> due() throws IOException {
        LoadedBase loaded = BaseLoader.load(content);
        ContentBase base = loaded.base().orElseThrow();
        KeptRereadings kept = written.map(KeptRereadings::new).orElseGet(KeptRereadings::new);
        Rereadings all = kept.of(base, last, InputFile.hashes(loaded.inputs()));
        Rereadings anew = Rereadings.of(base, last);
        for (Placed<? extends Reviewed> entry : base.reviewed()) {
            assertEquals(anew.of(entry.value()), all.of(entry.value()), entry.value().id());
            assertEquals(Due.isDue(entry.value(), base), all.isDue(entry.value()), entry.value().id());
        }
        assertEquals(Due.in(base).size(), all.due());
        assertEquals(Due.byHand(base), all.byHand());
        written = kept.bytes().or(() -> written);
        return base.reviewed().stream().map(Placed::value).filter(all::isDue).map(Reviewed::id).toList();
    }

    private void edit(String file, String was, String is) throws IOException {
        String text = Files.readString(content.resolve(file));
        assertTrue(text.contains(was), file);
        Files.writeString(content.resolve(file), text.replace(was, is));
    }

    @Test
    void anEditShowsAtTheEntriesThatItConcerns() throws IOException {
        assertEquals(List.of(), due(), "the demo base is signed");
        edit("pests/onion-thrips.yaml", "Slim splinter", "Thin splinter");
        assertEquals(List.of("onion-thrips"), due());
        edit("active-ingredients.yaml", "phi-days: {from: 1, to: 7", "phi-days: {from: 1, to: 8");
        List<String> more = due();
        assertTrue(more.size() > 1, more.toString());
        edit("active-ingredients.yaml", "phi-days: {from: 1, to: 8", "phi-days: {from: 1, to: 7");
        assertEquals(List.of("onion-thrips"), due());
        edit("figures/leek-moth-adult.svg", "</svg>", "<rect x='1' y='1' width='2' height='2'/></svg>");
        assertEquals(List.of("leek-moth", "onion-thrips"), due());
        edit("pests/onion-thrips.yaml", "Thin splinter", "Slim splinter");
        assertEquals(List.of("leek-moth"), due());
    }

    @Test
    void anotherEditionBeforeThisOneAsksEverythingAgain() throws IOException {
        due();
        ContentBase base = BaseLoader.load(content).base().orElseThrow();
        last = Optional.of(new Ledger(2026, base.edition().value().issued().minusYears(1), "0", Optional.empty(),
                Snapshot.of(base), new java.util.TreeMap<>()));
        edit("prices.yaml", "value: ", "value: 1");
        assertFalse(due().isEmpty());
        last = Optional.empty();
        due();
    }

    @Test
    void whatStayedIsNotWrittenAgain() throws IOException {
        due();
        LoadedBase loaded = BaseLoader.load(content);
        KeptRereadings kept = new KeptRereadings(written.orElseThrow());
        kept.of(loaded.base().orElseThrow(), last, InputFile.hashes(loaded.inputs()));
        assertEquals(Optional.empty(), kept.bytes());
    }
}
