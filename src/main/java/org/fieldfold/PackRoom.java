package org.fieldfold;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.fieldfold.calendar.Calendars;
import org.fieldfold.entry.Audience;
import org.fieldfold.entry.Contact;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Edition;
import org.fieldfold.entry.Guide;
import org.fieldfold.entry.LocalNote;
import org.fieldfold.entry.Office;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Units;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.kept.Kept;
import org.fieldfold.manuscript.Alphabet;
import org.fieldfold.manuscript.CalendarDownload;
import org.fieldfold.manuscript.GuideWriter;
import org.fieldfold.manuscript.News;
import org.fieldfold.manuscript.OfficePanel;
import org.fieldfold.manuscript.Phrases;
import org.fieldfold.pack.CounterPage;
import org.fieldfold.pack.Desk;
import org.fieldfold.pack.Handout;
import org.fieldfold.pack.Miniature;
import org.fieldfold.pack.PackWords;
import org.fieldfold.pack.PackZip;
import org.fieldfold.pdf.Press;
import org.fieldfold.source.Finding;
import org.fieldfold.translation.TranslatedBase;
import org.fieldfold.typeset.SetGuide;

/**
 * Where packs are made, one office after the other, from guides that are set once. What it makes of an office
 * depends on the region but not on which other offices are packed in the same run. Several threads may use it.
 */
final class PackRoom {
    private final ContentBase base;
    private final boolean proof;
    private final Press press;
    private final Map<String, Tongue> tongues = new LinkedHashMap<>();
    private final List<PrintRun> runs = new ArrayList<>();
    /** What is said about the copies for everybody, by the name of their run. */
    private final Map<String, List<Finding>> generic = new HashMap<>();
    private final Set<Integer> characters = new TreeSet<>();
    private final Map<String, Miniature> miniatures = new ConcurrentHashMap<>();

    /** What is said in one language. */
    private record Tongue(ContentBase base, Phrases phrases, Calendars dates, CalendarFiles calendars) {
    }

    PackRoom(ContentBase base, Press press, News news, boolean proof) {
        this.base = base;
        this.proof = proof;
        this.press = press;
        Edition edition = base.edition().value();
        Set<String> papers = base.offices().values().stream().map(office -> office.value().paper())
                .collect(Collectors.toCollection(TreeSet::new));
        for (String language : edition.languages()) {
            ContentBase said = TranslatedBase.in(base, language);
            Phrases phrases = Phrases.in(language);
            Calendars dates = new Calendars(said);
            tongues.put(language, new Tongue(said, phrases, dates, new CalendarFiles(dates,
                    new CalendarDownload(edition, phrases))));
            for (Optional<Units> units : OfficeCopies.units(base)) {
                GuideWriter writer = new GuideWriter(said, phrases.with(units), news, dates);
                for (Placed<Guide> guide : said.guides().values()) {
                    SetGuides.papers(guide.value(), edition).stream().filter(papers::contains).forEach(paper ->
                            PrintRun.of(said, guide, language, paper, writer, proof, press)
                                    .filter(run -> OfficeCopies.isPrinted(base, run)).ifPresent(runs::add));
                }
            }
            said.offices().values().forEach(office -> spell(office.value()));
            phrases.under("").values().forEach(this::spell);
        }
        IntStream.range(0x20, 0x7F).forEach(characters::add);
        List<SetGuide> sets = runs.parallelStream().map(run -> run.set(run.generic())).toList();
        for (int i = 0; i < runs.size(); i++) {
            PrintRun run = runs.get(i);
            SetGuide set = sets.get(i);
            if (run.isForAll()) {
                generic.put(run.name(), set.findings());
            }
            characters.addAll(run.job(set, FlipEdge.SHORT).characters());
        }
        spellForms();
        press.freeze(characters);
    }

    private List<Form> forms(Placed<Office> office, Tongue tongue) {
        return Forms.of(office, "", tongue.base(), tongue.dates(), tongue.phrases(), new PrintRoom(press,
                Kept.nothing()), proof);
    }

    /** Forms say in full what a pocket guide says in short: that may want other characters. */
    private void spellForms() {
        Set<List<Object>> alike = new HashSet<>();
        for (Tongue tongue : tongues.values()) {
            for (Placed<Office> office : tongue.base().offices().values()) {
                Office asking = office.value();
                if (alike.add(List.of(tongue.phrases().language(), asking.paper(), asking.units(), asking.forms(),
                        asking.guides(), asking.leaveOut()))) {
                    forms(office, tongue).forEach(form -> characters.addAll(form.job().characters()));
                }
            }
        }
    }

    private void spell(Office office) {
        Contact contact = office.contact();
        List.of(office.name(), office.county(), contact.phone(), contact.email(), contact.hours())
                .forEach(this::spell);
        contact.address().forEach(this::spell);
        contact.people().forEach(this::spell);
        office.notes().forEach(note -> List.of(note.by(), note.text().pocket().words(),
                note.text().pocketFor(Audience.GARDEN).words()).forEach(this::spell));
    }

    private void spell(String words) {
        words.codePoints().forEach(characters::add);
    }

    /** The characters of all packs: with the office's own file, all that its sheets depend on. */
    Set<Integer> characters() {
        return characters;
    }

    /** What does not fit on the sheets whoever prints them. */
    List<Finding> findings() {
        return generic.values().stream().flatMap(List::stream).distinct().sorted().toList();
    }

