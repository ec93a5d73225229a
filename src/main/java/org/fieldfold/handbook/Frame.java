package org.fieldfold.handbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.fieldfold.kept.Kept;
import org.thymeleaf.TemplateEngine;
import org.thymeleaf.context.Context;
import org.thymeleaf.templatemode.TemplateMode;
import org.thymeleaf.templateresolver.ClassLoaderTemplateResolver;

/** The frame around every page: head, style, and the policy that lets it load nothing from anywhere. */
final class Frame {
    private static final String NOTHING = "default-src 'none'; base-uri 'none'; form-action 'none'; ";

    private static final String TOOLS = "<div class=\"tools\" id=\"tools\"></div>\n";

    /** What stands for the four things that pages differ in, in their order. */
    private static final List<String> PLACES = List.of("place-of-policy", "place-of-title", "place-of-style",
            "place-of-body");

    /** By language: to start a template engine for a dozen lines costs as much as to write a hundred pages. */
    private static final Map<String, Pieces> MADE = new ConcurrentHashMap<>();

    private final Pieces pieces;

    Frame(String language) {
        this(language, Kept.nothing());
    }

    /** @param kept where an earlier build may have left the frame, for all pages of this language from then on */
    Frame(String language, Kept kept) {
        this.pieces = kept.value(kept.key("frame", language), Pieces.class, () -> MADE.computeIfAbsent(language,
                Frame::pieces));
        MADE.putIfAbsent(language, pieces);
    }

    /** What stands before, between and behind the places. */
    private record Pieces(List<String> texts) {
    }

    private static Pieces pieces(String language) {
        ClassLoaderTemplateResolver resolver = new ClassLoaderTemplateResolver(Frame.class.getClassLoader());
        resolver.setPrefix("org/fieldfold/handbook/");
        resolver.setSuffix(".html");
        resolver.setTemplateMode(TemplateMode.HTML);
        resolver.setCharacterEncoding("UTF-8");
        TemplateEngine engine = new TemplateEngine();
        engine.setTemplateResolver(resolver);
        engine.setDialect(new PlainDialect());
        String rest = engine.process("page", new Context(Locale.ROOT, Map.of("language", language, "policy",
                PLACES.get(0), "title", PLACES.get(1), "style", PLACES.get(2), "body", PLACES.get(3))))
                .replace("\r\n", "\n");
        List<String> pieces = new ArrayList<>();
        for (String place : PLACES) {
            int at = rest.indexOf(place);
            pieces.add(rest.substring(0, at));
            rest = rest.substring(at + place.length());
        }
        pieces.add(rest);
        return new Pieces(pieces);
    }

    /** A page that carries its style and pictures in itself. */
    byte[] inline(String title, String style, String body) {
        Embedded sheet = Embedded.style(style);
        WholeBook page = new WholeBook();
        open(page, title, NOTHING + "img-src data:; style-src 'sha256-" + sheet.hash() + "'");
        page.add("<style>");
        sheet.parts().forEach(page::add);
        page.add("</style>");
        return close(page.add(pieces.texts().get(3)).add(body)).bytes();
    }

    /**
     * The same as far as its body, with a script in front of that and a place before it where the script puts its
     * tools.
     */
    void open(WholeBook page, String title, Embedded style, Embedded script) {
        open(page, title, NOTHING + "img-src data:; style-src 'sha256-" + style.hash() + "'; script-src 'sha256-"
                + script.hash() + "'");
        page.add("<style>");
        style.parts().forEach(page::add);
        page.add("</style>").add(pieces.texts().get(3)).add(TOOLS).add("<script>");
        script.parts().forEach(page::add);
        page.add("</script>\n");
    }

    /** What stands behind the body. */
    WholeBook close(WholeBook page) {
        return page.add(pieces.texts().get(4));
    }

    /** A page of a folder, whose style, script and pictures are files beside it. */
    String linked(String title, String sheet, String script, String body) {
        return head(title, NOTHING + "img-src 'self' file:; style-src 'self' file:; script-src 'self' file:; "
                + "worker-src 'self'; manifest-src 'self'")
                + new Markup().empty("link", "rel", "stylesheet", "href", sheet)
                        .empty("link", "rel", "icon", "href", Offline.ICON, "type", "image/svg+xml")
                        .element("script", "", "src", script, "defer", "defer")
                + pieces.texts().get(3) + TOOLS + body + pieces.texts().get(4);
    }

    private void open(WholeBook page, String title, String policy) {
        page.add(head(title, policy));
    }

    private String head(String title, String policy) {
        return pieces.texts().get(0) + new Markup().text(policy) + pieces.texts().get(1) + new Markup().text(title)
                + pieces.texts().get(2);
    }
}
