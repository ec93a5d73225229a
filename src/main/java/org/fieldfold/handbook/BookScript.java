package org.fieldfold.handbook;

import java.util.Map;
import java.util.Optional;
import org.fieldfold.entry.ContentBase;

/** The script of a book in each of its forms. What the forms have in common is found out once. */
final class BookScript {
    private final ContentBase base;
    private final Binding binding;
    private final ScriptFacts facts;
    private final SearchPages search;
    private final KeptPages sought;
    private final Optional<String> madeOf;
    private Optional<String> index = Optional.empty();

    BookScript(ContentBase base, Binding binding) {
        this.base = base;
        this.binding = binding;
        this.facts = new ScriptFacts(base, binding.phrases());
        this.search = new SearchPages(base, binding.phrases(), binding.book());
        Folder form = Folder.ofPages(binding.addresses(), binding.drawings());
        this.sought = new KeptPages(binding, form);
        this.madeOf = binding.whole().flatMap(whole -> binding.hash("script", whole, facts.common(), search.sought(),
                Json.of(own(form))));
    }

    /**
     * A hash of all that the script is made of in any form: where pages and drawings are in the others follows from
     * where they are in one.
     */
    Optional<String> madeOf() {
        return madeOf;
    }

    /** The script itself; the drawings that it shows count as shown in that form from then on. */
    String text(Form form) {
        if (index.isEmpty()) {
            index = Optional.of(search.index(sought, binding.kept()));
        }
        return Script.of(facts.all(own(form), index.get()));
    }

    /** Has a form know which drawings the script shows there. */
    void show(Form form) {
        own(form);
    }

    private Map<String, Object> own(Form form) {
        return facts.own(search.listed(form), new KeyFacts(base, binding.phrases(), form), form instanceof OneFile);
    }

    /** Says that the words of all pages are in use. */
    void use() {
        binding.book().leaves().forEach(leaf -> sought.use(SearchPages.WORDS, leaf));
    }
}
