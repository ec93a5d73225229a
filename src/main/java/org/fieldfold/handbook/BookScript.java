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
    private final Optional<String> common;
    private Optional<String> index = Optional.empty();

    BookScript(ContentBase base, Binding binding) {
        this.base = base;
        this.binding = binding;
        this.facts = new ScriptFacts(base, binding.phrases());
        this.search = new SearchPages(base, binding.phrases(), binding.book());
        this.sought = new KeptPages(binding, Folder.ofPages(binding.addresses(), binding.drawings()));
        this.common = binding.whole().flatMap(whole -> binding.hash(whole, facts.common(), search.sought()));
    }

    /**
     * In one form.
     *
     * @param facts what it has of its own
     */
    record Of(Map<String, Object> facts, Optional<String> madeOf) {
    }

    /** What the script of a form is made of; the drawings that it shows count as shown from then on. */
    Of in(Form form) {
        Map<String, Object> own = facts.own(search.listed(form), new KeyFacts(base, binding.phrases(), form),
                form instanceof OneFile);
        return new Of(own, common.flatMap(all -> binding.hash("script", all, Json.of(own))));
    }

    /** The script itself. */
    String text(Of form) {
        if (index.isEmpty()) {
            index = Optional.of(search.index(sought, binding.kept()));
        }
        return Script.of(facts.all(form.facts(), index.get()));
    }

    /** Says that the words of all pages are in use. */
    void use() {
        binding.book().leaves().forEach(leaf -> sought.use(SearchPages.WORDS, leaf));
    }
}
