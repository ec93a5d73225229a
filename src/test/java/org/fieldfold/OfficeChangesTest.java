package org.fieldfold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.fieldfold.calendar.Calendars;
import org.fieldfold.content.BaseLoader;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Guide;
import org.fieldfold.entry.LocalNote;
import org.fieldfold.entry.Office;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Text;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.manuscript.Block;
import org.fieldfold.manuscript.GuideWriter;
import org.fieldfold.manuscript.Manuscript;
import org.fieldfold.manuscript.OfficePanel;
import org.fieldfold.manuscript.Phrases;
import org.fieldfold.manuscript.Section;
import org.fieldfold.pdf.Conformance;
import org.fieldfold.pdf.Press;
import org.fieldfold.source.Finding;
import org.fieldfold.source.Severity;
import org.fieldfold.translation.TranslatedBase;
import org.fieldfold.typeset.PrintMeFirst;
import org.fieldfold.typeset.SetGuide;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Offices that leave entries out and add notes: all that remains is word for word what everybody's copies
 * say.
 */
class OfficeChangesTest {
    private static ContentBase base;
    private static Press press;

    @BeforeAll
    static void read() throws IOException {
        base = BaseLoader.load(Path.of("content")).base().orElseThrow();
        Map<String, byte[]> figures = new HashMap<>(PrintMeFirst.figures());
        base.figures().values().forEach(figure -> figures.put(figure.value().id(), figure.value().bytes()));
        press = Press.of(figures);
    }

    private static OfficePanel tarnfield(List<String> leaveOut, List<LocalNote> notes) {
        Placed<Office> placed = base.offices().get("tarnfield");
        Office own = placed.value();
        return OfficePanel.of(new Placed<>(new Office(own.id(), own.name(), own.county(), own.languages(),
                own.paper(),
                own.flip(), own.units(), own.station(), own.guides(), own.forms(), leaveOut, notes,
                own.contact(), own.requests()),
                placed.spans()));
    }

    private static LocalNote note(String entry) {
        return new LocalNote(entry, Text.of("Seen by the weir in 2026. Bring us one."), "Osric Fenn",
                LocalDate.of(2026, 11, 3));
    }

    private static List<LocalNote> notesOn(Guide guide) {
        return guide.entries().stream().map(OfficeChangesTest::note).toList();
    }

    private static PrintRun run(ContentBase said, String guide, String language) {
        GuideWriter writer = new GuideWriter(said, Phrases.in(language));
        return PrintRun.of(said, said.guides().get(guide), language, "letter", writer, false, press)
                .orElseThrow();
    }

    private static List<Section> entries(Manuscript manuscript) {
        return manuscript.sections().stream().filter(section -> section.kind() == Section.Kind.ENTRY)
                .toList();
    }

    private static boolean isNote(Block block) {
        return block instanceof Block.LocalNote;
    }

    /** Each entry of each guide left out in turn, with a note on all the others. */
    @Test
    void whatRemainsIsWhatEverybodyReads() {
        int compared = 0;
        for (String language : List.of("en", "es")) {
            ContentBase said = TranslatedBase.in(base, language);
            GuideWriter writer = new GuideWriter(said, Phrases.in(language));
            for (Placed<Guide> guide : said.guides().values()) {
                Manuscript all = writer.write(guide, OfficePanel.generic(said.edition()), false);
                Map<String, List<Block>> known = entries(all).stream()
                        .collect(Collectors.toMap(Section::id, Section::blocks));
                for (String left : guide.value().entries()) {
                    Manuscript copy = writer.rewrite(all, guide, tarnfield(List.of(left),
                            notesOn(guide.value())));
                    List<Section> sections = entries(copy);
                    assertEquals(guide.value().entries().stream().filter(id -> !id.equals(left)).toList(),
                            sections.stream().map(Section::id).toList());
                    for (Section section : sections) {
                        List<Block> blocks = section.blocks();
                        assertEquals(known.get(section.id()), blocks.subList(0, blocks.size() - 1),
                                section.id());
                        assertTrue(isNote(blocks.get(blocks.size() - 1)), "a note behind all else");
                        tiersInOrder(blocks);
                        compared++;
                    }
                    assertEquals(all.foot(), copy.foot());
                }
            }
        }
        assertTrue(compared > 200, compared + " sections");
    }

    private static void tiersInOrder(List<Block> blocks) {
        List<Block.Tier> tiers = blocks.stream().filter(Block.Tier.class::isInstance)
                .map(Block.Tier.class::cast)
                .toList();
        List<Integer> numbers = tiers.stream().map(Block.Tier::tier).toList();
        assertEquals(numbers.stream().sorted().toList(), numbers);
        tiers.stream().filter(tier -> tier.tier() == 3).forEach(tier -> assertFalse(tier.after().isEmpty()));
    }

    @Test
    void aLeftOutEntryIsOnNoPanelAndItsLookAlikesStillNameIt() throws IOException {
        for (String language : List.of("en", "es")) {
            ContentBase said = TranslatedBase.in(base, language);
            PrintRun run = run(said, "sweet-corn", language);
            String words = printed(run, run.office("hazel-ridge"));
            String name = Phrases.capital(said.pests().get("fall-armyworm").value().names().common());
            assertFalse(words.contains(name), name);
            assertFalse(words.contains("Spodoptera"), "its scientific name");
            assertTrue(words.contains(Phrases.in(language).say("cover.part", 2, 3).substring(0, 20)), words);
            String mark = said.pests().get("corn-earworm").value().lookAlikes().stream()
                    .filter(one -> one.entry().equals("fall-armyworm")).findFirst().orElseThrow().mark()
                    .pocket()
                    .words();
            assertTrue(entries(run.manuscript(run.office("hazel-ridge"))).toString()
                    .contains(mark.substring(0, 20)),
                    mark);
        }
    }

