package org.fieldfold.handbook;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.entry.Names;
import org.fieldfold.entry.PestEntry;
import org.fieldfold.entry.Placed;
import org.fieldfold.kept.Kept;
import org.fieldfold.manuscript.Block;
import org.fieldfold.manuscript.Book;
import org.fieldfold.manuscript.Leaf;
import org.fieldfold.manuscript.Page;
import org.fieldfold.manuscript.Phrases;

/** The pages of a book as the search knows them: address, name, kind, and the words that lead to them. */
final class SearchPages {
    /** What is made of a page for it. */
    static final String WORDS = "words";

    private static final Pattern AUTHOR = Pattern.compile("\\(?\\p{Lu}[^()]*\\d{4}\\)?");

    private final ContentBase base;
    private final Phrases phrases;
    private final List<Sought> pages = new ArrayList<>();

    /**
     * A page.
     *
     * @param names all that it is called
     * @param seen what it is found by besides its text
     */
    private record Sought(Leaf leaf, String names, String seen) {
    }

    SearchPages(ContentBase base, Phrases phrases, Book book) {
        this.base = base;
        this.phrases = phrases;
        // what one asks for by name comes first among equals
        for (Page.Kind kind : List.of(Page.Kind.PEST, Page.Kind.ENEMY, Page.Kind.CROPS, Page.Kind.PRACTICE,
                Page.Kind.LOOK, Page.Kind.COUNT, Page.Kind.WEEKS, Page.Kind.OFFICE,
                 Page.Kind.CHAPTER, Page.Kind.REFERENCE)) {
            book.leaves().stream().filter(leaf -> leaf.kind() == kind).forEach(leaf -> pages.add(new Sought(leaf,
                    names(leaf), Optional.ofNullable(base.pests().get(leaf.id())).map(Placed::value).map(this::seen)
                    .orElse(""))));
        }
    }

    private String names(Leaf leaf) {
        Optional<Names> names = Optional.ofNullable(base.pests().get(leaf.id())).map(pest -> pest.value().names())
                .or(() -> Optional.ofNullable(base.enemies().get(leaf.id())).map(enemy -> enemy.value().names()));
        return leaf.name() + " " + names.map(all -> AUTHOR.matcher(all.scientific()).replaceAll("")
                + " " + all.scientific() + " " + all.family() + " " + all.kind() + " "
                + String.join(" ", all.local())).orElse("");
    }

    /** Signs, plant parts and crops, as they are called on the screen. */
    private String seen(PestEntry pest) {
        return Stream.concat(pest.damage().stream().flatMap(one -> Stream.of(phrases.word("part", one.part()),
                        phrases.word("sign", one.sign()))),
                pest.crops().stream().map(id -> base.crops().containsKey(id)
                        ? base.crops().get(id).value().name() : id)).collect(Collectors.joining(" "));
    }

    /** All that an index is made of besides the pages. */
    List<String> sought() {
        return pages.stream().map(page -> page.names() + "\n" + page.seen()).toList();
    }

    /** Address, name and kind of every page, numbered as in the index. */
    List<List<String>> listed(Form form) {
        return pages.stream().map(Sought::leaf).map(leaf -> List.of(form.href("#" + leaf.id()).orElseThrow(),
                Phrases.capital(leaf.name()), phrases.say("script.kind." + ScriptFacts.word(leaf.kind())))).toList();
    }

    /**
     * The index of the words of all pages.
     *
     * @param form of the pages, any in which they have all their words
     */
    String index(KeptPages form, Kept kept) {
        List<String> words = pages.stream().map(page -> words(page.leaf(), form)).toList();
        return kept.value(kept.key("index", sought(), words), Index.class, () -> new Index(index(words))).text();
    }

    private record Index(String text) {
    }

    private String index(List<String> words) {
        SearchIndex index = new SearchIndex();
        for (int i = 0; i < pages.size(); i++) {
            List<String> told = new ArrayList<>(SearchIndex.told(pages.get(i).seen()));
            told.addAll(words.get(i).isEmpty() ? List.of() : List.of(words.get(i).split(" ")));
            index.add(pages.get(i).names(), told);
        }
        return index.written();
    }

    private String words(Leaf leaf, KeptPages form) {
        return new String(form.made(WORDS, leaf, KeptPages.Written.class, asked -> KeptPages.Written.of(
                String.join(" ", SearchIndex.told(text(leaf, asked))))).text(), StandardCharsets.UTF_8);
    }

    /** The first parts of an entry. */
    private String text(Leaf leaf, Form form) {
        boolean isEntry = leaf.kind() == Page.Kind.PEST || leaf.kind() == Page.Kind.ENEMY
                || leaf.kind() == Page.Kind.PRACTICE || leaf.kind() == Page.Kind.CHAPTER;
        return !isEntry ? "" : leaf.page().parts().stream().filter(part -> part.key().equals("top")
                || part.key().equals("look")).map(part -> words(part.blocks(), form)).collect(Collectors.joining(" "));
    }

    private String words(List<Block> blocks, Form form) {
        Markup out = new Markup();
        List<Block> own = blocks.stream().filter(block -> !(block instanceof Block.SideBySide)
                && !(block instanceof Block.Tiles)).toList();
        new BlockMarkup(form, out, 2, phrases).write(own);
        return out.toString().replaceAll("<[^>]*>", " ").replace("&#39;", "'").replaceAll("&[a-z]+;", " ");
    }
}
