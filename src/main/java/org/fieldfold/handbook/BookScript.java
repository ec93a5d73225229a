package org.fieldfold.handbook;

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
     * @param facts as JSON, all but the index, which comes last
     */
    record Of(String facts, Optional<String> madeOf) {
    }

    /** All that the script of a form is made of; the drawings that it shows count as shown from then on. */
    Of in(Form form) {
        String own = facts.of(search.listed(form), new KeyFacts(base, binding.phrases(), form),
                form instanceof OneFile);
        return new Of(own, common.flatMap(all -> binding.hash("script", all, own)));
    }

    /** The script itself. */
    String text(Of form) {
        if (index.isEmpty()) {
            index = Optional.of(Json.of(search.index(sought, binding.kept())));
        }
        return Script.of(form.facts().substring(0, form.facts().length() - 1) + ",\"index\":" + index.get() + "}");
    }

    /** Says that the words of all pages are in use. */
    void use() {
        binding.book().leaves().forEach(leaf -> sought.use(SearchPages.WORDS, leaf));
    }
}
