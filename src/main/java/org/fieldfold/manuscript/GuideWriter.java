package org.fieldfold.manuscript;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.fieldfold.calendar.Calendars;
import org.fieldfold.calendar.Place;
import org.fieldfold.entry.Contact;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Crop;
import org.fieldfold.entry.Edition;
import org.fieldfold.entry.Guide;
import org.fieldfold.entry.LocalNote;
import org.fieldfold.entry.Office;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.entry.Source;
import org.fieldfold.entry.Standing;
import org.fieldfold.entry.Text;
import org.fieldfold.entry.TypeLimits;
import org.fieldfold.entry.Units;
import org.fieldfold.prose.Prose;
import org.fieldfold.prose.Run;
import org.fieldfold.source.Span;

/** Writes a pocket guide: cover, how to scout, its entries, and whom to ask. */
public final class GuideWriter {
    /** Sizes of body type for a pocket guide that names none, in points. */
    private static final TypeLimits POCKET_TYPE = new TypeLimits(7.5, 9);

    private static final char NO_BREAK = '\u00a0';

    private final ContentBase base;
    private final Phrases phrases;
    private final Edition edition;
    /** By guide, its entries and station: offices that share a station share its days. */
    private final Map<String, Optional<Block>> weeks = new ConcurrentHashMap<>();
    /** By guide: what is for everybody is the same on all papers. */
    private final Map<String, Manuscript> generic = new ConcurrentHashMap<>();
    private final News news;
    private final Calendars calendars;

    public GuideWriter(ContentBase base, Phrases phrases) {
        this(base, phrases, News.NONE);
    }

    /** @param news since the last edition */
    public GuideWriter(ContentBase base, Phrases phrases, News news) {
        this(base, phrases, news, new Calendars(base));
    }

    /** @param calendars of this base */
    public GuideWriter(ContentBase base, Phrases phrases, News news, Calendars calendars) {
        this.base = base;
        this.phrases = phrases;
        this.news = news;
        this.edition = base.edition().value();
        this.calendars = calendars;
    }

    /** The manuscript of a guide for everybody; it is written once. */
    public Manuscript generic(Placed<Guide> guide, boolean proof) {
        return generic.computeIfAbsent(guide.value().id() + "@" + proof, unseen ->
                write(guide, OfficePanel.generic(base.edition()), proof));
    }

    /** The units of its quantities; empty for each in its own. */
    public Optional<Units> units() {
        return phrases.units();
    }

    /**
     * The manuscript of a guide.
     *
     * @param office who is called on this copy: a county office, or the edition's own contact
     * @param proof whether findings of severity error stand
     */
    public Manuscript write(Placed<Guide> whole, OfficePanel office, boolean proof) {
        Placed<Guide> placed = kept(whole, office);
        Guide guide = placed.value();
        Reader reader = new Reader(guide.audience(), guide.crops(), true, phrases);
        List<Section> sections = new ArrayList<>();
        sections.add(cover(placed, office));
        sections.add(scouting(placed, reader));
        int tab = 1;
        for (String id : guide.entries()) {
            sections.add(noted(entry(id, placed, tab++, reader), id, office, guide));
        }
        sections.add(contact(placed, office));
        TypeLimits type = guide.type().orElse(POCKET_TYPE);
        return new Manuscript(guide.id(), guide.title(), phrases.language(), edition.year(),
                phrases.date(edition.validUntil()),
                proof ? Optional.of(phrases.say("proof")) : Optional.empty(), foot(), ink(guide),
                new Manuscript.TypeRange(type.from(), type.to()), sections);
    }

    /**
     * The same guide for another office: only its cover and its last section are written anew, unless that
     * office leaves entries out or notes something on them.
     */
    public Manuscript rewrite(Manuscript written, Placed<Guide> placed, OfficePanel office) {
        if (office.changes(placed.value())) {
            return write(placed, office, written.proof().isPresent());
        }
        List<Section> sections = new ArrayList<>(written.sections());
        sections.set(0, cover(placed, office));
        sections.set(sections.size() - 1, contact(placed, office));
        return written.of(sections);
    }

    /** A guide without some of its entries says so where it would else say what they are. */
    private Placed<Guide> kept(Placed<Guide> whole, OfficePanel office) {
        Guide kept = office.keeps(whole.value());
        int all = whole.value().entries().size();
        return kept.entries().size() == all ? whole : new Placed<>(kept.toServe(
                phrases.say("cover.part", kept.entries().size(), all)), whole.spans());
    }

    /** An office's notes stand behind all that the base says of an entry. */
    private Section noted(Section section, String entry, OfficePanel office, Guide guide) {
        List<Block> blocks = new ArrayList<>(section.blocks());
        office.notes().stream().filter(note -> note.note().entry().equals(entry)).forEach(note ->
                blocks.add(note(note, phrases.say("local"), office, guide)));
        return blocks.size() == section.blocks().size() ? section : new Section(section.id(), section.kind(),
                section.tab(), section.name(), blocks, section.origin());
    }

