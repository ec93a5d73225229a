package org.fieldfold.handbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** The shipped handbook in a browser, as on a telephone without signal. */
class PhoneTest extends OnAPhone {
    @Test
    void searchFindsNamesFirstAndGoesThereByKeys() {
        phone.go(one, "");
        phone.type("/");
        phone.type("colorado po");
        assertEquals("true", phone.find("#find").getAttribute("aria-expanded"));
        assertTrue(phone.text("#found-0").startsWith("Colorado potato beetle"), phone.text("#found-0"));
        phone.press(Keys.ARROW_DOWN);
        assertEquals("found-0", phone.find("#find").getAttribute("aria-activedescendant"));
        assertEquals("true", phone.find("#found-0").getAttribute("aria-selected"));
        phone.press(Keys.ENTER);
        assertTrue(phone.driver().getCurrentUrl().endsWith("#colorado-potato-beetle"));
        assertTrue(phone.find("#colorado-potato-beetle").isDisplayed());
        assertFalse(phone.find("#found").isDisplayed());
    }

    @Test
    void searchKnowsScientificNamesAndWhatIsSeenAndSaysWhenItFindsNothing() {
        phone.go(one, "");
        phone.type("/");
        phone.type("Píeris");
        assertTrue(phone.text("#found-0").toLowerCase(Locale.ROOT).contains("cabbageworm"));
        phone.press(Keys.ESCAPE);
        phone.type("holes cabbage");
        assertTrue(phone.all("#found [role=option]").size() > 1);
        phone.press(Keys.ESCAPE);
        phone.type("zzzz");
        assertTrue(phone.text(".finder [role=status]").startsWith("Nothing found"));
    }

    @Test
    void theFolderFindsAsWell() {
        phone.go(folder.resolve("handbook/en/colorado-potato-beetle.html"), "");
        phone.type("/");
        phone.type("leek moth");
        phone.press(Keys.ENTER);
        assertTrue(phone.driver().getCurrentUrl().endsWith("handbook/en/leek-moth.html"));
    }

    /** One file of cases, written by the compiler (ReckonerCasesTest): the script answers the same to 1e-9. */
    @Test
    void theScriptReckonsAsTheCompilerDoes() throws IOException {
        phone.go(one, "");
        String cases = Files.readString(ReckonerCasesTest.FILE);
        Object wrong = phone.run(Script.pieces(List.of("warmth", "field", "count")) + """
                function wall(day) {
                    const two = n => ('0' + n).slice(-2);
                    return day.getFullYear() + '-' + two(day.getMonth() + 1) + '-' + two(day.getDate()) + 'T'
                        + two(day.getHours()) + ':' + two(day.getMinutes());
                }
                const ask = {
                    warmth: degreeDays, season: seasonSum, says: saysOf, recount: recount, border: borderFor,
                    cover: (shape, width, more, ...rest) => tunnel(bow(shape, width, more), ...rest),
                    waiting: (finished, a, b, c, d) => {
                        const open = opens(new Date(finished), [a, b], [c, d]);
                        return open.entry.concat(open.harvest).map(wall);
                    },
                    plan: (each, plan, done, total) => verdict({each: each, plan: plan}, done, total)
                };
                function same(found, wanted) {
                    if (typeof wanted === 'number') {
                        return Math.abs(found - wanted) <= 1e-9 * Math.max(1, Math.abs(wanted));
                    }
                    if (wanted !== null && typeof wanted === 'object') {
                        return Object.keys(wanted).every(key => same(found[key], wanted[key]));
                    }
                    return wanted === null ? found === null : String(found) === wanted;
                }
                const all = JSON.parse(arguments[0]);
                const seen = {};
                all.forEach(one => { seen[one.name] = true; });
                return Object.keys(seen).sort().join() + ': ' + JSON.stringify(all.filter(one =>
                    !same(ask[one.name](...one.asked), one.answered)).map(one =>
                        [one, ask[one.name](...one.asked)]).slice(0, 5));
                """, cases);
        assertEquals("border,cover,plan,recount,says,season,waiting,warmth: []", wrong);
    }

    @Test
    void theScriptFoldsWordsAsTheCompilerDoes() throws IOException {
        phone.go(one, "");
        for (String[] pair : FoldedTest.cases()) {
            assertEquals(pair[1], phone.run(Script.pieces(List.of("fold"))
                    + "return tokens(arguments[0]).join(' ');", pair[0]), pair[0]);
        }
    }

