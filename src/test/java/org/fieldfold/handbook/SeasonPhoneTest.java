package org.fieldfold.handbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;

/** What a reader keeps from day to day and reckons with later: temperatures, counts, a treatment's day. */
class SeasonPhoneTest extends OnAPhone {
    @AfterEach
    void forget() {
        phone.run("localStorage.clear()");
    }

    private static void set(String id, String value) {
        phone.run("const e=document.getElementById(arguments[0]);e.value=arguments[1];"
                + "e.dispatchEvent(new Event('change',{bubbles:true}))", "reckon-" + id, value);
    }

    private static void keepDay(String day, int min, int max) {
        set("season-day", day);
        set("season-min", String.valueOf(min));
        set("season-max", String.valueOf(max));
        phone.tap(phone.find(".p-season button[type=submit]"));
    }

    private static void press(String within, String words) {
        phone.tap(phone.all(within + " button").stream().filter(WebElement::isDisplayed)
                .filter(button -> button.getText().contains(words)).findFirst()
                .orElseThrow(() -> new AssertionError("no '" + words + "' in " + phone.text(within))));
    }

    private static String said() {
        return phone.text(".p-season .answer").replace('\u00a0', ' ');
    }

    /**
     * Days wholly between the thresholds of codling moth (50 and 88 °F) are worth their mean less 50 in any method
     * (Baskerville and Emin 1969): 60 to 80 °F is 20.
     */
    @Test
    void daysAddUpAndAMissingOneIsNoZero() {
        phone.go(one, "#reckoners");
        new Select(phone.find("#reckon-season-which")).selectByVisibleText("Codling moth: first sustained catch");
        assertTrue(said().startsWith("Fill in the day"), said());
        set("season-from", "2027-05-01");
        for (int day = 1; day <= 9; day++) {
            keepDay("2027-05-0" + day, 60, 80);
        }
        assertTrue(said().startsWith("180 °F-days (100 °C-days) from 9 days, May 1, 2027 to May 9, 2027"), said());
        assertTrue(said().contains("first hatch, at 250 °F-days (139 °C-days): 70 °F-days (39 °C-days) to go."),
                said());
        assertFalse(said().contains("missing"), said());
        keepDay("2027-05-12", 60, 80);
        assertTrue(said().startsWith("200 °F-days"), said());
        assertTrue(said().contains("Days missing: 2, the first May 10, 2027."), said());
        assertTrue(said().contains("it may have come on a day that is missing"), said());
        keepDay("2027-05-10", 60, 80);
        keepDay("2027-05-11", 60, 80);
        keepDay("2027-05-13", 50, 60);
        assertTrue(said().contains("first hatch, at 250 °F-days (139 °C-days): 5 "), said());
        keepDay("2027-05-13", 60, 80);
        assertTrue(said().startsWith("260 °F-days"), said());
        assertTrue(said().contains("first hatch, at 250 °F-days (139 °C-days): reached."), said());
        phone.driver().navigate().refresh();
        assertTrue(said().startsWith("260 °F-days"), said());
        assertTrue(String.valueOf(phone.run("return document.querySelectorAll('.p-season .days li').length"))
                .equals("13"));
        assertTrue(phone.find(".p-notes .more").isEnabled() && !phone.all(".p-notes .more").isEmpty());
        press(".p-season", "Erase all days");
        assertTrue(said().startsWith("No day is kept"), said());
        phone.driver().navigate().refresh();
        assertTrue(said().startsWith("No day is kept"), said());
    }

    @Test
    void celsiusDaysCountInTheEntrysOwnUnit() {
        phone.go(one, "#reckoners");
        new Select(phone.find("#reckon-season-which")).selectByVisibleText("Codling moth: first sustained catch");
        set("season-from", "2027-05-01");
        new Select(phone.find("#reckon-season-unit")).selectByVisibleText("°C");
        // 15 to 25 °C is 59 to 77 °F, 18 above 50
        keepDay("2027-05-01", 15, 25);
        assertTrue(said().startsWith("18 °F-days (10 °C-days) from one day, May 1, 2027"), said());
    }

