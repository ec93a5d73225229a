package org.fieldfold.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.fieldfold.source.SourceFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DrawingsTest {
    private static final String HEAD = "<svg xmlns=\"http://www.w3.org/2000/svg\" "
            + "xmlns:xlink=\"http://www.w3.org/1999/xlink\" viewBox=\"0 0 10 20\">\n";

    @TempDir
    Path temporary;

    private static List<String> check(String svg) {
        return DrawingReading.check(new SourceFile("d.svg", svg)).stream().map(Base::shown).toList();
    }

    @Test
    void shapesPrint() {
        assertEquals(List.of(), check("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<!-- ours -->\n" + HEAD
                + "<title>A beetle</title><defs><clipPath id=\"c\"><rect width=\"1\" "
                + "height=\"1\"/></clipPath>"
                + "<g id=\"leg\"><path d=\"M0 0L1 1\" stroke=\"#000\" stroke-width=\".2\"/></g></defs>\n"
                + "<g clip-path=\"url(#c)\" fill=\"none\"><use href=\"#leg\"/><use xlink:href=\"#leg\" "
                + "transform=\"scale(-1 1)\"/><circle cx=\"1\" cy=\"1\" r=\"1\" opacity=\".5\"/></g></svg>"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"<text x=\"1\">a</text>", "<style>a{}</style>", "<script>1</script>",
            "<image href=\"#a\"/>", "<style>@import url(http://a.example/b.css);</style>",
        "<g fill=\"URL(//a.example/b#c)\"/>", "<g fill=\"\\75rl(//a.example/b#c)\"/>",
                "<g fill=\"u&#x72;l(//a.example/b#c)\"/>",
        "<g stroke=\"image-set('a.png')\"/>", "<g fill=\"var(--x)\"/>", "<g fill=\"url (#a)\"/>",
                "<g transform=\"scale(2) url(//a.example)\"/>",
        "<g clip-path=\"url(#a) url(//a.example/b)\"/>", "<g clip-path=\"src('a.svg')\"/>",
        "<g xml:base=\"http://a.example/\"/>", "<use href=\" data:image/svg+xml,x\"/>",
                "<use href=\"jav&#x09;ascript:x\"/>", "<g onmouseover=\"x()\"/>", "<g ONCLICK=\"x()\"/>",
        "<use href=\"\"/>", "<use href=\"#\"/>", "<g fill=\"a:b\"/>", "<g requiredExtensions=\"x\"/>",
        "<foreignObject/>", "<pattern id=\"p\"/>", "<mask id=\"m\"/>", "<filter id=\"f\"/>",
                "<linearGradient id=\"l\"/>",
        "<radialGradient id=\"l\"/>", "<a href=\"#b\"/>", "<animate/>", "<svg/>", "<symbol/>", "<marker/>",
                "<set/>",
        "<h:p xmlns:h=\"http://www.w3.org/1999/xhtml\"/>", "<g onclick=\"x()\"/>", "<g style=\"fill:red\"/>",
        "<g filter=\"url(#f)\"/>", "<use href=\"http://a.example/b.svg#c\"/>",
                "<use xlink:href=\"other.svg#c\"/>",
        "<g fill=\"url(http://a.example/#c)\"/>", "<use href=\"data:image/svg+xml,x\"/>",
        "<g clip-path=\"url(other.svg#c)\"/>", "<?xml-stylesheet href=\"a.css\"?>"})
    void anythingElseIsRefused(String part) {
        List<String> findings = check(HEAD + part + "\n</svg>");
        assertEquals(1, findings.size(), findings.toString());
        assertTrue(findings.get(0).contains("[svg-not-printable]"), findings.toString());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "<text>a</text>|d.svg:2:1: error: expected shapes (g, path, circle and so on), found the element "
                + "'text' "
                + "[svg-not-printable] hint: turn the text into paths, or put it into the caption",
        "<g  onload=\"x()\"/>|d.svg:2:5: error: expected attributes of shapes, found 'onload' "
                + "[svg-not-printable] "
                + "hint: take it out: nothing in a drawing runs",
        "<use href=\"b.svg#c\"/>|d.svg:2:6: error: expected a reference to a part of this drawing, found "
                + "'b.svg#c' "
                + "[svg-not-printable] hint: refer to an id of this file as '#id', or take it out"})
    void findingsPointAtTheTag(String part, String expected) {
        assertEquals(List.of(expected), check(HEAD + part + "</svg>"));
    }

    @Test
    void declarationsAndEntitiesAreRefused() {
        String doctype = "<!DOCTYPE svg [<!ENTITY a \"b\"><!ENTITY c SYSTEM \"file:///etc/hostname\">]>\n";
        assertEquals(List.of("d.svg:1:1: error: expected no document type declaration, found one "
                + "[svg-not-printable] "
                + "hint: delete the line that begins with <!DOCTYPE"), check(doctype + HEAD
                        + "<title>&c;</title></svg>"));
        assertEquals(1, check(HEAD + "<title>&undeclared;</title></svg>").size());
        StringBuilder laughs = new StringBuilder("<!DOCTYPE svg [<!ENTITY a0 \"ha\">");
        for (int i = 1; i < 12; i++) {
            laughs.append("<!ENTITY a").append(i).append(" \"").append(("&a" + (i - 1) + ";").repeat(10)).append("\">");
        }
        assertEquals(1, check(laughs + "]>\n" + HEAD + "<title>&a11;</title></svg>").size());
        assertEquals(1, check("<!DOCTYPE svg SYSTEM \"http://a.example/svg.dtd\">\n" + HEAD + "</svg>").size());
    }

    /** The press reads bytes as they declare themselves. */
    @Test
    void onlyUtf8MayBeDeclared() {
        for (String other : List.of("UTF-16", "ISO-8859-1", "utf-7", "IBM037")) {
            assertEquals(List.of("d.svg:1:31: error: expected a drawing in UTF-8, found one that declares '" + other
                    + "' [svg-not-printable] hint: save it as UTF-8"),
                    check("<?xml version=\"1.0\" encoding=\"" + other + "\"?>" + HEAD + "</svg>"));
        }
        assertEquals(List.of(), check("<?xml version='1.0' encoding='utf-8' ?>" + HEAD + "</svg>"));
    }

    @Test
    void whatIsNotADrawing() {
        assertEquals(1, check("").size());
        assertEquals(1, check("<html/>").size());
        assertEquals(1, check("<svg viewBox=\"0 0 1 1\"/>").size());
        assertEquals(List.of("d.svg:1:1: error: expected a viewBox of four numbers, the last two above 0, found none "
                + "[svg-not-printable] hint: "
                + "write viewBox=\"0 0 width height\" in the svg element"),
                check("<svg xmlns=\"http://www.w3.org/2000/svg\"/>"));
        assertTrue(check(HEAD + "<g>\n</svg>").get(0)
                .startsWith("d.svg:3:3: error: expected well-formed SVG"));
    }

    @Test
    void nothingCanGrowWithoutEnd() {
        StringBuilder bomb = new StringBuilder(HEAD + "<defs><g id=\"a0\"><rect/></g>");
        for (int i = 1; i < 40; i++) {
            bomb.append("<g id=\"a").append(i).append("\">").append(("<use href=\"#a" + (i - 1) + "\"/>")
                    .repeat(10))
                    .append("</g>");
        }
        assertTimeoutPreemptively(Duration.ofSeconds(20), () -> {
            assertTrue(check(bomb + "</defs><use href=\"#a39\"/></svg>").get(0)
                    .contains("every use is followed"));
            assertTrue(check(HEAD + "<g id=\"a\"><use href=\"#a\"/></g></svg>").get(0)
                    .contains("leads back to itself"));
            assertEquals(1, check(HEAD + "<g>".repeat(200_000)).size());
            assertEquals(1, check(HEAD + "<rect/>".repeat(200_000) + "</svg>").size());
            String path = "<path id=\"p\" d=\"M0 0" + "L1 1".repeat(100_000) + "\"/>";
            assertEquals(List.of(), check(HEAD + path + "</svg>"));
            assertTrue(check(HEAD + path + "<use href=\"#p\"/>".repeat(5) + "</svg>").get(0)
                    .contains("every use is followed"));
            assertEquals(1, check(HEAD + "<g id=\"" + "x".repeat(4_000_000) + "\"/></svg>").size());
        });
    }

    @Test
    void cutAnywhereItOnlyGivesFindings() {
        String drawing = HEAD
                + "<g id=\"leg\"><path d=\"M0 0L1 1\" stroke=\"#000\"/></g><use href=\"#leg\"/></svg>";
        for (int cut = 0; cut < drawing.length(); cut++) {
            assertEquals(1, check(drawing.substring(0, cut)).size(), drawing.substring(0, cut));
        }
    }

    @Test
    void figuresAndNotesGoTogether() {
        byte[] png = Rasters.png(256, 512, 8, 0, 0);
        byte[] huge = Rasters.png(50_000, 50_000, 8, 0, 0, new byte[100]);
        String note = "caption: adult\nshows: {entry: mite, damage: false}\n";
        Base base = new Base(temporary).with("figures/alone.svg", HEAD + "</svg>").with("figures/note.yaml",
                note)
                .with("figures/good.png", png).with("figures/good.yaml", note)
                .with("figures/huge.png", huge).with("figures/huge.yaml", note)
                .with("figures/fake.jpg", "<svg/>").with("figures/fake.yaml", note)
                .with("figures/twice.svg", HEAD + "</svg>").with("figures/twice.png", png)
                .with("figures/twice.yaml", note);
        assertEquals(List.of("alone.svg figure-without-note", "fake.jpg not-an-image",
                "huge.png not-an-image",
                "note.yaml note-without-figure", "twice.svg colliding-id"), base.load().findings().stream()
                .filter(finding -> !finding.rule().equals("unknown-reference"))
                .map(finding -> finding.span().file().path().replace("content/figures/", "") + " "
                        + finding.rule())
                .toList());
        assertEquals(List.of("good", "twice"), List.copyOf(base.load().base().orElseThrow().figures()
                .keySet()));
        assertEquals(java.util.Optional.of(new RasterHeader(256, 512)), RasterHeader.of(png));
    }

    @Test
    void jpegSizesAreFoundInTheirFrame() {
        byte[] jpeg = {(byte) 0xff, (byte) 0xd8, (byte) 0xff, (byte) 0xe0, 0, 4, 1, 2, (byte) 0xff,
                (byte) 0xc0, 0, 17, 8,
            1, 0, 2, 0, 3};
        assertEquals(java.util.Optional.of(new RasterHeader(512, 256)), RasterHeader.of(jpeg));
        assertEquals(java.util.Optional.empty(),
                RasterHeader.of("\u00ff\u00d8".getBytes(StandardCharsets.ISO_8859_1)));
    }
}
