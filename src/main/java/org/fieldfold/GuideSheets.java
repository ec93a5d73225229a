package org.fieldfold;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.fieldfold.calendar.Calendars;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Edition;
import org.fieldfold.entry.Guide;
import org.fieldfold.entry.Office;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Units;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.manuscript.GuideWriter;
import org.fieldfold.manuscript.News;
import org.fieldfold.manuscript.OfficePanel;
import org.fieldfold.manuscript.Phrases;
import org.fieldfold.pdf.PrintJob;
import org.fieldfold.report.FitRow;
import org.fieldfold.source.Finding;

/**
 * The pocket copies of all guides in one language. A guide's copies for everybody are one batch; each of an office's
 * copies is one that leans on it, so that nothing is written again for a telephone number but what shows it.
 */
final class GuideSheets {
    private final ContentBase base;
    private final String language;
    private final Calendars calendars;
    private final News news;
    private final boolean proof;
    private final PrintRoom room;
    private final FitRows rows;
    /** Written once for all who need them; what they read is noted for the batch of their guide. */
    private final Map<Copies, Optional<PrintRun>> runs = new ConcurrentHashMap<>();

    /** Copies of a guide that differ in whom to call. */
    private record Copies(String guide, Optional<Units> units, String paper) {
    }

    GuideSheets(Tongues tongues, String language, News news, boolean proof, PrintRoom room,
            FitRows rows) {
        this.base = tongues.in(language);
        this.language = language;
        this.calendars = tongues.calendars(language);
        this.news = news;
        this.proof = proof;
        this.room = room;
        this.rows = rows;
    }

    /** Those for everybody, guide by guide; and, with no sheet of their own, those in units that only offices take. */
    List<Batch> forAll() {
        List<Batch> batches = new ArrayList<>();
        for (Optional<Units> units : OfficeCopies.units(base)) {
            for (Placed<Guide> guide : base.guides().values()) {
                String id = guide.value().id();
                List<String> papers = papers(guide.value(), units);
                if (!papers.isEmpty()) {
                    batches.add(new Batch(name(id, units), papers + " " + proof + " " + calendars.named()
                            + news.about(guide.value().entries()), List.of(),
                            read -> generic(read, id, units, papers)));
                }
            }
        }
        return batches;
    }

    private static String name(String guide, Optional<Units> units) {
        return "guides/" + guide + units.map(own -> " in " + own).orElse("");
    }

    private boolean isForAll(Optional<Units> units) {
        return units.equals(edition().units());
    }

    private Edition edition() {
        return base.edition().value();
    }

    /** Those on which somebody has a guide in these units. */
    private List<String> papers(Guide guide, Optional<Units> units) {
        return SetGuides.papers(guide, edition()).stream().filter(paper -> isForAll(units)
                || base.offices().values().stream().anyMatch(office -> has(office.value(), guide, units, paper)))
                .toList();
    }

    private boolean has(Office office, Guide guide, Optional<Units> units, String paper) {
        return OfficeCopies.has(office, guide, language, units, paper, edition());
    }

    private GuideWriter writer(ContentBase read, Optional<Units> units) {
        return new GuideWriter(read, Phrases.in(language).with(units), news, calendars.of(read));
    }

    private Optional<PrintRun> run(ContentBase read, Copies copies, GuideWriter writer) {
        return runs.computeIfAbsent(copies, unwritten -> PrintRun.of(read, read.guides().get(copies.guide()), language,
                copies.paper(), writer, proof, room));
    }

    private List<PrintedSheet> generic(ContentBase read, String guide, Optional<Units> units, List<String> papers) {
        GuideWriter writer = writer(read, units);
        List<PrintRun> all = papers.stream().flatMap(paper ->
                run(read, new Copies(guide, units, paper), writer).stream()).toList();
        return isForAll(units) ? all.stream().flatMap(run -> generic(read, run).stream()).toList() : List.of();
    }

    /** For printers that turn the sheet on its short edge, and for those that turn it on its long edge. */
    private List<PrintedSheet> generic(ContentBase read, PrintRun run) {
        SheetOrder order = run.order(run.generic(), FlipEdge.SHORT);
        Look look = room.look(order, () -> run.set(run.generic(), order.setting()));
        List<FitRow> fit = rows.of(run.heading(), run.paper(), look.fit());
        return List.of(new PrintedSheet(room.facts(path(run, ".pdf"), order, look, read, fit, look.findings()),
                        () -> run.job(run.generic(), FlipEdge.SHORT)),
                new PrintedSheet(room.facts(path(run, ".long-edge.pdf"), run.order(run.generic(), FlipEdge.LONG), look,
                        read, List.of(), List.of()), () -> run.job(run.generic(), FlipEdge.LONG)));
    }

    private static String path(PrintRun run, String ending) {
        return "foldouts/" + run.name() + ending;
    }

    /**
     * Those of the offices, each with its own telephone number.
     *
     * @param said what is said of a copy for everybody, by its path
     */
    List<Batch> ofOffices(Function<String, List<Finding>> said) {
        List<Batch> batches = new ArrayList<>();
        for (Placed<Office> placed : base.offices().values()) {
            Office office = placed.value();
            Optional<Units> units = office.units().or(() -> edition().units());
            for (Placed<Guide> guide : base.guides().values()) {
                if (papers(guide.value(), units).contains(office.paper())
                        && has(office, guide.value(), units, office.paper())) {
                    String id = guide.value().id();
                    batches.add(new Batch("offices/" + office.id() + "/" + id, "",
                            List.of(name(id, edition().units()), name(id, units)), read -> ofOffice(read, office.id(),
                            new Copies(id, units, office.paper()), said).stream().toList()));
                }
            }
        }
        return batches;
    }

    private Optional<PrintedSheet> ofOffice(ContentBase read, String id, Copies copies,
            Function<String, List<Finding>> said) {
        GuideWriter writer = writer(read, copies.units());
        return run(read, copies, writer).map(run -> {
            PrintRun noted = run.reading(read, writer, room);
            OfficePanel panel = noted.office(id);
            FlipEdge flip = panel.office().flatMap(Office::flip).orElse(FlipEdge.SHORT);
            SheetOrder order = noted.order(panel, flip);
            Look look = room.look(order, () -> noted.set(panel, order.setting()));
            List<Finding> found = Stream.concat(look.findings().stream(), noted.moved(panel).stream()).toList();
            List<Finding> own = noted.findings(panel, found, said.apply(path(run, ".pdf")));
            return new PrintedSheet(room.facts("offices/" + id + "/" + run.name() + ".pdf", order, look, read,
                    List.of(), own), job(noted.changes(panel) ? noted : run, id, flip));
        });
    }

    /** A thousand copies that are kept cost much: it names the office and holds nothing of its own. */
    private static Supplier<PrintJob> job(PrintRun run, String office, FlipEdge flip) {
        return () -> run.job(run.office(office), flip);
    }
}