    /** ISO 14289-1 and PDF/A-2a by veraPDF, of a copy in Spanish with a note. */
    @Test
    void aNoteIsSignedAndTheCopyIsSound() throws IOException {
        ContentBase said = TranslatedBase.in(base, "es");
        PrintRun run = run(said, "onion-family", "es");
        OfficePanel office = run.office("tarnfield");
        SetGuide set = run.set(office);
        assertEquals(List.of(), run.findings(office, set, run.set(run.generic()).findings()));
        byte[] pdf = print(run, set);
        assertEquals(List.of(), Conformance.failures(pdf));
        String words = text(pdf);
        assertTrue(words.contains("Nota local. Vista en huertos junto a la estación"), words);
        assertTrue(words.contains("(Osric Fenn, Oficina del Condado de Tarnfield, 3"), words);
    }

    @Test
    void aNoteWithoutRoomStandsOnTheOfficesPanelAndSaysSo() throws IOException {
        int moved = 0;
        int stayed = 0;
        for (String guide : List.of("brassicas", "potato")) {
            PrintRun run = run(base, guide, "en");
            List<LocalNote> notes = notesOn(base.guides().get(guide).value()).subList(0, 2);
            OfficePanel office = tarnfield(List.of(), notes);
            SetGuide set = run.set(office);
            SetGuide without = run.set(run.generic());
            List<Finding> findings = run.findings(office, set, without.findings());
            assertTrue(findings.stream().allMatch(finding -> finding.severity() == Severity.WARNING
                    && finding.rule().equals("does-not-fit")), findings.toString());
            String words = text(print(run, set));
            assertEquals(notes.size(), count(words, "Seen by the weir in 2026."), words);
            assertEquals(findings.size(), count(words, "Local note on"), words);
            assertTrue(shortened(without).containsAll(shortened(set)), "a note costs its entry nothing");
            moved += findings.size();
            stayed += notes.size() - findings.size();
        }
        assertTrue(moved > 0 && stayed > 0, moved + " moved, " + stayed + " stayed");
    }

    @Test
    void moreNotesThanThereIsRoomForAreAnErrorInTheOfficesFile() {
        PrintRun run = run(base, "brassicas", "en");
        OfficePanel office = tarnfield(List.of(), notesOn(base.guides().get("brassicas").value()));
        List<Finding> errors = run.findings(office, run.set(office), run.set(run.generic()).findings())
                .stream()
                .filter(finding -> finding.severity() == Severity.ERROR).toList();
        assertFalse(errors.isEmpty());
        errors.forEach(error -> assertTrue(error.span().file().path().endsWith("offices/tarnfield.yaml"),
                error.toString()));
    }

    private static int count(String words, String part) {
        return words.split(java.util.regex.Pattern.quote(part), -1).length - 1;
    }

    /** On the panels of entries; the office may give up some of its own panel for what it has to say. */
    private static List<String> shortened(SetGuide set) {
        List<String> shortened = new ArrayList<>();
        set.fit().stream().filter(panel -> !panel.section().equals("contact")).forEach(panel -> panel.forms()
                .stream().filter(SetGuide.Form::brief)
                .forEach(form -> shortened.add(form.origin().place())));
        return shortened;
    }

    /** What costs time once is shared by all offices that change nothing, and kept for none that does. */
    @Test
    void onlyCopiesThatChangeSomethingAreSetAnew() {
        PrintRun run = run(base, "onion-family", "en");
        SetGuide generic = run.set(run.generic());
        assertFalse(generic.shared().panels().isEmpty());
        assertSame(generic.shared(), run.set(run.office("lowbridge")).shared());
        assertSame(generic.shared(), run.set(run.office("hazel-ridge")).shared());
        assertTrue(run.set(run.office("tarnfield")).shared().panels().isEmpty());
    }

    @Test
    void aGuideOfWhichNothingIsLeftIsNotPrinted() {
        PrintRun run = run(base, "potato", "en");
        List<String> all = base.guides().get("potato").value().entries();
        Office without = tarnfield(all, List.of()).office().orElseThrow();
        assertFalse(run.isFor(without));
        assertTrue(run.isFor(tarnfield(all.subList(0, 2), List.of()).office().orElseThrow()));
    }

    @Test
    void theOfficesCalendarGoesWithoutWhatIsLeftOut() {
        Map<String, byte[]> files = OfficeCalendars.in(base, new Calendars(base), Phrases.in("en"));
        String with = new String(files.get("offices/northmoor/sweet-corn.en.ics"), StandardCharsets.UTF_8);
        String without = new String(files.get("offices/hazel-ridge/sweet-corn.en.ics"),
                StandardCharsets.UTF_8);
        assertTrue(with.contains("fall-armyworm"), with);
        assertFalse(without.contains("armyworm"), without);
        assertTrue(without.contains("european-corn-borer"), without);
    }

    private static String printed(PrintRun run, OfficePanel office) throws IOException {
        return text(print(run, run.set(office)));
    }

    private static byte[] print(PrintRun run, SetGuide set) {
        press.freeze(run.job(set, FlipEdge.SHORT).characters());
        return press.print(run.job(set, FlipEdge.SHORT));
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }
}