    /** A tap, where the thumb would put it. */
    private static void tap(String selector, String words) {
        phone.tap(named(selector, words));
    }

    private static WebElement named(String selector, String words) {
        return phone.all(selector).stream().filter(one -> one.isDisplayed() && one.getText().toLowerCase(Locale.ROOT)
                .contains(words.toLowerCase(Locale.ROOT))).findFirst()
                .orElseThrow(() -> new AssertionError("no '" + words + "' among " + selector + ": "
                        + phone.all(selector).stream().map(one -> one.getText()).toList()));
    }

    private static void touch(String selector, String words) {
        phone.touch(named(selector, words));
    }

    /** By a finger alone. */
    @Test
    void holesInCabbageLeadToACountADecisionAndTheFirstTier() {
        phone.go(one, "#look");
        assertEquals(phone.run("return [...document.querySelectorAll('#crops .frame')].map(one => one.className)"),
                phone.run("return [...document.querySelectorAll('.key .frame')].map(one => one.className)"));
        touch(".key button", "Cabbage");
        touch(".key button", "Leaf");
        touch(".key button", "holes");
        assertTrue(phone.text(".key").contains("A friend, leave it:"), phone.text(".key"));
        assertTrue(phone.text(".key").contains("Not this:"), phone.text(".key"));
        touch(".key a.tile", "Imported cabbageworm");
        assertTrue(phone.driver().getCurrentUrl().endsWith("#imported-cabbageworm"));
        String page = "#imported-cabbageworm ";
        phone.touch(phone.seen(page + ".begin"));
        int act = Integer.parseInt(phone.text(page + ".card[data-count] .act b"));
        assertTrue(phone.text(page + ".advice").startsWith("Keep counting"), phone.text(page + ".advice"));
        for (int i = 0; i < act; i++) {
            if (!phone.find(page + ".plus").isEnabled()) {
                touch(page + ".more button", "Next");
            }
            phone.touch(phone.find(page + ".plus"));
        }
        assertTrue(phone.text(page + ".advice").startsWith("Act now"), phone.text(page + ".advice"));
        assertEquals(String.valueOf(act), phone.text(page + ".total b"));
        touch(page + ".more button", "Undo");
        assertEquals(String.valueOf(act - 1), phone.text(page + ".total b"));
        assertTrue(phone.text(page + ".advice").startsWith("Keep counting"));
        phone.touch(phone.find(page + ".plus"));
        List<String> ways = phone.all(page + ".after .way").stream().map(way -> way.getText()).toList();
        assertTrue(ways.get(0).startsWith("1 Cultural"), ways.toString());
        assertTrue(ways.get(ways.size() - 1).endsWith("Read its caution first."), ways.toString());
        touch(page + ".after .way", "1 Cultural");
        assertTrue(phone.find(page + ".tier1").isDisplayed());
        assertFalse(phone.find(page + ".tier3 .measures").isDisplayed());
    }

    @Test
    void aCountBelowTheNumberIsLookedAtAgainAndOutlivesAReload() {
        phone.go(one, "#colorado-potato-beetle");
        String page = "#colorado-potato-beetle ";
        phone.tap(phone.seen(page + ".begin"));
        phone.tap(phone.find(page + ".counter .plus"));
        phone.driver().navigate().refresh();
        assertEquals("Go on counting", phone.seen(page + ".begin").getText());
        phone.tap(phone.seen(page + ".begin"));
        assertEquals("1", phone.text(page + ".counter .total b"));
        while (phone.text(page + ".advice").startsWith("Keep counting")) {
            phone.tap(phone.all(page + ".counter .more button").get(1));
        }
        assertTrue(phone.text(page + ".advice").startsWith("Look again on "), phone.text(page + ".advice"));
        tap(page + ".counter .more button", "Start again");
        assertEquals("0", phone.text(page + ".counter .total b"));
    }

