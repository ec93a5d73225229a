package org.fieldfold.handbook;

import java.util.Optional;
import org.fieldfold.manuscript.Page;

/**
 * The handbook in one file. Each drawing stands once in the style sheet, however often it is shown: tiles,
 * look-alikes and plates share it.
 */
final class OneFile implements Form {
    private final Addresses addresses;
    private final Drawings drawings;

    OneFile(Addresses addresses, Drawings drawings) {
        this.addresses = addresses;
        this.drawings = drawings;
    }

    @Override
    public Optional<String> href(String link) {
        return addresses.target(link).map(target -> "#" + target.part()
                .map(part -> anchor(target.page(), part)).orElseGet(() -> anchor(target.page())));
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
        return Handbook.file(language) + "#" + anchor(page);
    }

    @Override
    public void picture(Markup out, String figure, String alt) {
        drawings.find(figure).ifPresent(drawing -> out.element("span", "",
                "class", "pic " + drawing.name(), "role", "img", "aria-label", alt));
    }

    @Override
    public void ornament(Markup out, String figure) {
        drawings.find(figure)
                .ifPresent(drawing -> out.element("span", "", "class", "frame " + drawing.name()));
    }

    @Override
    public Optional<String> drawn(String figure) {
        return drawings.find(figure).map(Drawing::name);
    }

    @Override
    public boolean gated() {
        return true;
    }

    @Override
    public boolean scripted() {
        return true;
    }

    @Override
    public boolean hasFiles() {
        return false;
    }

    @Override
    public int titleLevel(Page page) {
        // one page at a time is on the screen, and each is named by one heading of the first level
        return 1;
    }
}
