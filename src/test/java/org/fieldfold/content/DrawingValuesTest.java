package org.fieldfold.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.fieldfold.pdf.DrawnFigure;
import org.fieldfold.source.SourceFile;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Values in drawings: odd ones that may stand are drawn, and those on which programs differ are refused. */
class DrawingValuesTest {
    private static final String SHAPE = "<rect width=\"9\" height=\"9\" stroke=\"#000\"/>";

    private static String svg(String inside) {
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 40 20\">" + inside + "</svg>";
    }

    private static List<String> check(String svg) {
        return DrawingReading.check(new SourceFile("d.svg", svg)).stream().map(Base::shown).toList();
    }

    /** What the drawing library makes of each was seen by trying: an endless loop, a crash, or something else. */
    @ParameterizedTest
    @ValueSource(strings = {"d='M0 0z 3 3 9 0'", "d='x'", "d='M0 0L'", "d='M0 0L nan 3'", "d='M0 0h9v9Q'",
            "d='L5 5 9 9'",
            "d='5 5'", "d='M1e7 0L1 1'", "d='M0 0A5 5 0 2 1 9 9'", "d='M0 0A5 5 0 0 1 9'", "d='M0 0,'", "d=',M0 0'",
            "d='M0 0,,3 3'", "d='M0 0L3. 3'", "d='M0,0,L3 3'", "d='none'", "d='M0 0 3'", "d='M0 0\u212a1'",
            "points='1'", "points='1,2 3'", "points='1,2 x,5'", "points='0-0 9-9'", "points='0,0,'", "points='0,,0'",
            "transform='scale()'", "transform='matrix(1 2 3)'", "transform='rotate(1 2)'", "transform='scale (2)'",
            "transform='scale(1e7)'", "transform='scale(1..2)'", "transform='scale(2),'", "transform='foo'",
            "transform='none'", "width='-3'", "width='NaN'", "width='Infinity'", "width='1e39'",
            "width='auto'", "width='3.'", "width='3mm'", "width=''", "r='-1'", "rx='auto'", "x='a'", "x1='1e7'",
            "cy='1 1'",
            "stroke-width='-1'", "stroke-width='1e40'", "stroke-dasharray='-1 2'", "stroke-dasharray='0'",
            "stroke-dasharray='0.00001'", "stroke-dasharray='a'", "stroke-miterlimit='0'", "stroke-linecap='foo'",
            "stroke-linejoin='arcs'", "fill='nonsense'", "fill='#12'", "fill='#gggggg'", "fill='rgb(1)'",
            "fill='rgb(1,2,3,4,5)'", "fill='hsl(1,2%,3%)'", "fill='currentColor'", "fill='context-fill'",
            "fill='rebeccapurple'", "fill='none red'", "stroke='RED'", "color='x'", "opacity='x'", "opacity='NaN'",
            "opacity='7'", "fill-opacity='-.1'", "display='foo'", "visibility='foo'", "overflow='foo'",
            "fill-rule='foo'",
            "clip-rule='foo'", "clipPathUnits='foo'", "paint-order='markers'", "shape-rendering='foo'"})
    void aValueThatIsNoneIsRefusedAtItsAttribute(String attribute) {
        String svg = svg("<path " + attribute.replace('\'', '"') + "/>");
        List<String> found = check(svg);
        assertEquals(1, found.size(), found.toString());
        assertTrue(found.get(0).startsWith("d.svg:1:" + (svg.indexOf("<path ") + 7)
                    + ": error: expected "), found.get(0));
        assertTrue(found.get(0).endsWith("[svg-not-printable] hint: write it so, or take it out"), found.get(0));
    }