    @Test
    void notesOutliveAReloadAndAreGoneWhenErased() {
        phone.go(one, "#notes");
        phone.find("#note-name").sendKeys("Slugs");
        phone.find("#note-text").sendKeys("12 under 6 boards <b>");
        phone.find("#note-place").sendKeys("north bed");
        tap(".p-notes form button", "Keep this note");
        phone.driver().navigate().refresh();
        assertTrue(phone.text(".notes").contains("Slugs · 12 under 6 boards <b> · north bed"), phone.text(".notes"));
        assertEquals(List.of("fieldfold.2027.en."), ((List<?>) phone.run("return Object.keys(localStorage)")).stream()
                .map(key -> String.valueOf(key).replaceAll("[^.]*$", "")).map(key -> key.replaceAll(
                        "^(fieldfold\\.2027\\.en\\.).*", "$1")).distinct().toList());
        tap(".notes button", "Erase");
        assertEquals("", phone.text(".notes"));
        phone.driver().navigate().refresh();
        assertEquals(0, phone.all(".notes li").size());
    }

    @Test
    void theRequestGoesToTheOfficeThatWasChosenByTheReadersOwnHand() {
        phone.go(one, "#notes");
        new org.openqa.selenium.support.ui.Select(phone.find("#my-office")).selectByIndex(0);
        phone.find("#ask-crop").sendKeys("cabbage");
        String write = phone.find(".p-request .way[href^=mailto]").getAttribute("href");
        String office = Shipped.BASE.offices().values().iterator().next().value().contact().email();
        assertTrue(write.startsWith("mailto:" + office) && write.contains("cabbage"), write);
        assertTrue(phone.find(".p-request .way[href^=sms]").getAttribute("href").contains("cabbage"));
        phone.driver().navigate().refresh();
        assertTrue(phone.find(".p-request .way[href^=mailto]").getAttribute("href").contains(office));
    }

    @Test
    void pastItsDayEveryPageSaysSoAndHidesNothing() {
        phone.goLater(one, "#leek-moth");
        assertEquals(phone.all(".page").size(), phone.all(".page > .expired").size());
        String said = phone.text("#leek-moth .expired");
        assertTrue(said.contains("held until January 31, 2028") && said.contains("555-"), said);
        assertTrue(phone.find("#leek-moth .title").isDisplayed());
        assertTrue(phone.all("#leek-moth .tier").size() > 0);
        phone.go(one, "#leek-moth");
        assertEquals(0, phone.all(".expired").size());
    }

    @Test
    void goesOnWhereItWasAndKeepsPages() {
        phone.go(one, "#leek-moth");
        tap("#leek-moth > .more button", "Keep this page");
        phone.go(one, "");
        assertTrue(phone.text(".resume").startsWith("Go on: Leek moth") || phone.text(".resume")
                .toLowerCase(Locale.ROOT).contains("leek moth"), phone.text(".resume"));
        assertTrue(phone.find(".p-contents a[aria-current=page]").getText().toLowerCase(Locale.ROOT)
                .contains("leek moth"));
        phone.tap(phone.find(".kept .way"));
        assertTrue(phone.driver().getCurrentUrl().endsWith("#leek-moth"));
    }

    @Test
    void withoutScriptTheSameWayIsReadByLinksAlone() {
        phone.tell("Emulation.setScriptExecutionDisabled", Map.of("value", true));
        try {
            phone.go(one, "");
            tap(".doors a, .tiles a", "What do you see?");
            tap("#look .tile", "Leaf");
            tap("#part-leaf .tile", "Imported cabbageworm");
            String page = "#imported-cabbageworm ";
            assertTrue(phone.find(page + ".title").isDisplayed());
            tap(page + ".jump a", "Count");
            assertTrue(phone.find(page + ".card .act b").isDisplayed());
            tap(page + ".jump a", "What to do");
            assertTrue(phone.find(page + ".tier1 .measures").isDisplayed());
            assertFalse(phone.find(page + ".tier3 .measures").isDisplayed(), "in front of its caution");
            assertTrue(phone.find(page + ".tier3 .caution").isDisplayed());
            phone.tap(phone.find(page + ".tier3 .gate input"));
            assertTrue(phone.find(page + ".tier3 .measures").isDisplayed());
            assertTrue(phone.text("#imported-cabbageworm .head").contains("until January 31, 2028"));
            assertEquals(0, phone.all("button, .finder, form, .begin").size());
            phone.go(one, "#reckoners");
            assertTrue(phone.find("#reckoners .p-recount table").isDisplayed());
        } finally {
            phone.tell("Emulation.setScriptExecutionDisabled", Map.of("value", false));
        }
    }

