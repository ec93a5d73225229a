package org.fieldfold.handbook;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fieldfold.kept.Kept;
import org.fieldfold.manuscript.Leaf;
import org.fieldfold.manuscript.Page;

/** Writes the handbook in one file. */
final class WholeFile {
    /** Where the pages stand in what is around them; text becomes markup in a way that never writes it. */
    private static final String PLACE = "<!--pages-->";
    private static final String PAGE = "markup";

    private final Binding binding;
    private final String title;
    private final OneFile form;
    private final KeptPages pages;
    private final BookScript script;

    WholeFile(Binding binding, String title, BookScript script) {
        this.binding = binding;
        this.title = title;
        this.form = new OneFile(binding.addresses(), binding.drawings());
        this.pages = new KeptPages(binding, form);
        this.script = script;
    }

    /** A hash of all that it is made of. */
    Optional<String> madeOf() {
        return script.madeOf().flatMap(all -> binding.hash("one file", all, binding.drawings().bytes()));
    }

    byte[] bytes() {
        // the pages and the script first: what they show has its rules in the style
        List<byte[]> written = binding.book().leaves().stream().map(this::page).toList();
        Kept kept = binding.kept();
        Embedded code = Embedded.script(List.of(utf8(script.text(form))), kept,
                script.madeOf().flatMap(all -> binding.hash("one file", all)));
        String around = around();
        int at = around.indexOf(PLACE);
        WholeBook whole = new WholeBook();
        binding.frame().open(whole, title, style(), code);
        whole.add(around.substring(0, at));
        written.forEach(whole::add);
        return binding.frame().close(whole.add(around.substring(at + PLACE.length()))).bytes();
    }

    /** Says that what it is made of is in use. */
    void use() {
        binding.book().leaves().forEach(leaf -> pages.use(PAGE, leaf));
        binding.drawings().use(binding.kept());
        script.use();
    }

    private byte[] page(Leaf leaf) {
        return pages.made(PAGE, leaf, KeptPages.Written.class, asked ->
                KeptPages.Written.of(pages.markup(leaf, asked))).text();
    }

    private String around() {
        Markup body = new Markup();
        body.open("main").line();
        body.element("div", "", "id", "everything").line();
        body.written(PLACE);
        body.open("p", "class", "all").element("a", binding.phrases().say("book.everything"), "href", "#everything")
                .close();
        body.close().line();
        binding.markup(form).bar(body, Page.Kind.START);
        return body.toString();
    }

    private Embedded style() {
        String columns = form.columns();
        List<byte[]> rules = new ArrayList<>();
        rules.add(utf8(Sheet.read("handbook.css") + Sheet.read("tools.css") + Sheet.read("screens.css")));
        rules.addAll(form.drawn(binding.kept()));
        rules.add(utf8(columns));
        return Embedded.style(rules, binding.kept(), binding.hash("style", form.shown(), binding.drawings().bytes(),
                columns));
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