    @Test
    void theMessageSaysWhatMayStandThere() {
        assertEquals(List.of("d.svg:1:67: error: expected path data, commands with their numbers of at most 1,000,000, "
                + "found 'M0 0z 3 3' [svg-not-printable] hint: write it so, or take it out"),
                check(svg("<path d=\"M0 0z 3 3\"/>")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"<path d=\"\"/>" + SHAPE, "<path/>"
                    + SHAPE, "<path d=\"M0 0A0 0 0 0 1 9 9\" stroke=\"#000\"/>",
            "<path d=\"M0 0a5 5 0 0112 9\"/>", "<path d=\"M0 0A-5 5 0 1,0 9,9\"/>", "<path d=\"M1.5.5 3-4 5,6\"/>",
            "<path d=\"M0,0,9,9,9,0\"/>", "<path d=\"m0 0 9 9 9 0z m1 1 h3 v3\"/>", "<path d=\"M0 0L+3+3 9 0\"/>",
            "<path d=\"M1e6 1e6L1 1 3 3 3 0\"/>", "<path d=\"M0 0L1e1 1E-1 9 9\"/>",
            "<path d=\"\n M 0 0 \n H 9 V 9 Z \n\"/>",
            "<path d=\"M0 0c1 1 2 2 3 0s1 1 2 2q1 1 5 0t3 3\"/>", "<polygon points=\"\"/>" + SHAPE,
            "<polygon points=\" 0,0 9 9, 9 , 0 \"/>", "<rect width=\"50%\" height=\"5px\" rx=\"2\"/>",
            "<g transform=\"translate(1,2)scale(2), rotate( 3 4 , 5 )\">" + SHAPE + "</g>",
            "<g transform=\"\">" + SHAPE + "</g>",
            "<g transform=\"skewX(30) skewY(-3e1) matrix(1 0 0 1 .5 .5)\">" + SHAPE + "</g>",
            "<path d=\"M0 0h9\" stroke=\"red\" stroke-dasharray=\"0 5, 1\" stroke-dashoffset=\"-3\"/>",
            "<rect width=\"9\" height=\"9\" fill=\"rgb(10%, 20% ,30%)\" stroke-width=\"0\" stroke-miterlimit=\"1\"/>",
            "<clipPath id=\"c\" clipPathUnits=\"objectBoundingBox\"><use href=\"#r\"/></clipPath><g display=\"none\">"
           
                    + "<rect id=\"r\" width=\".5\" height=\".5\"/></g><circle r=\"9\" clip-path=\"url( '#c' )\"/>",
            "<g visibility=\"hidden\"><circle r=\"3\"/></g><rect width=\"9\" height=\"9\"><title>a</title></rect>"})
    void whatIsOddAndMayStandIsDrawn(String inside) {
        assertEquals(List.of(), check(svg(inside)));
        assertEquals(Optional.empty(), DrawnFigure.problem(svg(inside)));
    }

    /** The names of SVG 1.1, 4.4: the drawing library knows the same. */
    @Test
    void everyColourIsAnother() {
        assertEquals(147, DrawingColours.NAMES.size());
        for (String name : DrawingColours.NAMES) {
            String svg = svg("<path d=\"M0 0h1v1\" fill=\"#f00\"/><rect width=\"9\" height=\"9\" fill=\"" + name
                    + "\"/>");
            assertEquals(List.of(), check(svg));
            assertEquals(name.equals("black"), DrawnFigure.colours(svg).contains(0), name);
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"<use href=\"#a\"/>|expected a shape or group of the id 'a', found none",
        "<use href=\"#a\"/><clipPath id=\"a\"/>|expected a shape or group of the id 'a', found 'clipPath'",
        "<g clip-path=\"url(#a)\"/>|expected a clipPath of the id 'a', found none",
        "<g clip-path=\"url(#a)\"/><g id=\"a\"/>|expected a clipPath of the id 'a', found 'g'",
        "<clipPath id=\"c\"><use href=\"#a\"/></clipPath><g id=\"a\"/>|expected a shape of the id 'a', found 'g'",
        "<use href=\"#a\"/><g id=\"a\"/><g id=\"a\"/>|expected one part of the id 'a', found several",
        "<clipPath id=\"c\"><g/></clipPath>|expected shapes alone in a clipPath, found 'g'",
        "<rect><path/></rect>|expected shapes side by side in groups, found 'path' inside 'rect'",
        "<title><g/></title>|expected shapes side by side in groups, found 'g' inside 'title'",
        "<clipPath id=\"c\"><rect clip-path=\"url(#c)\"/></clipPath>|expected each use and each clip-path to lead",
        "<clipPath id=\"c\" clip-path=\"url(#c)\"/>|expected each use and each clip-path to lead"})
    void partsThatLeadAstray(String inside, String message) {
        List<String> found = check(svg(inside));
        assertEquals(1, found.size(), found.toString());
        assertTrue(found.get(0).contains(": error: " + message), found.get(0));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0 0 0 9", "0 0 9 0", "0 0 -9 9", "0 0 1e-40 1e-40", "0 0 1e40 1e40", "0 0 1 5000",
            "1e39 0 9 9",
            "0 0 9", "0 0 9 9 9", "0,,0 9 9", "a b c d", ""})
    void aViewBoxThatIsNone(String box) {
        assertEquals(1, check(svg(SHAPE).replace("0 0 40 20", box)).size());
    }

    @ParameterizedTest
    @CsvSource({"80,40,true", "80mm,40mm,true", "100%,100%,true", "20.1,10,false", "80,,false", ",40,false",
            "40,40,false",
        "0,0,false", "x,-4,false", "80mm,40,false", "auto,auto,false", "100%,50%,false"})
    void widthAndHeightSayWhatTheViewBoxSays(String width, String height, boolean may) {
        String svg = svg(SHAPE).replace("viewBox", (width == null ? "" : "width=\"" + width + "\" ")
                + (height == null ? "" : "height=\"" + height + "\" ") + "viewBox");
        assertEquals(may, check(svg).isEmpty());
        if (may) {
            assertEquals(DrawnFigure.boxes(svg(SHAPE)), DrawnFigure.boxes(svg));
        }
    }

    @Test
    void aVeryLargeDrawingIsDrawnInBoundedTime() {
        StringBuilder many = new StringBuilder();
        for (int i = 0; i < 10_000; i++) {
            many.append("<rect x=\"").append(i % 40).append("\" width=\"1\" height=\"1\" opacity=\".5\"/>");
        }
        StringBuilder uses = new StringBuilder("<g id=\"u0\">" + SHAPE + "</g>");
        for (int i = 1; i < 90; i++) {
            uses.append("<g id=\"u").append(i).append("\"><use href=\"#u").append(i - 1).append("\"/></g>");
        }
        String deep = "<g transform=\"rotate(7)\">".repeat(60) + SHAPE + "</g>".repeat(60);
        String overflowing = "<g transform=\"scale(1000000)\">".repeat(60) + SHAPE + "</g>".repeat(60);
        Assertions.assertTimeoutPreemptively(Duration.ofSeconds(60), () -> {
            assertEquals(List.of(), check(svg(many.toString())));
            assertEquals(Optional.empty(), DrawnFigure.problem(svg(many.toString())));
            assertEquals(List.of(), check(svg(uses.toString())));
            assertEquals(Optional.empty(), DrawnFigure.problem(svg(uses.toString())));
            assertEquals(List.of(), check(svg(deep)));
            assertEquals(Optional.empty(), DrawnFigure.problem(svg(deep)));
            assertEquals(List.of(), check(svg(overflowing)));
            assertTrue(DrawnFigure.problem(svg(overflowing)).isPresent());
        });
    }
}
