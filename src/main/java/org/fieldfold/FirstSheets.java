package org.fieldfold;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Edition;
import org.fieldfold.entry.Office;
import org.fieldfold.entry.Placed;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.fold.Imposition;
import org.fieldfold.fold.Paper;
import org.fieldfold.kept.Kept;
import org.fieldfold.manuscript.GuideWriter;
import org.fieldfold.manuscript.Manuscript;
import org.fieldfold.manuscript.OfficePanel;
import org.fieldfold.manuscript.Phrases;
import org.fieldfold.pdf.Press;
import org.fieldfold.pdf.PrintJob;
import org.fieldfold.pdf.SheetWords;
import org.fieldfold.prose.Run;
import org.fieldfold.typeset.PrintMeFirst;

/** The sheets that are printed before the guides: for every paper, and for every office on its own. */
final class FirstSheets {
    private final ContentBase base;
    private final PrintRoom room;
    private final Optional<String> proof;
    private final Phrases phrases;
    private final List<Run> foot;

    private FirstSheets(ContentBase base, PrintRoom room, boolean proof, Phrases phrases) {
        this.base = base;
        this.room = room;
        this.phrases = phrases;
        this.foot = new GuideWriter(base, phrases).foot();
        this.proof = proof ? Optional.of(phrases.say("proof")) : Optional.empty();
    }

    /** The generic ones in a language, and those of each office that reads it first. */
    static List<Batch> batches(Tongues tongues, String language, PrintRoom room, boolean proof,
            FitRows rows) {
        Phrases phrases = Phrases.in(language);
        List<Batch> batches = new ArrayList<>();
        batches.add(Forms.batch("print-me-first", proof, form -> form.fit(rows), read ->
                generic(read, room, proof, phrases)));
        for (Placed<Office> placed : tongues.in(language).offices().values()) {
            String id = placed.value().id();
            if (firstOf(placed.value(), tongues.languages()).equals(language)) {
                batches.add(Forms.batch("offices/" + id + "/print-me-first", proof, form -> form.fit(rows), read ->
                        new FirstSheets(read, room, proof, phrases).of(read.offices().get(id), "offices/" + id + "/")));
            }
        }
        return batches;
    }

    /** @param said in the language of the phrases */
    static List<Form> generic(ContentBase said, PrintRoom room, boolean proof, Phrases phrases) {
        FirstSheets first = new FirstSheets(said, room, proof, phrases);
        OfficePanel publisher = OfficePanel.generic(said.edition());
        return papers(said.edition().value().papers()).stream().flatMap(paper -> first.of("foldouts/print-me-first."
                + phrases.language() + "." + paper.id(), publisher, paper, FlipEdge.SHORT, false).stream()).toList();
    }

    /**
     * Those of one office.
     *
     * @param said in the first of its languages
     * @param folder before their names
     */
    static List<Form> of(Placed<Office> office, String folder, ContentBase said, Press press, boolean proof,
            Phrases phrases) {
        return new FirstSheets(said, new PrintRoom(press, Kept.nothing()), proof, phrases).of(office, folder);
    }

    private List<Form> of(Placed<Office> office, String folder) {
        return papers(List.of(office.value().paper())).stream().flatMap(paper -> of(folder
                + "print-me-first." + paper.id(), OfficePanel.of(office), paper,
                office.value().flip().orElse(FlipEdge.SHORT), true).stream()).toList();
    }

    /** An office has one such sheet, in the first of its languages that the edition speaks. */
    static String firstOf(Office office, List<String> languages) {
        return office.languages().stream().filter(languages::contains).findFirst().orElse(languages.get(0));
    }

    /** A proof is built in spite of a paper that there is not: it is left out. */
    private static List<Paper> papers(List<String> ids) {
        return Arrays.stream(Paper.values()).filter(paper -> ids.contains(paper.id())).toList();
    }

    /** For the edge that its copier turns the sheet on, and, should that prove wrong, for the other. */
    private List<Form> of(String path, OfficePanel office, Paper paper, FlipEdge flip, boolean own) {
        boolean onShort = flip == FlipEdge.SHORT;
        FlipEdge other = onShort ? FlipEdge.LONG : FlipEdge.SHORT;
        return List.of(of(path + ".pdf", office, PrintMeFirst.sheet(paper, flip), own),
                of(path + (onShort ? ".long-edge.pdf" : ".short-edge.pdf"), office,
                        PrintMeFirst.sheet(paper, other), own));
    }

    private Form of(String path, OfficePanel office, Imposition sheet, boolean own) {
        Edition edition = base.edition().value();
        Manuscript manuscript = new Manuscript("print-me-first", phrases.say("first.title"),
                phrases.language(), edition.year(), phrases.date(edition.validUntil()), proof,
                foot, "#000000", new Manuscript.TypeRange(11, 11),
                List.of());
        Setting setting = new Setting(manuscript, new Setting.Manner.First(sheet,
                office.name() + " · " + office.contact().phone(), own, office.origin()));
        SheetOrder order = SheetOrder.of(setting, sheet, edition, PrintJob.Surround.FOLDS,
                SheetWords.in(manuscript.language()));
        return new Form(path, sheet.paper().id(), order, room, () -> room.first(setting));
    }
}
