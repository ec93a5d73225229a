package org.fieldfold.handbook;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.fieldfold.edition.Rereadings;
import org.fieldfold.entry.ContentBase;
import org.fieldfold.report.FitRow;
import org.fieldfold.source.Finding;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * What content says is text: markup, script and template syntax in any field come out as they were written.
 */
class HostileTextTest {
    private static final Set<String> TAGS = Set.of("html", "head", "meta", "title", "style", "link",
            "body", "main", "article", "section", "nav", "div", "p", "span", "a", "h1", "h2", "h3", "h4",
            "h5", "ul", "ol", "li", "dl", "dt", "dd", "table", "caption", "thead", "tbody", "tr", "th", "td",
            "figure", "figcaption", "img", "svg", "rect", "path", "strong", "b", "small", "em", "i", "label", "input",
            "code", "meter", "hr", "wbr", "script", "polyline", "circle", "m-", "c-",
            "details", "summary");

    @Test
    void everyTextOfTheHandbookStaysText() throws ReflectiveOperationException {
        ContentBase base = Hostile.of(Shipped.BASE);
        List<HandbookFile> pages = Shipped.pages(Handbook.write(base, Shipped.PHRASES, true));
        assertTrue(pages.size() > 90, pages.size() + " pages");
        for (HandbookFile file : pages) {
            assertHarmless(file);
        }
        String all = Html.parse(pages.get(0)).getElementsByTagName("main").item(0).getTextContent();
        assertTrue(all.split(java.util.regex.Pattern.quote(Hostile.SEEN), -1).length > 1000,
                "texts are missing");
    }

    @Test
    void everyTextOfTheReviewStaysText() throws ReflectiveOperationException {
        ContentBase base = Hostile.of(Shipped.BASE);
        Finding finding = Finding.error(base.edition().at("title"), Hostile.TEXT, Hostile.TEXT, Hostile.TEXT);
        assertHarmless(new HandbookFile("review/index.html", ReviewPage.write(base,
                Rereadings.of(base, Optional.empty()), List.of(finding),
                List.of(new FitRow(Hostile.TEXT, Hostile.TEXT, 1, Hostile.TEXT, 0.5, 8, 10,
                        List.of(new FitRow.Form(Hostile.TEXT, true)), Optional.empty())), true)));
    }

    private static void assertHarmless(HandbookFile file) {
        String raw = new String(file.bytes(), StandardCharsets.UTF_8);
        String small = raw.toLowerCase(Locale.ROOT);
        assertTrue(small.indexOf("<script") == small.lastIndexOf("<script"), file.path() + ": a second script");
        assertTrue(small.indexOf("</script") == small.lastIndexOf("</script"), file.path());
        assertFalse(raw.contains("1337"), file.path() + ": a template expression was evaluated");
        assertTrue(raw.indexOf("</style") == raw.lastIndexOf("</style"), file.path());
        Document page = Html.parse(file);
        for (Element element : Html.all(page, element -> true)) {
            assertTrue(TAGS.contains(element.getTagName()), file.path() + ": " + element.getTagName());
            for (int i = 0; i < element.getAttributes().getLength(); i++) {
                String name = element.getAttributes().item(i).getNodeName();
                assertFalse(name.startsWith("on") || name.equals("style"), file.path() + ": " + name);
            }
            String href = element.getAttribute("href");
            assertTrue(href.isEmpty()
                    || href.matches("#[a-z0-9-]+|(handbook\\.[a-z]{2}|\\.\\./[a-z]{2}/[a-z0-9-]+)\\.html(#[a-z0-9-]+)?"
                    + "|[a-z0-9-]+\\.html(#[a-z0-9-]+)?|handbook\\.css|icon\\.svg"
                    + "|(\\.\\./){2}handbook\\.[a-z]{2}\\.(html|epub)"
                    + "|[a-z0-9-]+\\.[a-z0-9-]+\\.ics"
                    + "|https://ok\\.example/.*|mailto:[^<>\"]+|tel:[0-9-]+"), file.path() + ": " + href);
        }
    }
}
