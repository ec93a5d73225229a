package org.fieldfold.handbook;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fieldfold.kept.Kept;
import org.fieldfold.manuscript.Leaf;

/**
 * The handbook in one file. Each drawing stands once in the style sheet, however often it is shown: tiles,
 * look-alikes and plates share it. So does the name of a column, which hundreds of cells show on a narrow screen.
 */
final class OneFile implements Form {
    private final Addresses addresses;
    private final Drawings drawings;
    private final Map<String, String> columns = new LinkedHashMap<>();

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
    public String anchor(Leaf page) {
        return addresses.of(page);
    }

    @Override
    public String anchor(Leaf page, String part) {
        return addresses.anchor(page, part);
    }

    @Override
    public String inLanguage(String language, Leaf page) {
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
    public Optional<String> column(String name) {
        return Optional.of(columns.computeIfAbsent(name, first -> "c" + columns.size()));
    }

    /** Names of the drawings that have been shown so far. */
    List<String> shown() {
        return drawings.shown().stream().map(Drawing::name).toList();
    }

    /** Style rules for them. */
    List<byte[]> drawn(Kept kept) {
        return drawings.style(kept);
    }

    /** Style rules for the columns that have been written so far. */
    String columns() {
        StringBuilder rules = new StringBuilder("@media (max-width: 44rem) {\n");
        columns.forEach((name, kind) -> rules.append(".wide .").append(kind).append("::before{content:\"")
                .append(escaped(name)).append("\"}\n"));
        return rules.append("}\n").toString();
    }

    /** As it may stand between double quotes in a style sheet (CSS Syntax 3, 4.3.7): all but letters by number. */
    private static String escaped(String text) {
        StringBuilder escaped = new StringBuilder();
        Markup.allowed(text).codePoints().forEach(sign -> {
            if (Character.isLetterOrDigit(sign) || sign == ' ') {
                escaped.appendCodePoint(sign);
            } else {
                escaped.append('\\').append(Integer.toHexString(sign)).append(' ');
            }
        });
        return escaped.toString();
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
    public int titleLevel(Leaf page) {
        // one page at a time is on the screen, and each is named by one heading of the first level
        return 1;
    }
}