    /** 10 on one day and 20 three days later are log 2 / 3 a day: they double in 3 days. */
    @Test
    void anEarlierCountOfTheSameEntryIsOfferedAndNotForced() {
        phone.go(one, "#colorado-potato-beetle");
        Object key = phone.run("const key=document.querySelector('#colorado-potato-beetle .card[data-count]')"
                + ".getAttribute('data-count');const three=new Date();three.setDate(three.getDate()-3);"
                + "localStorage.setItem('fieldfold.2027.en.notes',JSON.stringify([{day:three.getFullYear()+'-'"
                + "+('0'+(three.getMonth()+1)).slice(-2)+'-'+('0'+three.getDate()).slice(-2),"
                + "page:'colorado-potato-beetle',"
                + "name:'Colorado potato beetle',text:'',place:'',"
                + "count:{key:key,total:10,units:arguments[0]}}]));return key",
                ((Number) units()).intValue());
        assertTrue(String.valueOf(key).startsWith("colorado-potato-beetle/"));
        phone.driver().navigate().refresh();
        String page = "#colorado-potato-beetle ";
        phone.tap(phone.seen(page + ".begin"));
        phone.tap(phone.all(page + ".counter .more button").stream().filter(button -> button.getText().equals("+10"))
                .findFirst().orElseThrow());
        assertEquals(0, phone.all(page + ".after .answer").size());
        for (int i = 0; i < 60 && phone.text(page + ".advice").startsWith("Keep counting"); i++) {
            phone.tap(phone.all(page + ".counter .more button").get(1));
        }
        press(page + ".after", "Compare with the count of");
        assertTrue(phone.text(page + ".after .answer").length() > 10, phone.text(page + ".after .answer"));
        phone.go(one, "#reckoners");
        new Select(phone.find("#reckon-recount-kept")).selectByIndex(1);
        assertEquals("10", phone.find("#reckon-recount-first").getAttribute("value"));
        assertEquals("3", phone.find("#reckon-recount-days").getAttribute("value"));
        assertEquals("", phone.find("#reckon-recount-second").getAttribute("value"));
        phone.find("#reckon-recount-second").sendKeys("20");
        assertTrue(phone.text(".p-recount .answer").contains("Doubles in 3 days."), phone.text(".p-recount .answer"));
    }

    /** The sample of the card that is shown first. */
    private static Object units() {
        return Shipped.BASE.pests().get("colorado-potato-beetle").value().thresholds().stream()
                .map(threshold -> Shipped.BASE.pests().get("colorado-potato-beetle").value()
                        .cardOf(threshold, threshold.mainAudience())).flatMap(java.util.Optional::stream)
                .findFirst().orElseThrow().lookAt();
    }

    @Test
    void waitingTimesStandBehindTheCautionAndTheScriptAddsDays() {
        phone.go(one, "#codling-moth");
        String tier = "#codling-moth .tier3 ";
        assertFalse(phone.find(tier + ".measures").isDisplayed());
        phone.tap(phone.find(tier + ".gate"));
        assertTrue(phone.text(tier + ".measures").contains("before harvest"), phone.text(tier + ".measures"));
        press(tier + ".measures", "From what day?");
        phone.run("const e=document.querySelector('#codling-moth .tier3 input[type=datetime-local]');"
                + "e.value='2027-06-30T18:30';e.dispatchEvent(new Event('input',{bubbles:true}))");
        // spinosad: harvest 1 to 7 days, entry 4 hours
        String days = phone.text(tier + ".answer");
        assertTrue(days.contains("spinosad: Go in again: June 30, 2027, 22:30 · Harvest: July 7, 2027, 18:30"), days);
    }

    @Test
    void netsSayOfWhomNoWidthIsKnown() {
        phone.go(one, "#reckoners");
        new Select(phone.find("#reckon-net-unit")).selectByVisibleText("in");
        phone.run("const e=document.getElementById('reckon-net-hole');e.value='0.031';"
                + "e.dispatchEvent(new Event('input',{bubbles:true}))");
        assertTrue(phone.text(".p-net .answer").contains("no width is known"), phone.text(".p-net .answer"));
        assertTrue(phone.text(".p-net").contains("no source gives the width of their body"), phone.text(".p-net"));
    }
}
