package org.fieldfold;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.stream.Stream;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Edition;
import org.fieldfold.entry.Guide;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Units;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.manuscript.GuideWriter;
import org.fieldfold.manuscript.News;
import org.fieldfold.manuscript.OfficePanel;
import org.fieldfold.manuscript.Phrases;
import org.fieldfold.output.OutputFolder;
import org.fieldfold.report.FitRow;
import org.fieldfold.source.Finding;

/**
 * All copies of all guides, generic and for offices. Each is set first, for what is to be said about it and
 * for its characters, and set again when it is printed: nothing is kept that grows with the offices.
 */
final class SetGuides {
    private final PrintRoom room;
    private final List<PrintedCopy> copies;
    private final List<Form> forms;
    private final List<Form> officeForms;
    private final List<FitRow> fit;
    private final Set<Finding> findings = new ConcurrentSkipListSet<>();
    /** By path, what each copy's order amounts to: so little can be kept of every office's. */
    private final Map<String, String> orders = new ConcurrentHashMap<>();

    private SetGuides(PrintRoom room, List<PrintRun> runs, List<PrintedCopy> offices, List<Form> forms,
            List<Form> officeForms, Map<String, FitRows> rows) {
        this.room = room;
        this.forms = forms;
        this.officeForms = officeForms;
        List<PrintedCopy> all = new ArrayList<>();
        List<PrintRun> forAll = runs.stream().filter(PrintRun::isForAll).toList();
        forAll.forEach(run -> all.addAll(generic(run)));
        all.addAll(offices);
        this.copies = List.copyOf(all);
        Map<String, Look> looks = new HashMap<>();
        List<Look> inOrder = forAll.parallelStream().map(run -> look(run, run.generic(), run.order(run.generic(),
                FlipEdge.SHORT))).toList();
        for (int i = 0; i < forAll.size(); i++) {
            looks.put(forAll.get(i).name(), inOrder.get(i));
        }
        this.fit = Stream.concat(forAll.stream().flatMap(run -> rows.get(run.language()).of(run.heading(),
                run.paper(), looks.get(run.name()).fit()).stream()), forms.stream().flatMap(form ->
                form.fit(rows.get(form.manuscript().language())).stream())).toList();
        looks.values().forEach(look -> findings.addAll(look.findings()));
        Stream.concat(forms.stream(), officeForms.stream()).forEach(form -> findings.addAll(form.findings()));
        copies.parallelStream().forEach(copy -> look(copy, looks.get(copy.run().name()).findings()));
    }

    private void look(PrintedCopy copy, List<Finding> ofGeneric) {
        PrintRun run = copy.run();
        SheetOrder order = copy.order();
        room.hash(order).ifPresent(hash -> orders.put(copy.path(), hash));
        List<Finding> found = Stream.concat(look(run, copy.office(), order).findings().stream(),
                run.moved(copy.office()).stream()).toList();
        findings.addAll(run.findings(copy.office(), found, ofGeneric));
    }

    private Look look(PrintRun run, OfficePanel office, SheetOrder order) {
        return room.look(order, () -> run.set(office, order.setting()));
    }

    /** Sets every copy of every guide, but for those of which enough is known. */
    static SetGuides of(Tongues tongues, News news, boolean proof, PrintRoom room) {
        ContentBase base = tongues.base();
        Edition edition = base.edition().value();
        List<PrintRun> runs = new ArrayList<>();
        Map<String, FitRows> rows = new HashMap<>();
        for (String language : edition.languages()) {
            ContentBase said = tongues.in(language);
            rows.put(language, new FitRows(said));
            for (Optional<Units> units : OfficeCopies.units(base)) {
                GuideWriter writer = new GuideWriter(said, Phrases.in(language).with(units), news,
                        tongues.calendars(language));
                for (Placed<Guide> guide : said.guides().values()) {
                    papers(guide.value(), edition).forEach(paper -> PrintRun.of(said, guide, language, paper,
                            writer, proof, room).filter(run -> OfficeCopies.isPrinted(base, run))
                            .ifPresent(runs::add));
                }
            }
        }
        return new SetGuides(room, runs, OfficeCopies.of(base, runs), Forms.all(tongues, room, proof),
                Forms.ofOffices(tongues, room, proof), rows);
    }

    static List<String> papers(Guide guide, Edition edition) {
        return guide.papers().isEmpty() ? edition.papers() : guide.papers();
    }

    /** For printers that turn the sheet on its short edge, and for those that turn it on its long edge. */
    private static List<PrintedCopy> generic(PrintRun run) {
        String path = "foldouts/" + run.name();
        return List.of(new PrintedCopy(path + ".pdf", run, run.generic(), FlipEdge.SHORT),
                new PrintedCopy(path + ".long-edge.pdf", run, run.generic(), FlipEdge.LONG));
    }

    /** What does not fit, where it was written; the same thing on two papers is said once for each. */
    List<Finding> findings() {
        return List.copyOf(findings);
    }

    /** How full every panel of the generic copies is; once for each paper, however the sheet is turned. */
    List<FitRow> fit() {
        return fit;
    }

    /** Prints every copy; the type is cut once to the characters of the whole publication. */
    void print(OutputFolder folder) throws IOException {
        try {
            Stream.<Printing>concat(copies.stream().map(copy -> () -> print(copy, folder)),
                    Stream.concat(forms.stream(), officeForms.stream()).map(form -> () -> form.print(folder)))
                    .parallel().forEach(Printing::run);
        } catch (UncheckedIOException failed) {
            throw failed.getCause();
        }
    }

    private void print(PrintedCopy copy, OutputFolder folder) throws IOException {
        room.print(Optional.ofNullable(orders.get(copy.path())), () -> {
            SheetOrder order = copy.order();
            return order.job(copy.run().set(copy.office(), order.setting()));
        }, copy.path(), folder);
    }

    /** One file's. */
    private interface Printing {
        void print() throws IOException;

        default void run() {
            try {
                print();
            } catch (IOException failed) {
                throw new UncheckedIOException(failed);
            }
        }
    }
}
