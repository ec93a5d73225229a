package org.fieldfold.manuscript;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Crop;
import org.fieldfold.entry.Edition;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.prose.Run;
import org.fieldfold.source.Span;

/**
 * Writes the first page: title, year and until when it holds, whom to call, the ways in, and all contents.
 */
final class StartPage {
    private final Register register;
    private final ContentBase base;
    private final Edition edition;
    private final boolean news;

    /** @param news whether there is a page of what is new this year */
    StartPage(Register register, boolean news) {
        this.register = register;
        this.news = news;
        this.base = register.base();
        this.edition = base.edition().value();
    }

    Page page() {
        List<Page.Part> parts = new ArrayList<>();
        parts.add(new Page.Part("top", "", top()));
        parts.add(new Page.Part("contents", register.say("book.contents"), contents()));
        return new Page(Places.START, Page.Kind.START, edition.title(), "", parts, at("title"));
    }

    private List<Block> top() {
        Phrases phrases = register.phrases();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Title(List.of(Run.plain(edition.title())),
                List.of(Run.plain(edition.publisher())), at("title")));
        blocks.add(new Block.CountBox(Line.of().strong(phrases.say("book.edition.holds",
                phrases.date(edition.validFrom()), phrases.date(edition.validUntil())))
                .plain(" " + phrases.say("book.edition.after")).runs(), phrases.say("book.edition"),
                String.valueOf(edition.year()), "", 0, at("valid-until")));
        if (news) {
            blocks.add(new Block.Paragraph(List.of(Run.strong(phrases.say("news"))
                    .to(Places.to(Places.NEWS))), List.of(), at("year")));
        }
        edition.notice().ifPresent(notice -> blocks.add(new Block.Notice(
                List.of(new Run(notice.full().words(), Run.Style.STRONG, "")), at("notice"))));
        blocks.add(new Block.Tiles(List.of(
                door(Places.LOOK, "book.door.look"), door(Places.CROPS, "book.door.crops"),
                door(Places.COUNT, "book.door.count"), door(Places.WEEKS, "book.door.weeks"),
                door(Places.OFFICES, "book.door.office")),
                at("title")));
        blocks.add(new Block.Paragraph(List.of(Run.plain(phrases.say("book.printing"))), List.of(),
                at("title")));
        return blocks;
    }

    private Block.Tile door(String page, String key) {
        return new Block.Tile(Places.to(page), Optional.empty(), register.say(key),
                List.of(Run.plain(register.say(key + ".why"))));
    }

    private List<Block> contents() {
        List<Block> blocks = new ArrayList<>();
        List<Block.Fact> crops = new ArrayList<>();
        for (Placed<Crop> crop : base.crops().values()) {
            List<Run> entries =
                    links(register.pestsOf(crop.value().id()).stream().map(PestEntry::id).toList());
            if (!entries.isEmpty()) {
                crops.add(new Block.Fact(crop.value().name(), entries));
            }
        }
        add(blocks, "book.by-crop", crops);
        List<Block.Fact> rest = new ArrayList<>();
        rest.add(new Block.Fact(register.say("book.friends"), links(List.copyOf(base.enemies().keySet()))));
        rest.add(new Block.Fact(register.say("book.practices"),
                links(List.copyOf(base.practices().keySet()))));
        Line chapters = Line.of();
        base.chapters().values().forEach(chapter -> chapters.plain(chapters.isEmpty() ? "" : " · ")
                .add(Run.plain(chapter.value().title()).to(Places.to(Places.chapter(chapter.value().id())))));
        rest.add(new Block.Fact(register.say("book.chapters"), chapters.runs()));
        Line reference = Line.of();
        for (String page : List.of(Places.RECKONERS, Places.NOTES, Places.WALKS, Places.CATCH_TEST,
                Places.MATERIALS, Places.CAUTIONS, Places.SOURCES, Places.OFFICES)) {
            reference.plain(reference.isEmpty() ? "" : " · ").add(Run.plain(register.say("book.page."
                    + page.substring(page.indexOf(':') + 1))).to(Places.to(page)));
        }
        rest.add(new Block.Fact(register.say("book.reference"), reference.runs()));
        Line unread = Line.of();
        base.unread().keySet().forEach(id -> unread.plain(unread.isEmpty() ? "" : " · ")
                .add(Run.plain(id).to(Places.to(id))));
        rest.add(new Block.Fact(register.say("book.unread"), unread.runs()));
        rest.removeIf(fact -> fact.runs().isEmpty());
        add(blocks, "book.more-pages", rest);
        return blocks;
    }

    private void add(List<Block> blocks, String key, List<Block.Fact> facts) {
        if (!facts.isEmpty()) {
            blocks.add(new Block.Heading(4, List.of(Run.strong(register.say(key))), at("title")));
            blocks.add(new Block.Facts(facts, at("title")));
        }
    }

    private List<Run> links(List<String> ids) {
        Line line = Line.of();
        for (String id : ids) {
            line.plain(line.isEmpty() ? "" : " · ").add(Run.plain(register.name(id)).to(Places.to(id)));
        }
        return line.runs();
    }

    private Span at(String key) {
        return base.edition().at(key);
    }
}
