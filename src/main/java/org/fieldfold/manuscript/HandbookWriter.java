package org.fieldfold.manuscript;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fieldfold.calendar.Calendars;
import org.fieldfold.entry.Audience;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Edition;
import org.fieldfold.entry.Units;
import org.fieldfold.prose.Run;
import org.fieldfold.source.Span;

/** Writes the handbook: ways in, every entry in full, and what is looked up. */
public final class HandbookWriter {
    private final ContentBase base;
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
        Phrases phrases = said.with(Optional.of(Units.BOTH));
        this.base = base;
        this.phrases = phrases;
        this.register = new Register(base, phrases);
        this.news = news;
        this.reader = new Reader(Audience.FIELD, List.of(), false, phrases);
        this.calendars = new Calendars(base);
    }

    /**
     * The whole handbook.
     *
     * @param proof whether findings of severity error stand
     */
    public Book write(boolean proof) {
        Edition edition = base.edition().value();
        Line foot = Line.of().strong(phrases.say("foot.label"));
        edition.notice().ifPresent(notice -> foot.plain(" " + phrases.say("foot.demonstration")));
        return new Book(edition.title(), phrases.language(), edition.publisher(), edition.year(),
                phrases.say("book.edition.short", edition.year(), phrases.date(edition.validUntil())),
                proof ? Optional.of(phrases.say("proof")) : Optional.empty(), foot.runs(), pages());
    }

    private List<Page> pages() {
        ReferencePages reference = new ReferencePages(register);
        List<Page> pages = new ArrayList<>();
        Optional<Page> fresh = new NewsPage(register, news).page();
        pages.add(new StartPage(register, fresh.isPresent()).page());
        fresh.ifPresent(pages::add);
        pages.addAll(new FinderPages(register).pages());
        pages.add(new CountPage(register, reader).page());
        base.pests().values().forEach(pest -> pages.add(new PestPage(register, pest, reader, calendars).page()));
        pages.add(reference.enemies());
        base.enemies().values().forEach(enemy -> pages.add(new EnemyPage(register, enemy, reader).page()));
        pages.add(reference.practices());
        base.practices().values().forEach(practice ->
                pages.add(new PracticePage(register, practice, reader).page()));
        pages.add(reference.chapters());
        base.chapters().values().forEach(chapter -> pages.add(reference.chapter(chapter)));
        pages.add(new ReckonerPage(register).page());
        pages.add(new FieldPages(register).walks());
        pages.add(new FieldPages(register).catchTest());
        pages.add(new NotesPage(register).page());
        pages.add(reference.materials());
        pages.add(reference.cautions());
        pages.add(reference.sources());
        pages.addAll(new WeeksPages(register, calendars).pages());
        pages.add(new OfficePage(register).page());
        base.unread().entrySet().forEach(file -> pages.add(unread(file)));
        return pages;
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
