package org.fieldfold.handbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;

/** The shipped handbook in a browser, as on a telephone without signal. */
class PhoneTest {
    @TempDir
    static Path folder;
    private static Path one;
    private static Phone phone;

    @BeforeAll
    static void open() throws IOException {
        phone = Phone.open();
        for (HandbookFile file : Shipped.FILES) {
            Path path = folder.resolve(file.path());
            Files.createDirectories(path.getParent());
            Files.write(path, file.bytes());
        }
        one = folder.resolve("handbook.en.html");
    }

    @AfterAll
    static void close() throws IOException {
        if (phone != null) {
            phone.close();
        }
    }

    @AfterEach
    void nothingWasAskedForAndNothingBroke() {
        assertEquals(List.of(), phone.requests());
        assertEquals(List.of(), phone.complaints());
    }

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
        assertTrue(phone.text("#found-0").toLowerCase(java.util.Locale.ROOT).contains("cabbageworm"));
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
}
