package org.fieldfold.manuscript;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.fieldfold.calendar.Calendars;
import org.fieldfold.calendar.Place;
import org.fieldfold.entry.Audience;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Edition;
import org.fieldfold.entry.Units;
import org.fieldfold.prose.Run;
import org.fieldfold.source.Span;

/** Writes the handbook: ways in, every entry in full, and what is looked up. */
public final class HandbookWriter {
    private final ContentBase base;
    private final Phrases said;
    private final Phrases phrases;
    private final Register register;
    private final News news;
    private final Reader reader;
    private final Calendars calendars;

    public HandbookWriter(ContentBase base, Phrases phrases) {
        this(base, phrases, News.NONE);
    }

    /** @param news since the last edition */
    /** Quantities stand there in both systems of units: who reads it is not known. */
    public HandbookWriter(ContentBase base, Phrases said, News news) {
        this(base, said, news, new Calendars(base));
    }

    /** @param calendars of this base */
    public HandbookWriter(ContentBase base, Phrases said, News news, Calendars calendars) {
        Phrases phrases = said.with(Optional.of(Units.BOTH));
        this.base = base;
        this.said = said;
        this.phrases = phrases;
        this.register = new Register(base, phrases);
        this.news = news;
        this.reader = new Reader(Audience.FIELD, List.of(), false, phrases);
        this.calendars = calendars;
    }

    /** Pages that belong together, of what they look up. */
    interface Writing {
        List<Page> pages(Register register, Calendars calendars);
    }

    /** A file beside them, of what it looks up; there need not be one. */
    interface Filing {
        Optional<Enclosure> file(ContentBase base, Calendars calendars);
    }

    /** Has pages written, or takes them from an earlier writing. */
    interface Desk {
        /**
         * Some pages.
         *
         * @param name that no other pages of the book have
         * @param of what they are made of besides the base
         */
        List<Leaf> pages(String name, String of, Writing writing);

        /** The same of pages that know no more of pests than there is in a view. */
        List<Leaf> pages(String name, String of, PestView view, Writing writing);

        /** A page that is made of more than can be told. */
        Leaf page(Page page);

        /**
         * A file that knows no more of pests than calendars do.
         *
         * @param name that neither pages nor another file of the book have
         */
        Optional<Enclosure> file(String name, Filing filing);
    }

    /** Where everything is written. */
    private final class Clean implements Desk {
        private final Map<PestView, ContentBase> views = new EnumMap<>(PestView.class);

        @Override
        public List<Leaf> pages(String name, String of, Writing writing) {
            return writing.pages(register, calendars).stream().map(this::page).toList();
        }

        @Override
        public List<Leaf> pages(String name, String of, PestView view, Writing writing) {
            return writing.pages(new Register(in(view), phrases), calendars.of(in(view))).stream().map(this::page)
                    .toList();
        }

        private ContentBase in(PestView view) {
            return views.computeIfAbsent(view, first -> PestView.in(base, view.of(base)));
        }

        @Override
        public Leaf page(Page page) {
            return Leaf.of(page, Optional.empty());
        }

        @Override
        public Optional<Enclosure> file(String name, Filing filing) {
            return filing.file(in(PestView.SEASON), calendars.of(in(PestView.SEASON)));
        }
    }

    /**
     * The whole handbook.
     *
     * @param proof whether findings of severity error stand
     */
    public Book write(boolean proof) {
        return write(proof, new Clean());
    }

    Book write(boolean proof, Desk desk) {
        Edition edition = base.edition().value();
        Line foot = Line.of().strong(phrases.say("foot.label"));
        edition.notice().ifPresent(notice -> foot.plain(" " + phrases.say("foot.demonstration")));
        return new Book(edition.title(), phrases.language(), edition.publisher(), edition.year(),
                phrases.say("book.edition.short", edition.year(), phrases.date(edition.validUntil())),
                proof ? Optional.of(phrases.say("proof")) : Optional.empty(), foot.runs(), pages(desk), files(desk));
    }

    private List<Leaf> pages(Desk desk) {
        List<Leaf> pages = new ArrayList<>();
        Optional<Page> fresh = new NewsPage(register, news).page();
        pages.addAll(desk.pages("start", String.valueOf(fresh.isPresent()), PestView.FACE, (known, dates) ->
                List.of(new StartPage(known, fresh.isPresent()).page())));
        fresh.map(desk::page).ifPresent(pages::add);
        pages.addAll(desk.pages("finder", "", PestView.FACE, (known, dates) -> new FinderPages(known).pages()));
        pages.addAll(desk.pages("count", "", PestView.FACE, (known, dates) ->
                List.of(new CountPage(known, reader).page())));
        base.pests().keySet().forEach(id -> pages.addAll(desk.pages("pests/" + id, "", (known, dates) ->
                List.of(new PestPage(known, known.base().pests().get(id), reader, dates).page()))));
        pages.addAll(reference(desk, "enemies", ReferencePages::enemies));
        base.enemies().keySet().forEach(id -> pages.addAll(desk.pages("enemies/" + id, "", (known, dates) ->
                List.of(new EnemyPage(known, known.base().enemies().get(id), reader).page()))));
        pages.addAll(reference(desk, "practices", ReferencePages::practices));
        base.practices().keySet().forEach(id -> pages.addAll(desk.pages("practices/" + id, "", PestView.FACE,
                (known, dates) ->
                List.of(new PracticePage(known, known.base().practices().get(id), reader).page()))));
        pages.addAll(reference(desk, "chapters", ReferencePages::chapters));
        base.chapters().keySet().forEach(id -> pages.addAll(reference(desk, "chapters/" + id, known ->
                known.chapter(id))));
        pages.addAll(desk.pages("tools", "", PestView.FACE, (known, dates) -> List.of(new ReckonerPage(known).page(),
                new FieldPages(known).walks(), new FieldPages(known).catchTest(), new NotesPage(known).page())));
        pages.addAll(reference(desk, "materials", ReferencePages::materials));
        pages.addAll(reference(desk, "cautions", ReferencePages::cautions));
        pages.addAll(reference(desk, "sources", ReferencePages::sources));
        pages.addAll(desk.pages("weeks", "", PestView.SEASON, (known, dates) -> new WeeksPages(known, dates).pages()));
        pages.addAll(desk.pages("office", "", (known, dates) -> List.of(new OfficePage(known).page())));
        base.unread().entrySet().forEach(file -> pages.add(desk.page(unread(file))));
        return pages;
    }

    private List<Enclosure> files(Desk desk) {
        List<Enclosure> files = new ArrayList<>();
        for (Place place : calendars.places()) {
            String station = place.stations().get(0).id();
            base.guides().keySet().forEach(guide -> desk.file("files/" + station + "/" + guide, (read, dates) ->
                    CalendarDownloads.file(read, said, dates, guide, new Place(List.of(read.stations().get(station)
                            .value())))).ifPresent(files::add));
        }
        return files;
    }

    private static List<Leaf> reference(Desk desk, String name, Function<ReferencePages, Page> page) {
        return desk.pages(name, "", (known, dates) -> List.of(page.apply(new ReferencePages(known))));
    }

    /** An entry that could not be read keeps a page that says so. */
    private Page unread(Map.Entry<String, Span> file) {
        String id = file.getKey();
        Span origin = file.getValue();
        return new Page(id, Page.Kind.REFERENCE, id, Places.START, List.of(new Page.Part("top", "", List.of(
                new Block.Title(List.of(Run.plain(id)), List.of(), origin),
                new Block.Notice(List.of(Run.strong(phrases.say("unread", origin.place()))), origin)))),
                origin);
    }
}
