package org.fieldfold.handbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Names;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.manuscript.Block;
import org.fieldfold.manuscript.Book;
import org.fieldfold.manuscript.Page;
import org.fieldfold.manuscript.Phrases;

/** The pages of a book as the search knows them: address, name, kind, and the words that lead to them. */
final class SearchPages {
    private final ContentBase base;
    private final Phrases phrases;
    private final Form form;
    private final KeptPages pages;
    private final List<List<String>> listed = new ArrayList<>();
    private final SearchIndex index = new SearchIndex();

    SearchPages(ContentBase base, Phrases phrases, Book book, Form form, KeptPages pages) {
        this.base = base;
        this.phrases = phrases;
        this.form = form;
        this.pages = pages;
        // what one asks for by name comes first among equals
        for (Page.Kind kind : List.of(Page.Kind.PEST, Page.Kind.ENEMY, Page.Kind.CROPS, Page.Kind.PRACTICE,
                Page.Kind.LOOK, Page.Kind.COUNT, Page.Kind.WEEKS, Page.Kind.OFFICE,
                 Page.Kind.CHAPTER, Page.Kind.REFERENCE)) {
            book.pages().stream().filter(page -> page.kind() == kind).forEach(this::add);
        }
    }

    private void add(Page page) {
        String kind = phrases.say("script.kind." + ScriptFacts.word(page.kind()));
        listed.add(List.of(form.href("#" + page.id()).orElseThrow(), Phrases.capital(page.name()), kind));
        index.add(names(page), text(page));
    }

    private String names(Page page) {
        Optional<Names> names = Optional.ofNullable(base.pests().get(page.id())).map(pest -> pest.value().names())
                .or(() -> Optional.ofNullable(base.enemies().get(page.id())).map(enemy -> enemy.value().names()));
        return page.name() + " " + names.map(all -> all.scientific().replaceAll("\\(?\\p{Lu}[^()]*\\d{4}\\)?", "")
                + " " + all.scientific() + " " + all.family() + " " + all.kind() + " "
                + String.join(" ", all.local())).orElse("");
    }

    private String text(Page page) {
        String own = pages.written("search", page, asked -> page.parts().stream()
                .filter(part -> part.key().equals("top") || part.key().equals("look"))
                .map(part -> words(page, part.blocks(), asked)).collect(Collectors.joining(" ")));
        PestEntry pest = Optional.ofNullable(base.pests().get(page.id())).map(Placed::value).orElse(null);
        return pest == null ? own : own + " " + seen(pest);
    }

    /** Signs, plant parts and crops, as they are called on the screen. */
    private String seen(PestEntry pest) {
        return Stream.concat(pest.damage().stream().flatMap(one -> Stream.of(phrases.word("part", one.part()),
                        phrases.word("sign", one.sign()))),
                pest.crops().stream().map(id -> base.crops().containsKey(id)
                        ? base.crops().get(id).value().name() : id)).collect(Collectors.joining(" "));
    }

    private String words(Page page, List<Block> blocks, Form form) {
        boolean isEntry = page.kind() == Page.Kind.PEST || page.kind() == Page.Kind.ENEMY
                || page.kind() == Page.Kind.PRACTICE || page.kind() == Page.Kind.CHAPTER;
        if (!isEntry) {
            return "";
        }
        Markup out = new Markup();
        List<Block> own = blocks.stream().filter(block -> !(block instanceof Block.SideBySide)
                && !(block instanceof Block.Tiles)).toList();
        new BlockMarkup(form, out, 2, phrases).write(own);
        return out.toString().replaceAll("<[^>]*>", " ").replace("&#39;", "'").replaceAll("&[a-z]+;", " ");
    }

    /** Address, name and kind of every page, numbered as in the index. */
    List<List<String>> listed() {
        return listed;
    }

    String index() {
        return index.written();
    }
}