    /** Presses the tab key until the focus stands on what carries these words, and may be seen to do so. */
    private static void tabTo(String selector, String words) {
        for (int i = 0; i < 150; i++) {
            phone.press(Keys.TAB);
            if (Boolean.TRUE.equals(phone.run("""
                    const one = document.activeElement;
                    return one.matches(arguments[0]) && one.textContent.toLowerCase().includes(arguments[1])
                        && getComputedStyle(one).outlineStyle === 'solid'
                        && parseFloat(getComputedStyle(one).outlineWidth) >= 3;
                    """, selector, words.toLowerCase(Locale.ROOT)))) {
                return;
            }
        }
        throw new AssertionError("the tab key never reached '" + words + "' among " + selector);
    }

    @Test
    void keysAloneLeadFromHolesInCabbageToTheFirstTier() {
        phone.go(one, "");
        tabTo(".doors a", "What do you see?");
        phone.press(Keys.ENTER);
        tabTo(".key button", "Cabbage");
        phone.press(Keys.ENTER);
        tabTo(".key button", "Leaf");
        phone.press(Keys.SPACE);
        tabTo(".key button", "holes");
        phone.press(Keys.ENTER);
        tabTo(".key a.tile", "Imported cabbageworm");
        phone.press(Keys.ENTER);
        String page = "#imported-cabbageworm ";
        tabTo(page + ".begin", "");
        phone.press(Keys.ENTER);
        // the focus waits on the large key
        int act = Integer.parseInt(phone.text(page + ".card[data-count] .act b"));
        for (int i = 0; i < act; i++) {
            if (!phone.find(page + ".plus").isEnabled()) {
                tabTo(page + ".more button", "Next");
                phone.press(Keys.ENTER);
                phone.type(Keys.chord(Keys.SHIFT, Keys.TAB), Keys.chord(Keys.SHIFT, Keys.TAB));
                assertEquals("plus", phone.run("return document.activeElement.className"));
            }
            phone.press(Keys.SPACE);
        }
        assertTrue(phone.text(page + ".advice").startsWith("Act now"), phone.text(page + ".advice"));
        tabTo(page + ".after .way", "1 Cultural");
        phone.press(Keys.ENTER);
        assertTrue(phone.find(page + ".tier1").isDisplayed());
        assertEquals(true, phone.run("return document.querySelector(arguments[0]).getBoundingClientRect().top < 200",
                page + ".tier1"));
        assertFalse(phone.find(page + ".tier3 .measures").isDisplayed());
        phone.run("localStorage.clear()");
    }

    @Test
    void theFieldIsFoldedAwayUntilItIsAskedForAndLeadsBack() {
        phone.go(one, "#leek-moth");
        assertFalse(phone.find("#find").isDisplayed());
        assertTrue(phone.find("#leek-moth .head").getSize().height <= 48, phone.find("#leek-moth .head").getSize()
                .toString());
        phone.tap(phone.find(".bar .to-find"));
        assertTrue(phone.find("#find").isDisplayed());
        phone.type("swede");
        assertTrue(phone.text("#found-0").startsWith("Swede midge"), phone.text("#found-0"));
        phone.press(Keys.ESCAPE);
        phone.press(Keys.ESCAPE);
        assertFalse(phone.find("#find").isDisplayed());
        assertEquals("to-find", phone.run("return document.activeElement.className"));
    }

    @Test
    void everyTargetOfTheScriptIsLargeEnoughForAThumb() {
        phone.go(one, "#colorado-potato-beetle");
        phone.tap(phone.seen("#colorado-potato-beetle .begin"));
        assertEquals(List.of(), phone.run("""
                const shown = [...document.querySelectorAll('button, input:not([type=checkbox]), select, .way, .tile, '
                    + '.bar a, .head a')].filter(one => one.checkVisibility());
                return shown.length < 12 ? ['only ' + shown.length]
                    : shown.map(one => [one.outerHTML.slice(0, 90), one.getBoundingClientRect()])
                    .filter(one => one[1].width < 44 || one[1].height < 44)
                    .map(one => one[0] + ' is ' + one[1].width + ' by ' + one[1].height);
                """));
        phone.run("localStorage.clear()");
    }
}
