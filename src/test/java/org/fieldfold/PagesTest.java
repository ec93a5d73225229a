package org.fieldfold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.fieldfold.content.BaseLoader;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Severity;
import org.junit.jupiter.api.Test;

class PagesTest {
    /** The limit is a custom of mail, written out here a second time; no source. */
    @Test
    void aHandbookThatNobodyCanSendIsSaid() throws IOException {
        ContentBase base = BaseLoader.load(Path.of("src/test/resources/org/fieldfold/check/base")).base()
                .orElseThrow();
        assertEquals(Optional.empty(), Pages.tooLarge(base, "handbook.en.html", 20_000_000));
        assertEquals(Optional.empty(), Pages.tooLarge(base, "handbook.en.epub", 90_000_000));
        assertEquals(Optional.empty(), Pages.tooLarge(base, "handbook/en/handbook.js", 90_000_000));
        Finding finding = Pages.tooLarge(base, "handbook.es.html", 60_100_000).orElseThrow();
        assertEquals(Severity.WARNING, finding.severity());
        assertTrue(finding.span().place().endsWith("edition.yaml:10:11"), finding.span().place());
        assertTrue(finding.message().startsWith("expected handbook.es.html of at most 20 MB, found 61 MB"),
                finding.message());
        assertTrue(Compiler.explain(finding.rule()).isPresent());
        assertTrue(Compiler.rules().containsKey(finding.rule()));
    }
}
