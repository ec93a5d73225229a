package org.fieldfold.handbook;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.fieldfold.kept.Kept;
import org.fieldfold.kept.Key;
import org.fieldfold.manuscript.Book;
import org.fieldfold.manuscript.Page;
import org.fieldfold.manuscript.Phrases;

/**
 * Pages of a book in one form, written or taken as an earlier build wrote them: made of the page itself, of what
 * stands on all pages, and of what the form answered while they were written.
 */
final class KeptPages {
    private final Kept kept;
    private final Book book;
    private final Form form;
    private final Addresses addresses;
    private final Phrases phrases;
    private final List<Phrases> others;

    KeptPages(Kept kept, Book book, Form form, Addresses addresses, Phrases phrases, List<Phrases> others) {
        this.kept = kept;
        this.book = book;
        this.form = form;
        this.addresses = addresses;
        this.phrases = phrases;
        this.others = List.copyOf(others);
    }

    /** Something written of a page, with all that it asked. */
    interface Made {
        List<AskedForm.Asked> asked();
    }

    /** Text or markup. */
    record Written(List<AskedForm.Asked> asked, String text) implements Made {
    }

    /** The page as it stands in a body. */
    String markup(Page page) {
        return written("markup", page, asked -> {
            Markup out = new Markup();
            markup(asked).write(out, page);
            return out.toString();
        });
    }

    /** What one asks a page's writer for, by a form that may be asked. */
    PageMarkup markup(Form asked) {
        return new PageMarkup(book, asked, addresses, phrases, others);
    }

    /**
     * A text of a page.
     *
     * @param more what else it is made of
     */
    String written(String what, Page page, Function<Form, String> write, Object... more) {
        return made(what, page, Written.class, asked -> {
            String text = write.apply(asked);
            return new Written(asked.asked(), text);
        }, more).text();
    }

    /**
     * Anything made of a page.
     *
     * @param what it is
     * @param make makes it of the page, asking the form that it is given
     * @param more what else it is made of
     */
    <T extends Record & Made> T made(String what, Page page, Class<T> type, Function<AskedForm, T> make,
            Object... more) {
        return kept.value(key(what, page, more), type, known -> AskedForm.holds(form, known.asked()),
                () -> make.apply(new AskedForm(form)));
    }

    private Optional<Key> key(String what, Page page, Object... more) {
        return kept.key("page", what, page, form.getClass().getName(), form.gated(), form.anchor(page),
                addresses.page(page.up()).map(up -> List.of(up.name(), up.kind())), book.title(), book.year(),
                book.edition(), book.proof(), book.foot(), book.language(), phrases.language(), phrases.units(),
                others.stream().map(Phrases::language).toList(), List.of(more));
    }
}
