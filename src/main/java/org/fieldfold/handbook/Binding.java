package org.fieldfold.handbook;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fieldfold.kept.Kept;
import org.fieldfold.kept.Key;
import org.fieldfold.manuscript.Book;
import org.fieldfold.manuscript.Leaf;
import org.fieldfold.manuscript.Phrases;

/**
 * A book on its way into all its forms: where its pages stand, and the hashes by which what an earlier build made of
 * them is found. Without anything kept there are no hashes.
 */
final class Binding {
    private final Book book;
    private final Phrases phrases;
    private final List<String> languages;
    private final Addresses addresses;
    private final Drawings drawings;
    private final Kept kept;
    private final Frame frame;
    private final Optional<String> answers;
    private final Map<Leaf, Optional<String>> leaves = new IdentityHashMap<>();
    private final Optional<String> whole;
    /** The phrases of the other languages, once a page is written. */
    private List<Phrases> others = List.of();

    /** @param languages all in which the edition is written; those that Fieldfold speaks have a handbook */
    Binding(Book book, Phrases phrases, List<String> languages, Drawings drawings, Kept kept) {
        this.book = book;
        this.phrases = phrases;
        this.languages = languages.stream().filter(language -> !language.equals(book.language()))
                .filter(Phrases::speaks).toList();
        this.addresses = new Addresses(book);
        this.drawings = drawings;
        this.kept = kept;
        this.frame = new Frame(book.language(), kept);
        this.answers = kept.isKeeping() ? hash("answers", places(), drawings.named()) : Optional.empty();
        Optional<String> common = hash("common", book.title(), book.year(), book.edition(), book.proof(), book.foot(),
                book.language(), book.publisher(), phrases.language(), phrases.units(),
                this.languages);
        book.leaves().forEach(leaf -> leaves.put(leaf, kept.isKeeping() ? hash(leaf, common) : Optional.empty()));
        this.whole = kept.isKeeping() ? ofAll() : Optional.empty();
    }

    Book book() {
        return book;
    }

    Phrases phrases() {
        return phrases;
    }

    Addresses addresses() {
        return addresses;
    }

    Kept kept() {
        return kept;
    }

    Frame frame() {
        return frame;
    }

    /** All drawings, of which none is shown yet. */
    Drawings drawings() {
        return drawings.unshown();
    }

    /** @param form for which the bound book's pages are written, or one that stands for it */
    PageMarkup markup(Form form) {
        if (form.scripted() && others.isEmpty()) {
            others = languages.stream().map(Phrases::in).toList();
        }
        return new PageMarkup(book, form, addresses, phrases, form.scripted() ? others : List.of());
    }

    /**
     * The same as long as all forms answer alike whatever they are asked: where pages and their parts stand, and what
     * drawings are called and how large they are. Columns alone are named as they come.
     */
    Optional<String> answers() {
        return answers;
    }

    /** The same for a page with the same on it, at the same place; which page it leads to may have moved. */
    Optional<String> of(Leaf leaf) {
        return leaves.get(leaf);
    }

    /** The same for the same book in all its forms, but for what scripts know of the base. */
    Optional<String> whole() {
        return whole;
    }

    /** What these amount to, in hexadecimal digits. */
    Optional<String> hash(Object... parts) {
        return kept.key(parts).map(Key::hash);
    }

    private List<List<String>> places() {
        List<List<String>> places = new ArrayList<>();
        for (Leaf leaf : book.leaves()) {
            List<String> place = new ArrayList<>(List.of(leaf.id(), addresses.of(leaf)));
            place.addAll(leaf.head().parts());
            places.add(place);
        }
        return places;
    }

    private Optional<String> hash(Leaf leaf, Optional<String> common) {
        Optional<String> own = leaf.hash().or(() -> kept.key("leaf", leaf.page()).map(Key::hash));
        return own.isEmpty() ? own : hash(own, common, addresses.of(leaf), leaf.kind(), leaf.name(),
                addresses.page(leaf.up()).map(up -> List.of(up.name(), up.kind())));
    }

    private Optional<String> ofAll() {
        List<String> all = new ArrayList<>();
        for (Leaf leaf : book.leaves()) {
            if (of(leaf).isEmpty()) {
                return Optional.empty();
            }
            all.add(of(leaf).get());
            all.add(leaf.up());
        }
        return hash("book", answers, all);
    }
}
