package org.fieldfold.handbook;

import java.util.Optional;
import org.fieldfold.manuscript.Page;

/** The handbook as a folder: a page an entry, one style sheet, drawings as files, all addresses relative. */
final class Folder implements Form {
    static final String FIGURES = "figures/";

    private final Addresses addresses;
    private final Drawings drawings;

    Folder(Addresses addresses, Drawings drawings) {
        this.addresses = addresses;
        this.drawings = drawings;
    }

    String file(Page page) {
        return addresses.of(page) + ".html";
    }

    @Override
    public Optional<String> href(String link) {
        return addresses.target(link).map(target -> file(target.page()) + target.part()
                .map(part -> "#" + anchor(target.page(), part)).orElse(""));
    }

    @Override
    public String anchor(Page page) {
        return addresses.of(page);
    }

    @Override
    public String anchor(Page page, String part) {
        return addresses.anchor(page, part);
    }

    @Override
    public String inLanguage(String language, Page page) {
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

    @Override
    public int titleLevel(Page page) {
        return 1;
    }
}
