package org.fieldfold.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.fieldfold.prose.Passage;
import org.fieldfold.prose.Prose;
import org.fieldfold.prose.Run;
import org.fieldfold.source.Finding;
import org.fieldfold.source.SourceFile;
import org.fieldfold.source.Span;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TextsTest {
    private static MarkdownReading markdown(String text) {
        return new MarkdownReading(text, new Span(new SourceFile("x.md", text), 0, text.length()));
    }

    private static List<Run> line(String text) {
        MarkdownReading reading = markdown(text);
        assertEquals(List.of(), reading.findings());
        return reading.prose().line();
    }

    private static List<String> slips(String text) {
        return markdown(text).findings().stream().map(finding -> finding.span().place() + " "
                + finding.rule()).toList();
    }

    @Provide
    Arbitrary<String> texts() {
        Arbitrary<String> words = Arbitraries.of("a", "Lay", "straw", "1", "12.", "-", "+", "=", "#", "5 cm",
                "'s", "\"x\"",
                "(", ")", ":", ";", ".", ",", "%", "½", "\u00a0", " ", "  ", "    ", "\n", "\n\n", "\n ",
                        "\n    ", "é",
                "\uD83D\uDC1B", "http://a.example", "a@b.example", "$", "^", "/", "{", "}", "*", "_", "\t",
                        "1)", "*", "*Perillus*", "*P. bioculatus*", "*not ", "now*", "**", "(", ".");
        return words.list().ofMaxSize(12).map(parts -> String.join("", parts));
    }

    /** The short way for plain texts gives what the Markdown reader gives. */
    @Property(tries = 5000)
    void plainTextIsReadAsMarkdownReadsIt(@ForAll("texts") String text) {
        String value = text.stripTrailing();
        Optional<Prose> plain = PlainText.read(value);
        if (plain.isPresent()) {
            assertEquals(markdown(value).prose(), plain.get());
        }
    }

    @Test
    void mostTextsAreReadTheShortWay() {
        for (String text : List.of("Lay straw between rows; pull volunteer potatoes.",
                "Plant ¼ mile from last year’s.",
                "Two paragraphs.\n\nOf 5 to 10 %.", "Walk (slowly), then \"count\".",
                        "Leave *Perillus* (and *Podisus maculiventris*).",
                "Do *not* spray.")) {
            assertTrue(PlainText.read(text).isPresent(), text);
        }
        assertEquals(Prose.plain("Lay straw."), PlainText.read("Lay straw.").orElseThrow());
    }

    @Test
    void scientificNamesAreNames() {
        assertEquals(List.of(Run.plain("Leave "), Run.name("Perillus"), Run.plain(" and "),
                Run.name("Podisus maculiventris"), Run.plain(" alone.")),
                line("Leave *Perillus* and *Podisus maculiventris* alone."));
        assertEquals(List.of(Run.name("P. maculiventris")), line("_P. maculiventris_"));
        assertEquals(Run.Style.EMPHASIS, line("Do *not* spray").get(1).style());
        assertEquals(Run.Style.EMPHASIS, line("*Never spray here*").get(0).style());
        assertEquals(List.of(Run.strong("Stop"), Run.plain(" & wait")), line("**Stop** &amp; wait"));
    }

    @Test
    void linksLeadToEntriesAndPages() {
        assertEquals(List.of(Run.plain("See "), Run.plain("the beetle").to("#colorado-potato-beetle"),
                Run.plain(".")), line("See [the beetle](entry:colorado-potato-beetle)."));
        assertEquals(List.of(Run.plain("page").to("https://a.example/b?c=d"), Run.plain(" "),
                Run.plain("call").to("tel:5550100"), Run.plain(" "), Run.plain("write")
                        .to("mailto:a@b.example")),
                line("[page](https://a.example/b?c=d) [call](tel:5550100) [write](mailto:a@b.example)"));
        assertEquals(List.of("x.md:1:3 link-scheme", "x.md:1:21 link-scheme", "x.md:1:38 link-scheme"),
                slips("a [b](javascript:c) [d](file:///etc) [e](f/g.html)"));
        assertTrue(markdown("[b](JavaScript:c)").prose().line().get(0).link().isEmpty());
    }

    /** A link that would run something, or lead to another host than it shows. */
    @ParameterizedTest
    @ValueSource(strings = {"javascript:alert(1)", "JaVaScRiPt:x", "java&#x09;script:x", "&#106;avascript:x",
        "%6aavascript:x", "javascript&colon;x", "<java\tscript:x>", "< javascript:x>", "vbscript:x",
        "data:text/html,x", "DATA:text/html;base64,x", "file:///etc/passwd", "FILE:x", "//evil.example",
        "\\\\evil.example", "https:evil.example", "https:///x", "https://a%2eexample", "https://a\\@b.example",
        "https://good.example@evil.example/", "https://g\u043e\u043ed.example", "http://[::1]/", "https://",
        "https://a.example/\u202ex", "https://a.example/&#x200b;", "<https://a.example/a b>", "tel:*21*1#", "tel:x",
        "mailto:x", "mailto:%61@b.example", "mailto:a@b.example\\", "entry:../../x", "ftp://a.example/", "blob:x",
        "view-source:https://a.example", "../x.html", "x", "#x"})
    void linksThatDeceive(String address) {
        List<Run> runs = new ArrayList<>();
        MarkdownReading reading = markdown("a [b](" + address + ") c");
        reading.prose().passages().forEach(passage -> runs.addAll(((Passage.Paragraph) passage).runs()));
        assertTrue(runs.stream().allMatch(run -> run.link().isEmpty() || run.link().equals("#../../x")),
                runs.toString());
        boolean noLinkAtAll = runs.size() == 1 && runs.get(0).text().contains("](");
        assertTrue(noLinkAtAll || !reading.links().isEmpty() || reading.findings().stream()
                .anyMatch(finding -> finding.rule().equals("link-scheme")), runs + " " + reading.findings());
        String auto = "a <" + address + "> c";
        assertTrue(markdown(auto).prose().line().stream().allMatch(run -> run.link().isEmpty()
                || run.link().equals("#../../x")), auto);
    }

    @Test
    void htmlComesOutAsText() {
        MarkdownReading reading = markdown("Not <b onclick=x>now</b>.\n\n<script>alert(1)</script>\n");
        assertEquals("Not <b onclick=x>now</b>. <script>alert(1)</script>", reading.prose().words());
        assertEquals(List.of("x.md:1:5 raw-html", "x.md:1:21 raw-html", "x.md:3:1 raw-html"),
                slips("Not <b onclick=x>now</b>.\n\n<script>alert(1)</script>\n"));
    }

    @Test
    void blocks() {
        Prose prose = markdown("# Top\n\nOne\ntwo  \nthree\n\n- a *b*\n- c\n\n1. d\n2. e\n\n### Deep\n")
                .prose();
        assertEquals(List.of(new Passage.Heading(2, List.of(Run.plain("Top"))),
                new Passage.Paragraph(List.of(Run.plain("One two three"))),
                new Passage.Bullets(false, List.of(List.of(Run.plain("a "), new Run("b", Run.Style.EMPHASIS,
                        "")), List.of(Run.plain("c")))),
                new Passage.Bullets(true, List.of(List.of(Run.plain("d")), List.of(Run.plain("e")))),
                new Passage.Heading(3, List.of(Run.plain("Deep")))), prose.passages());
        assertEquals(List.of("x.md:1:1 unprintable-markdown", "x.md:3:1 unprintable-markdown",
                "x.md:5:5 unprintable-markdown"), slips("> a\n\n---\n\n    code\n"));
    }

    @Test
    void chaptersBeginWithTheirTitle() {
        List<Finding> findings = new ArrayList<>();
        SourceFile file = new SourceFile("c.md", "# How to *count*\r\n\r\nWalk a V.\r\n\r\nCount.\r\n");
        ChapterReading chapter = ChapterReading.read(file, "c", new TextReading(), findings);
        assertEquals(List.of(), findings);
        assertEquals("How to *count*", chapter.chapter().orElseThrow().title());
        assertEquals(2, chapter.chapter().orElseThrow().body().passages().size());
        ChapterReading.read(new SourceFile("c.md", "\nWalk a V.\n"), "c", new TextReading(), findings);
        assertEquals("c.md:2:1: error: expected a line '# Title' first, found 'Walk a V.' [missing-title] "
                + "hint: begin the "
                + "chapter with '# ' and its title", Base.shown(findings.get(0)));
    }
}
