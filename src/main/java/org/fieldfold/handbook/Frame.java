package org.fieldfold.handbook;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.Locale;
import java.util.Map;
import org.thymeleaf.TemplateEngine;
import org.thymeleaf.context.Context;
import org.thymeleaf.templatemode.TemplateMode;
import org.thymeleaf.templateresolver.ClassLoaderTemplateResolver;

/** The frame around every page: head, style, and the policy that lets it load nothing from anywhere. */
final class Frame {
    private static final String NOTHING = "default-src 'none'; base-uri 'none'; form-action 'none'; ";

    private static final String TOOLS = "<div class=\"tools\" id=\"tools\"></div>\n";

    private final TemplateEngine engine = new TemplateEngine();
    private final String language;

    Frame(String language) {
        this.language = language;
        ClassLoaderTemplateResolver resolver = new ClassLoaderTemplateResolver(Frame.class.getClassLoader());
        resolver.setPrefix("org/fieldfold/handbook/");
        resolver.setSuffix(".html");
        resolver.setTemplateMode(TemplateMode.HTML);
        resolver.setCharacterEncoding("UTF-8");
        engine.setTemplateResolver(resolver);
        engine.setDialect(new PlainDialect());
    }

    /** A page that carries its style and pictures in itself. */
    byte[] inline(String title, String style, String body) {
        String sheet = sheet(style);
        return utf8(page(title, NOTHING + "img-src data:; style-src 'sha256-" + hash(sheet) + "'",
                "<style>" + sheet + "</style>", body));
    }

    /** What XML would read as markup stands in a section that XML reads as text, and CSS as comments. */
    private static String sheet(String style) {
        return "/*<![CDATA[*/" + style + "/*]]>*/";
    }

    /** A script stands in a section that XML reads as text, and HTML as comments of the script. */
    static String code(String script) {
        return "//<![CDATA[\n" + script + "//]]>";
    }

    /**
     * The same with a script in front of the body, and a place before it where the script puts its tools.
     *
     * @param code of the script, see {@link #code}
     * @param place what stands for it in the page
     */
    String inline(String title, String style, String code, String place, String body) {
        String sheet = sheet(style);
        return page(title, NOTHING + "img-src data:; style-src 'sha256-" + hash(sheet)
                + "'; script-src 'sha256-" + hash(code) + "'", "<style>" + sheet + "</style>",
                TOOLS + "<script>" + place + "</script>\n" + body);
    }

    /** A page of a folder, whose style, script and pictures are files beside it. */
    String linked(String title, String sheet, String script, String body) {
        return page(title, NOTHING + "img-src 'self' file:; style-src 'self' file:; script-src 'self' file:; "
                + "worker-src 'self'; manifest-src 'self'",
                new Markup().empty("link", "rel", "stylesheet", "href", sheet)
                        .empty("link", "rel", "icon", "href", Offline.ICON, "type", "image/svg+xml")
                        .element("script", "", "src", script, "defer", "defer").toString(), TOOLS + body);
    }

    private static byte[] utf8(String page) {
        return page.getBytes(StandardCharsets.UTF_8);
    }

    private String page(String title, String policy, String style, String body) {
        return engine.process("page", new Context(Locale.ROOT, Map.of("language", language,
                "title", Markup.allowed(title), "policy", policy, "style", style, "body", body)))
                .replace("\r\n", "\n");
    }

    /** As a style's hash is written in a policy (CSP 3, 2.3.1). */
    private static String hash(String style) {
        try {
            return Base64.getEncoder().encodeToString(MessageDigest.getInstance("SHA-256")
                    .digest(style.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java platform has SHA-256", impossible);
        }
    }
}
