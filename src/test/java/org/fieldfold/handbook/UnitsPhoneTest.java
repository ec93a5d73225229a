package org.fieldfold.handbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.support.ui.Select;

/** Units by choice, in a browser: both stand there until one is chosen, and then on every page. */
class UnitsPhoneTest extends OnAPhone {
    @AfterEach
    void forget() {
        phone.run("localStorage.clear()");
    }

    private static String look(String page) {
        return phone.text(page).replace('\u00a0', ' ').replace("\u2060", "");
    }

    /** Leek moth: larva 1 to 14 mm. 25.4 mm are an inch: 14 mm = 0.551 in. */
    @Test
    void theChoiceHoldsOnEveryPageAndOutlivesAReload() {
        phone.go(one, "#leek-moth");
        assertTrue(look("#leek-moth").contains("6–9 mm (1/4–11/32 in)"), look("#leek-moth .p-look"));
        phone.go(one, "");
        new Select(phone.find("#units-start")).selectByValue("c");
        phone.go(one, "#leek-moth");
        assertTrue(look("#leek-moth").contains("1/4–11/32 in"));
        assertFalse(look("#leek-moth").matches("(?s).*\\d mm\\b.*"));
        phone.go(one, "#codling-moth");
        assertEquals(List.of(), phone.all("table.in-m").stream().filter(table -> table.isDisplayed()).toList());
        assertTrue(look("#codling-moth").contains("above 50 °F, at most 88 °F"), look("#codling-moth .p-count"));
        phone.go(one, "#reckoners");
        new Select(phone.find("#units-reckoners")).selectByValue("m");
        phone.go(one, "#codling-moth");
        assertTrue(look("#codling-moth").contains("above 10 °C, at most 31.1 °C"), look("#codling-moth .p-count"));
        assertEquals(List.of(), phone.all("table.in-c").stream().filter(table -> table.isDisplayed()).toList());
        assertTrue(phone.all("#codling-moth table.in-m").get(0).isDisplayed());
        phone.go(one, "");
        assertEquals("m", phone.find("#units-start").getAttribute("value"));
        new Select(phone.find("#units-start")).selectByValue("");
        phone.go(one, "#codling-moth");
        assertTrue(look("#codling-moth").contains("above 50 °F (10 °C), at most 88 °F (31.1 °C)"));
    }

    /** CSS: 96 px are an inch of 25.4 mm. A bar is as long as the animal whichever units are read beside it. */
    @Test
    void barsStayTrueInEitherSystem() {
        phone.go(one, "");
        new Select(phone.find("#units-start")).selectByValue("c");
        phone.go(one, "#leek-moth");
        Object wrong = phone.run("""
                return [...document.querySelectorAll('#leek-moth .size')].map(bar => {
                    const whole = Number(bar.getAttribute('width').replace('mm', '')) / 25.4 * 96;
                    return [bar.getBoundingClientRect().width, bar.firstChild.getBoundingClientRect().width]
                        .map(width => Math.abs(width - whole) < 0.1);
                }).join()""");
        assertTrue(String.valueOf(wrong).matches("true(,true)+"), String.valueOf(wrong));
    }

    @Test
    void withoutScriptBothStandThere() {
        phone.tell("Emulation.setScriptExecutionDisabled", Map.of("value", true));
        try {
            phone.go(one, "#codling-moth");
            assertTrue(look("#codling-moth").contains("above 50 °F (10 °C), at most 88 °F (31.1 °C)"));
            assertEquals(2, phone.all("#codling-moth table.in-m, #codling-moth table.in-c").stream()
                    .filter(table -> table.isDisplayed()).count());
        } finally {
            phone.tell("Emulation.setScriptExecutionDisabled", Map.of("value", false));
        }
    }
}