    /**
     * All files of an office's pack, by name.
     *
     * @param findings gets what does not fit on this office's copies
     */
    SortedMap<String, byte[]> pack(String id, List<Finding> findings) {
        Office office = base.offices().get(id).value();
        SortedMap<String, byte[]> files = new TreeMap<>();
        for (PrintRun run : runs) {
            if (run.isFor(office)) {
                OfficePanel panel = run.office(id);
                SetGuide set = run.set(panel);
                findings.addAll(run.findings(panel, set, generic.get(run.name())));
                files.put(run.name() + ".pdf", press.print(run.job(set, flip(office))));
            }
        }
        tongues.values().forEach(tongue -> files.putAll(OfficeCalendars.of(office, tongue.base(),
                tongue.calendars(), tongue.phrases().language())));
        for (Tongue tongue : tongues.values()) {
            for (Form form : forms(tongue.base().offices().get(id), tongue)) {
                findings.addAll(form.findings());
                files.put(form.path(), press.print(form.job()));
            }
        }
        Tongue own = tongues.get(FirstSheets.firstOf(office, base.edition().value().languages()));
        for (Form first : FirstSheets.of(own.base().offices().get(id), "", own.base(), press, proof,
                own.phrases())) {
            findings.addAll(first.findings());
            files.put(first.path(), press.print(first.job()));
        }
        files.put("index.html", page(own, id, files).getBytes(StandardCharsets.UTF_8));
        String name = id + "-" + base.edition().value().year();
        files.put(name + ".zip", PackZip.of(name, files));
        return files;
    }

    private String page(Tongue own, String id, SortedMap<String, byte[]> files) {
        Office office = own.base().offices().get(id).value();
        Edition edition = own.base().edition().value();
        List<Handout> handouts = new ArrayList<>();
        for (Placed<Guide> guide : own.base().guides().values()) {
            List<PrintRun> printed = runs.stream().filter(run -> run.guide().equals(guide.value().id())
                    && run.isFor(office)).sorted(Comparator.comparing(run ->
                    office.languages().indexOf(run.language()))).toList();
            if (!printed.isEmpty()) {
                handouts.add(handout(own.base(), guide.value(), id, printed, files));
            }
        }
        handouts.sort(Comparator.comparing(Handout::title, Alphabet.of(own.phrases().language())));
        Contact contact = office.contact();
        Desk desk = new Desk(office.name(), contact.phone(), contact.hours(), contact.people(), contact.email(),
                contact.address());
        String first = "print-me-first." + office.paper();
        return CounterPage.write(new CounterPage.Facts(desk, edition.year(), own.phrases().date(edition.validUntil()),
                first + ".pdf", first + (flip(office) == FlipEdge.SHORT ? ".long-edge.pdf" : ".short-edge.pdf"),
                office.paper(), flip(office), edition.notice().map(notice -> notice.full().words()), proof,
                handouts), PackWords.in(own.phrases().language()));
    }

    /** A guide at an office's counter; {@code printed} are its runs, one for each language. */
    private Handout handout(ContentBase said, Guide guide, String id, List<PrintRun> printed,
            SortedMap<String, byte[]> files) {
        Office office = said.offices().get(id).value();
        PrintRun run = printed.get(0);
        Guide kept = run.kept(office);
        List<String> noted = office.notes().stream().map(LocalNote::entry).toList();
        return new Handout(guide.title(), guide.crops().stream().map(said.crops()::get)
                .filter(Objects::nonNull).map(crop -> crop.value().name()).toList(),
                kept.entries().stream().map(said.pests()::get).filter(Objects::nonNull)
                        .map(pest -> pest.value().names().common()).toList(),
                names(said, guide, office.leaveOut()), names(said, kept, noted),
                run.sheet(flip(office)), miniature(run, office, guide),
                printed.stream().map(one -> copy(one, files)).toList());
    }

    /** Offices that change nothing in a guide have sheets that look alike from afar. */
    private Miniature miniature(PrintRun run, Office office, Guide guide) {
        return office.changes(guide) ? miniature(run, run.set(run.office(office.id())))
                : miniatures.computeIfAbsent(run.name() + " " + office.units(), name ->
                        miniature(run, run.set(run.generic())));
    }

    private Miniature miniature(PrintRun run, SetGuide set) {
        return Miniature.of(set.panels(), run.ink(), press.metrics());
    }

    /** Names of those of some entries that a guide has, in its order. */
    private static List<String> names(ContentBase said, Guide guide, List<String> some) {
        return guide.entries().stream().filter(some::contains).map(said.pests()::get).filter(Objects::nonNull)
                .map(pest -> Phrases.capital(pest.value().names().common())).toList();
    }

    private static Handout.Copy copy(PrintRun run, SortedMap<String, byte[]> files) {
        String calendar = run.guide() + "." + run.language() + ".ics";
        return new Handout.Copy(run.language(), run.name() + ".pdf",
                there(run.name() + ".large-print.pdf", files),
                there(run.name() + ".poster.pdf", files), there(calendar, files));
    }

    private static String there(String name, SortedMap<String, byte[]> files) {
        return files.containsKey(name) ? name : "";
    }

    private static FlipEdge flip(Office office) {
        return office.flip().orElse(FlipEdge.SHORT);
    }
}
