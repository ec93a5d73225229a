package org.fieldfold.handbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import org.fieldfold.entry.Figure;
import org.fieldfold.entry.Placed;
import org.junit.jupiter.api.Test;

class TerseSvgTest {
    /** Path data by its grammar: a command, or a number (SVG 1.1, 8.3.9). Our drawings use no arc flags. */
    private static final Pattern TOKEN = Pattern.compile("[A-Za-z]|[-+]?(?:\\d+\\.?\\d*|\\.\\d+)");
    private static final Pattern PATH = Pattern.compile(" d=[\"']([^\"']*)[\"']");

    @Test
    void everyShippedDrawingKeepsEveryCommandAndNumberOfItsPaths() {
        long before = 0;
        long after = 0;
        for (Placed<Figure> placed : Shipped.BASE.figures().values()) {
            String drawn = new String(placed.value().bytes(), StandardCharsets.UTF_8);
            String terse = new TerseSvg(drawn).encoded();
            String seen = URLDecoder.decode(terse.replace("+", "%2b"), StandardCharsets.UTF_8);
            assertEquals(paths(drawn), paths(seen), placed.value().id());
            Html.parse(new HandbookFile(placed.value().id(), seen.getBytes(StandardCharsets.UTF_8)));
            assertFalse(terse.contains("\""), placed.value().id());
            before += drawn.length();
            after += terse.length();
        }
        assertTrue(before > 0 && after < before, after + " of " + before);
    }

    private static List<List<String>> paths(String svg) {
        return PATH.matcher(svg).results().map(path -> TOKEN.matcher(path.group(1)).results()
                .map(token -> Character.isLetter(token.group().charAt(0)) ? token.group()
                        : new BigDecimal(token.group()).stripTrailingZeros().toPlainString()).toList())
                        .toList();
    }

    @Test
    void leavesOutBlanksAndNoughtsThatNobodyNeeds() {
        assertEquals("<svg><path d='M.5-1c2 .5.5 1 10 0z' id='_0'/><use href='%23_0'/></svg>",
                new TerseSvg("<svg><title>x</title>\n<path d=\"M 0.5 -1 c 2 0.5 0.5 1 10 0 z\" "
                        + "id=\"half\"/>\n<use href=\"#half\"/></svg>\n").encoded());
    }

    @Test
    void cannotEndTheStyleSheetThatItStandsIn() {
        String terse = new TerseSvg("<svg><style>a{}</Style>]]></svg>").encoded();
        assertFalse(terse.toLowerCase(java.util.Locale.ROOT).contains("</style") || terse.contains("]]>"), terse);
    }

    @Test
    void isNotHurriedIntoAnEndlessLoopByBrokenDrawings() {
        for (String broken : List.of("", "<", "<svg a=\"", "<svg d='1 2", "<title>", "'\"'\"",
                "<svg d=' , 0. 0.'/>")) {
            assertTrue(new TerseSvg(broken).encoded().length() < 40, broken);
        }
    }
}
