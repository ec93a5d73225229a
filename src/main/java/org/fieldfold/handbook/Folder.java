package org.fieldfold.handbook;

import java.util.Optional;
import org.fieldfold.manuscript.Leaf;

/**
 * A page an entry, one style sheet, drawings as files, all addresses relative: as a folder that a browser opens,
 * and inside an EPUB.
 */
final class Folder implements Form {
    static final String FIGURES = "figures/";

    private final Addresses addresses;
    private final Drawings drawings;
    private final String ending;
    private final boolean gated;

    private Folder(Addresses addresses, Drawings drawings, String ending, boolean gated) {
        this.addresses = addresses;
        this.drawings = drawings;
        this.ending = ending;
        this.gated = gated;
    }

    static Folder ofPages(Addresses addresses, Drawings drawings) {
        return new Folder(addresses, drawings, ".html", true);
    }

    /** Some readers of EPUB can't tick a box, so nothing waits for one there. */
    static Folder ofEpub(Addresses addresses, Drawings drawings) {
        return new Folder(addresses, drawings, ".xhtml", false);
    }

    String file(Leaf page) {
        return addresses.of(page) + ending;
    }

    @Override
    public boolean gated() {
        return gated;
    }

    @Override
    public Optional<String> href(String link) {
        return addresses.target(link).map(target -> file(target.page()) + target.part()
                .map(part -> "#" + anchor(target.page(), part)).orElse(""));
    }

    @Override
    public String anchor(Leaf page) {
        return addresses.of(page);
    }

    @Override
    public String anchor(Leaf page, String part) {
        return addresses.anchor(page, part);
    }

    @Override
    public String inLanguage(String language, Leaf page) {
        return "../" + language + "/" + file(page);
    }

    @Override
    public void picture(Markup out, String figure, String alt) {
        image(out, figure, "pic", alt);
    }

    @Override
    public void ornament(Markup out, String figure) {
        image(out, figure, "frame", "");
    }

    private void image(Markup out, String figure, String kind, String alt) {
        drawings.find(figure).ifPresent(drawing -> out.empty("img", "class", kind,
                "src", FIGURES + drawing.file(), "alt", alt,
                "width", String.valueOf(drawing.width()), "height", String.valueOf(drawing.height()),
                "loading", "lazy", "decoding", "async"));
    }

    /** Nor do readers of EPUB run any. */
    @Override
    public boolean scripted() {
        return gated;
    }

    /** Readers of EPUB open no files. */
    @Override
    public boolean hasFiles() {
        return gated;
    }

    @Override
    public Optional<String> drawn(String figure) {
        return drawings.find(figure).map(drawing -> FIGURES + drawing.file());
    }

    @Override
    public int titleLevel(Leaf page) {
        return 1;
    }
}