    private Block note(OfficePanel.Note placed, String label, OfficePanel office, Guide guide) {
        LocalNote note = placed.note();
        Line line = Line.of().strong(label).plain(" ").add(note.text().pocketFor(guide.audience()).line());
        return new Block.LocalNote(line.plain(" ").plain(phrases.say("local.signed", note.by(), office.name(),
                phrases.shortDate(note.date()).replace(' ', NO_BREAK))).runs(), placed.origin());
    }

    private static Block plain(String words, Span origin) {
        return new Block.Paragraph(List.of(Run.plain(words)), List.of(), origin);
    }

    /** The caution at the foot of every panel and page. */
    public List<Run> foot() {
        Line line = Line.of().strong(phrases.say("foot.label"));
        edition.notice().ifPresent(notice -> line.plain(" " + phrases.say("foot.demonstration")));
        return line.plain(" " + phrases.say("foot.holds", phrases.shortDate(edition.validUntil())
                .replace(' ', NO_BREAK))).runs();
    }

    private String ink(Guide guide) {
        return guide.crops().stream().filter(base.crops()::containsKey).findFirst()
                .map(crop -> base.crops().get(crop).value().ink()).orElse("#000000");
    }

    private Section cover(Placed<Guide> placed, OfficePanel office) {
        Guide guide = placed.value();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Title(List.of(Run.plain(guide.title())), List.of(Run.plain(guide.purpose())),
                placed.at("title")));
        String crops = guide.crops().stream().filter(base.crops()::containsKey)
                .map(crop -> base.crops().get(crop).value()).map(Crop::name)
                .collect(Collectors.joining(", "));
        blocks.add(plain(phrases.say("cover.crops", crops), placed.at("crops")));
        frontispiece(guide).ifPresent(blocks::add);
        List<List<Run>> inside = new ArrayList<>();
        for (String id : guide.entries()) {
            inside.add(List.of(Run.plain(Optional.ofNullable(base.pests().get(id))
                    .map(pest -> Phrases.capital(pest.value().names().common())).orElse(id))));
        }
        blocks.add(new Block.Items(true, inside, placed.at("entries")));
        blocks.add(new Block.Paragraph(Line.of().strong(phrases.say("cover.holds",
                phrases.date(edition.validUntil()))).runs(), List.of(), base.edition().at("valid-until")));
        blocks.add(new Block.Paragraph(Line.of().strong(phrases.say("call") + " " + office.contact().phone())
                .plain(" · " + office.name()).runs(), List.of(), office.origin()));
        notice().ifPresent(blocks::add);
        return new Section("cover", Section.Kind.COVER, 0, guide.title(), blocks, placed.at("title"));
    }

    /** The first drawing of the first entry: a cover that is known again from across a counter. */
    private Optional<Block> frontispiece(Guide guide) {
        return guide.entries().stream().findFirst().map(base.pests()::get).flatMap(placed -> {
            PestEntry pest = placed.value();
            return base.figuresOf(pest.id(), pest.figures(), pest.stages()).stream().findFirst()
                    .map(figure -> {
                        String name = Phrases.capital(pest.names().common());
                        return new Block.Plates(List.of(new Block.Plate(figure.id(), name,
                                figure.note().alt().orElse(name), Optional.empty())), placed.at("names"));
                    });
        });
    }

    private Optional<Block> notice() {
        return edition.notice().map(notice ->
                new Block.Notice(notice.pocket().line(), base.edition().at("notice")));
    }

    private Section scouting(Placed<Guide> placed, Reader reader) {
        Guide guide = placed.value();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Title(List.of(Run.plain(phrases.say("scouting"))), List.of(),
                placed.at("scouting")));
        List<List<Run>> lines = guide.scouting().stream().map(reader::read).toList();
        blocks.add(new Block.Items(true, lines, placed.at("scouting")));
        blocks.add(new Block.Heading(3, List.of(Run.strong(phrases.say("tiers"))), placed.at("scouting")));
        List<List<Run>> tiers = new ArrayList<>();
        for (int tier = 1; tier <= 3; tier++) {
            tiers.add(Line.of().strong(phrases.say("tier." + tier))
                    .plain(phrases.say("tier.why." + tier)).runs());
        }
        blocks.add(new Block.Items(true, tiers, placed.at("scouting")));
        blocks.add(plain(phrases.say("abbreviations"), placed.at("scouting")));
        news(placed).ifPresent(blocks::add);
        return new Section("scouting", Section.Kind.SCOUTING, 0, phrases.say("scouting"), blocks,
                placed.at("scouting"));
    }

    /** What is new in these entries; it is left out, from its end, where the panel has no room for it. */
    private Optional<Block> news(Placed<Guide> placed) {
        List<List<Run>> lines = new ArrayList<>();
        news.lines(base, phrases, placed.value().entries()::contains).forEach(item -> lines.add(
                lines.isEmpty() ? Line.of().strong(phrases.say("news")).plain(" · ").add(item.runs()).runs()
                : item.runs()));
        return lines.isEmpty() ? Optional.empty()
                : Optional.of(new Block.Items(false, lines, 0, base.edition().at("year")));
    }

    /** An entry that could not be read says so on its panel: it never silently disappears from a guide. */
    private Section entry(String id, Placed<Guide> guide, int tab, Reader reader) {
        Placed<PestEntry> pest = base.pests().get(id);
        if (pest != null) {
            return new EntryWriter(base, reader).section(pest, tab);
        }
        Span origin = base.unread().getOrDefault(id,
                guide.at("entries", guide.value().entries().indexOf(id)));
        return new Section(id, Section.Kind.ENTRY, tab, id, List.of(
                new Block.Title(List.of(Run.plain(id)), List.of(), origin),
                new Block.Notice(List.of(Run.strong(phrases.say("unread", origin.place()))),
                        origin)), origin);
    }

    private Section contact(Placed<Guide> placed, OfficePanel office) {
        Contact contact = office.contact();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Title(List.of(Run.plain(office.name())), List.of(), office.origin()));
        blocks.add(new Block.Paragraph(Line.of().strong(contact.phone()).runs(), List.of(), office.origin()));
        List<String> lines = new ArrayList<>(List.of(contact.email()));
        lines.addAll(contact.address());
        lines.add(contact.hours());
        blocks.add(plain(String.join(" · ", lines), office.origin()));
        for (OfficePanel.Note note : office.moved()) {
            String name = Optional.ofNullable(base.pests().get(note.note().entry()))
                    .map(pest -> pest.value().names().common()).orElse(note.note().entry());
            blocks.add(note(note, phrases.say("local.on", name), office, placed.value()));
        }
        blocks.add(plain(phrases.say("next.flag"), office.origin()));
        weeks(placed, office).ifPresent(blocks::add);
        List<List<Run>> cautions = edition.cautions().stream().map(Text::pocket).map(Prose::line).toList();
        blocks.add(new Block.Heading(3, List.of(Run.strong(phrases.say("cautions"))),
                base.edition().at("cautions")));
        blocks.add(new Block.Items(false, cautions, base.edition().at("cautions")));
        blocks.add(plain(phrases.say("rates"), base.edition().at("cautions")));
        blocks.add(new Block.Code(edition.handbook(), Line.of().strong(phrases.say("handbook.code"))
                .plain(" ").add(Run.plain(edition.handbook()).to(edition.handbook())).runs(),
                base.edition().at("handbook")));
        sources(placed).ifPresent(blocks::add);
        blocks.add(plain(phrases.say("edition", edition.title(), edition.year(), edition.publisher(),
                phrases.date(edition.validUntil())), base.edition().at("publisher")));
        notice().ifPresent(blocks::add);
        return new Section("contact", Section.Kind.CONTACT, 0, office.name(), blocks, office.origin());
    }

    /** An office's copy tells the days near its station; a generic one those of the whole region. */
    private Optional<Block> weeks(Placed<Guide> placed, OfficePanel office) {
        String where = office.office().map(Office::station).orElse("");
        return weeks.computeIfAbsent(placed.value().id() + placed.value().entries() + "@" + where, unseen -> {
            Place place = office.office().map(calendars::near).orElseGet(calendars::region);
            return new WeeksWriter(phrases, true).block(calendars.of(placed.value(), place),
                    placed.at("entries"));
        });
    }

    /** The sources of the numbers that this guide prints, in alphabetical order. */
    private Optional<Block> sources(Placed<Guide> placed) {
        Set<String> ids = new LinkedHashSet<>();
        for (String id : placed.value().entries()) {
            Optional.ofNullable(base.pests().get(id)).ifPresent(pest -> pest.value()
                    .thresholdsFor(placed.value().audience()).forEach(threshold ->
                            threshold.source().ifPresent(ids::add)));
        }
        Set<String> names = new TreeSet<>();
        for (String id : ids) {
            Optional.ofNullable(base.sources().get(id)).map(Placed::value).map(this::brief)
                    .ifPresent(names::add);
        }
        return names.isEmpty() ? Optional.empty() : Optional.of(new Block.Paragraph(
                Line.of().strong(phrases.say("sources") + " ").plain(String.join("; ", names) + ".").runs(),
                List.of(), placed.at("entries")));
    }

    private String brief(Source source) {
        String name = source.authors() + source.year().map(year -> " " + year).orElse("");
        return source.standing() == Standing.VALUE_FROM_MEMORY
                ? phrases.say("sources.memory.mark", name) : name;
    }
}
