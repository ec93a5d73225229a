package org.fieldfold.handbook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class TogetherTest {
    @Test
    void rangesAndUnitsDoNotBreak() {
        assertEquals("9–\u206011\u00a0mm long", Together.kept("9–11 mm long"));
        assertEquals("at 20\u00a0% leaf loss", Together.kept("at 20 % leaf loss"));
        assertEquals("in 7\u00a0days", Together.kept("in 7 days"));
        assertEquals("5 minutes – 3 moths", Together.kept("5 minutes – 3 moths"));
        assertEquals("", Together.kept(""));
    }
}
