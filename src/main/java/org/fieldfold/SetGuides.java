package org.fieldfold;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.fieldfold.entry.Edition;
import org.fieldfold.entry.Guide;
import org.fieldfold.manuscript.News;
import org.fieldfold.output.OutputFolder;
import org.fieldfold.report.FitRow;
import org.fieldfold.source.Finding;
import org.fieldfold.trace.KeptResults;

/**
 * All sheets of all guides, generic and for offices. Each is set first, for what is to be said about it and for its
 * characters, and set again when it is printed: of thousands of offices little is kept. What an earlier build knows
 * of sheets for which nothing else was read than now is taken from there, and none of that is done.
 */
final class SetGuides {
    private final PrintRoom room;
    private final List<PrintedSheet> sheets;

    private SetGuides(PrintRoom room, List<PrintedSheet> sheets) {
        this.room = room;
        this.sheets = List.copyOf(sheets);
        sheets.forEach(sheet -> room.spell(sheet.facts().letters()));
        room.leaveTrials(sheets.stream().map(sheet -> sheet.facts().path()).toList());
    }

    /** Sets every copy of every guide, but for those of which enough is known. */
    static SetGuides of(Tongues tongues, News news, boolean proof, PrintRoom room, KeptSheets known) {
        List<PrintedSheet> guides = new ArrayList<>();
        List<PrintedSheet> offices = new ArrayList<>();
        List<PrintedSheet> first = new ArrayList<>();
        List<PrintedSheet> forms = new ArrayList<>();
        for (String language : tongues.languages()) {
            KeptResults<List<SheetFacts>>.Round round = known.in(language, tongues);
            FitRows rows = new FitRows(tongues.in(language));
            GuideSheets copies = new GuideSheets(tongues, language, news, proof, room, rows);
            List<PrintedSheet> generic = take(copies.forAll(), round, tongues, language);
            Map<String, List<Finding>> said = new ConcurrentHashMap<>();
            generic.forEach(sheet -> said.put(sheet.facts().path(), sheet.facts().findings()));
            guides.addAll(generic);
            offices.addAll(take(copies.ofOffices(said::get), round, tongues, language));
            first.addAll(take(FirstSheets.batches(tongues, language, room, proof, rows), round, tongues, language));
            forms.addAll(take(Forms.batches(tongues, language, room, proof, rows), round, tongues, language));
            offices.addAll(take(Forms.ofOffices(tongues, language, room, proof), round, tongues, language));
        }
        known.leave();
        return new SetGuides(room, Stream.of(guides, first, forms, offices).flatMap(List::stream).toList());
    }

    private static List<PrintedSheet> take(List<Batch> batches, KeptResults<List<SheetFacts>>.Round round,
            Tongues tongues, String language) {
        return batches.parallelStream().map(batch -> batch.take(round, tongues.in(language))).flatMap(List::stream)
                .toList();
    }

    /** What is known of each sheet. */
    List<SheetFacts> facts() {
        return sheets.stream().map(PrintedSheet::facts).toList();
    }

    static List<String> papers(Guide guide, Edition edition) {
        return guide.papers().isEmpty() ? edition.papers() : guide.papers();
    }

    /** What does not fit, where it was written; the same thing on two papers is said once for each. */
    List<Finding> findings() {
        Set<Finding> findings = new TreeSet<>();
        sheets.forEach(sheet -> findings.addAll(sheet.facts().findings()));
        return List.copyOf(findings);
    }

    /** How full every panel of the generic copies is; once for each paper, however the sheet is turned. */
    List<FitRow> fit() {
        return sheets.stream().flatMap(sheet -> sheet.facts().fit().stream()).toList();
    }

    /** Prints every copy; the type is cut once to the characters of the whole publication. */
    void print(OutputFolder folder) throws IOException {
        try {
            sheets.parallelStream().forEach(sheet -> print(sheet, folder));
        } catch (UncheckedIOException failed) {
            throw failed.getCause();
        }
    }

    private void print(PrintedSheet sheet, OutputFolder folder) {
        try {
            sheet.print(room, folder);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
