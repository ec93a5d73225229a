package org.fieldfold.handbook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** What stands in both systems is marked, and nothing else. */
class QuantitiesTest {
    private static String marked(String text) {
        Markup out = new Markup();
        Quantities.write(out, text);
        return out.toString().replace('\u00a0', ' ').replace("\u2060", "");
    }

    @Test
    void whatStandsThereTwiceIsMarkedByTheOneThatComesFirst() {
        assertEquals("Adult, <m->6–9 mm (1/4–11/32 in)</m->.", marked("Adult, 6–9 mm (1/4–11/32\u00a0in)."));
        assertEquals("<m->30 mm (1 3/16 in)</m->", marked("30 mm (1\u00a03/16\u00a0in)"));
        assertEquals("above <c->50 °F (10 °C)</c->, at most <c->86 °F (30 °C)</c->",
                marked("above 50 °F (10 °C), at most 86 °F (30 °C)"));
        assertEquals("<m->361.8 °C-days (651.2 °F-days)</m->", marked("361.8\u00a0°C-days (651.2\u00a0°F-days)"));
        assertEquals("at least <c->100 feet (30 m)</c-> in", marked("at least 100 feet (30 m) in"));
        assertEquals("<m->4 mm (5/32 pulg)</m->", marked("4 mm (5/32\u00a0pulg)"));
    }

    @Test
    void whatStandsThereOnceStays() {
        for (String text : new String[] {"6 mm long (adult)", "3 in (of 5)", "10 °C (cool)", "6 mm (9 mm)",
            "50 °F (10 mm)", "4 (5/32 in)", "12 (3)", "m-4 mm(5/32 in)"}) {
            assertEquals(text, marked(text));
        }
        assertEquals("&lt;m-&gt;", marked("<m->"));
    }
}
