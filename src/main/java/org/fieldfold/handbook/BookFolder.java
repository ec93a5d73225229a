package org.fieldfold.handbook;

import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fieldfold.kept.Kept;
import org.fieldfold.manuscript.Leaf;
import org.fieldfold.manuscript.Page;

/** Writes the handbook as a folder: a page an entry, style sheet, script and drawings beside them. */
final class BookFolder {
    private static final String SHEET = "handbook.css";
    private static final String SCRIPT = "handbook.js";
    private static final int HALF = 32;

    private final Binding binding;
    private final String title;
    private final Drawings drawings;
    private final Folder form;
    private final KeptPages pages;
    private final BookScript script;
    private final HandbookFiles to;
    /** Pages of which nobody had to know what stands on them. */
    private final Set<Leaf> unread = Collections.newSetFromMap(new IdentityHashMap<>());

    /** @param to takes the files, by their paths in the folder */
    BookFolder(Binding binding, String title, BookScript script, HandbookFiles to) {
        this.binding = binding;
        this.title = title;
        this.drawings = binding.drawings();
        this.form = Folder.ofPages(binding.addresses(), drawings);
        this.pages = new KeptPages(binding, form);
        this.script = script;
        this.to = to;
    }

    /** @param offered the other forms, as markup for the first page */
    void write(String offered) {
        binding.book().leaves().forEach(leaf -> page(leaf, leaf.kind() == Page.Kind.START ? offered : ""));
        to.put(SHEET, binding.hash(SHEET), () -> utf8(Sheet.read(SHEET) + Sheet.read("tools.css")));
        to.put(SCRIPT, script.madeOf(), () -> utf8(script.text(form)));
        figures(offered);
    }

    private void page(Leaf leaf, String offered) {
        unread.add(leaf);
        to.put(form.file(leaf), madeOf(leaf, offered), () -> written(leaf, offered));
        if (unread.contains(leaf)) {
            pages.use(kind(offered), leaf);
        }
    }

    /** Of most pages half the hash of the page and half that of what pages are told; no more need be hashed. */
    private Optional<String> madeOf(Leaf leaf, String offered) {
        return binding.of(leaf).flatMap(page -> offered.isEmpty()
                ? binding.answers().map(answers -> page.substring(0, HALF) + answers.substring(0, HALF))
                : binding.hash("file", page, binding.answers(), offered));
    }

    private byte[] written(Leaf leaf, String offered) {
        unread.remove(leaf);
        return pages.made(kind(offered), leaf, KeptPages.Written.class, asked ->
                KeptPages.Written.of(file(leaf, asked, offered))).text();
    }

    private static String kind(String offered) {
        return "file" + offered;
    }

    private String file(Leaf leaf, Form asked, String offered) {
        PageMarkup markup = binding.markup(asked);
        Markup body = new Markup();
        body.open("main").line();
        markup.write(body, leaf);
        body.written(offered).close().line();
        markup.bar(body, leaf.kind());
        return binding.frame().linked(leaf.kind() == Page.Kind.START ? title
                : leaf.name() + " · " + title, SHEET, SCRIPT, body.toString());
    }

    private record Shown(List<String> figures) {
    }

    /** The drawings that pages and script show; what an unread page shows may be known of the whole. */
    private void figures(String offered) {
        Kept kept = binding.kept();
        Shown shown = kept.value(script.madeOf().flatMap(all -> kept.key("shown", all)), Shown.class, () -> {
            script.show(form);
            List.copyOf(unread).forEach(leaf -> written(leaf, leaf.kind() == Page.Kind.START ? offered : ""));
            return new Shown(drawings.shown().stream().map(drawing -> drawing.figure().id()).toList());
        });
        shown.figures().forEach(drawings::find);
        for (Drawing drawing : drawings.shown()) {
            to.put(Folder.FIGURES + drawing.file(), Optional.of(drawing.figure().sha256()), drawing.figure()::bytes);
        }
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
