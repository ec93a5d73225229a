package org.fieldfold;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.fieldfold.content.ContentSchema;
import org.fieldfold.content.OpenData;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.handbook.FitRow;
import org.fieldfold.handbook.Handbook;
import org.fieldfold.handbook.HandbookFile;
import org.fieldfold.handbook.ReviewPage;
import org.fieldfold.manuscript.Phrases;
import org.fieldfold.output.OutputFolder;
import org.fieldfold.source.Finding;

/** What is opened on a screen: the handbook in both forms, the specialist's review, and the base as open data. */
final class Pages {
    private Pages() {
    }

    static void write(ContentBase base, List<Finding> findings, List<FitRow> fit, boolean proof, OutputFolder folder)
            throws IOException {
        for (String language : base.edition().value().languages()) {
            for (HandbookFile file : Handbook.write(base, Phrases.in(language), proof)) {
                folder.write(file.path(), file.bytes());
            }
        }
        folder.write("review/index.html", ReviewPage.write(base, findings, fit, proof));
        folder.write("data/entries.json", OpenData.of(base).getBytes(StandardCharsets.UTF_8));
        folder.write("data/schema.json", ContentSchema.ofBase().getBytes(StandardCharsets.UTF_8));
    }
}
