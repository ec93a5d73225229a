package org.fieldfold;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What is shown of an entry from save to save, a broken save in between. */
class PreviewDeskTest {
    private static final String ENTRY = "leek-moth";
    private static final String FILE = "pests/leek-moth.yaml";

    @TempDir
    private Path folder;
    private Path content;
    private PreviewDesk desk;

    @BeforeEach
    void lay() throws IOException {
        content = folder.resolve("content");
        SmallBase.lay(content);
        desk = new PreviewDesk(content, Optional.empty(), step -> { });
        assertEquals(1, desk.renew());
    }

    private void edit(String file, String was, String is) throws IOException {
        String text = Files.readString(content.resolve(file));
        assertTrue(text.contains(was), "expected '" + was + "' in " + file);
        Files.writeString(content.resolve(file), text.replace(was, is));
        desk.renew();
    }

    /** Without the number of the version. */
    private JsonNode view(String entry) {
        return JsonMapper.builder().build().readTree(desk.find("/entry/" + entry + ".json").orElseThrow().bytes());
    }

    private String page(JsonNode view) {
        return new String(desk.find(view.get("book").asString()).orElseThrow().bytes(), StandardCharsets.UTF_8);
    }

    private static String notes(JsonNode view) {
        return view.get("notes").valueStream().map(JsonNode::asString).toList().toString();
    }

    @Test
    void aSaveIsShownOnPanelAndPage() throws IOException {
        JsonNode before = view(ENTRY);
        assertEquals("[]", notes(before));
        assertFalse(before.get("panels").get(0).get("drawings").isEmpty());
        edit(FILE, "Small brown moth", "Tiny dun moth");
        JsonNode after = view(ENTRY);
        assertEquals(2, after.get("version").asInt());
        assertNotEquals(before.get("panels"), after.get("panels"));
        assertTrue(after.get("panels").toString().contains("Tiny"), "the panel");
        edit(FILE, "A small, speckled brown moth", "A small, freckled brown moth");
        JsonNode longer = view(ENTRY);
        assertEquals(after.get("panels"), longer.get("panels"));
        assertNotEquals(after.get("bookHash"), longer.get("bookHash"));
        assertTrue(page(longer).contains("freckled"), "the page");
    }

    @Test
    void whatChangesNothingIsNoNewVersion() throws IOException {
        assertEquals(1, desk.renew());
        Path file = content.resolve(FILE);
        Files.writeString(content.resolve("pests/.leek-moth.yaml.swp"), "swap");
        Files.writeString(file, Files.readString(file));
        assertEquals(1, desk.renew());
        Files.writeString(file, Files.readString(file) + "# a line\n");
        assertEquals(2, desk.renew());
        assertEquals(2, desk.renew());
    }

    @Test
    void aBrokenSaveKeepsTheLastGoodPageAndSaysSo() throws IOException {
        JsonNode good = view(ENTRY);
        String page = page(good);
        edit(FILE, "crops: [", "crops: [[");
        JsonNode broken = view(ENTRY);
        assertEquals(good.get("panels"), broken.get("panels"));
        assertEquals(page, page(broken));
        assertTrue(notes(broken).contains("cannot be read"), notes(broken));
        assertFalse(broken.get("findings").isEmpty());
        edit(FILE, "crops: [[", "crops: [");
        JsonNode mended = view(ENTRY);
        assertEquals(good.get("panels"), mended.get("panels"));
        assertEquals(good.get("bookHash"), mended.get("bookHash"));
        assertEquals("[]", notes(mended));
        assertEquals(good.get("findings"), mended.get("findings"));
    }

    @Test
    void othersGoOnWhileOneFileIsBroken() throws IOException {
        edit(FILE, "crops: [", "crops: [[");
        JsonNode before = view("onion-maggot");
        assertEquals("[]", notes(before));
        edit("pests/onion-maggot.yaml", "common: onion maggot", "common: onion fly");
        assertTrue(page(view("onion-maggot")).contains("nion fly"), "the page");
    }

    @Test
    void anEditionThatCannotBeUsedLeavesEverythingAsItWas() throws IOException {
        JsonNode good = view(ENTRY);
        for (String was : List.of("year: 2027", "languages: [en, es]")) {
            edit("edition.yaml", was, was.replaceFirst(": .*", ": []"));
            JsonNode stale = view(ENTRY);
            assertTrue(notes(stale).contains("edition.yaml"), notes(stale));
            assertEquals(good.get("panels"), stale.get("panels"));
            assertEquals(good.get("bookHash"), stale.get("bookHash"));
            edit("edition.yaml", was.replaceFirst(": .*", ": []"), was);
            assertEquals("[]", notes(view(ENTRY)));
        }
    }

    /** The part of the demo base that is laid names much that it does not hold, so findings stand from the first. */
    @Test
    void findingsComeAndGoWithWhatTheyLeanOn() throws IOException {
        JsonNode before = view(ENTRY).get("findings");
        edit("active-ingredients.yaml", "  - id: spinosad\n", "  - id: spinosad-gone\n");
        JsonNode after = view(ENTRY).get("findings");
        assertTrue(messages(after).stream().anyMatch(said -> said.contains("'spinosad'")), messages(after).toString());
        assertFalse(messages(before).stream().anyMatch(said -> said.contains("'spinosad'")));
        edit("active-ingredients.yaml", "  - id: spinosad-gone\n", "  - id: spinosad\n");
        assertEquals(before, view(ENTRY).get("findings"));
    }

    private static List<String> messages(JsonNode findings) {
        return findings.valueStream().map(finding -> finding.get("message").asString()).toList();
    }

    @Test
    void anEntryThatIsDeletedIsNoLongerShown() throws IOException {
        assertTrue(desk.find("/entry/" + ENTRY + ".json").isPresent());
        Files.delete(content.resolve(FILE));
        desk.renew();
        assertTrue(desk.find("/entry/" + ENTRY + ".json").isEmpty());
        assertTrue(view("").get("listed").valueStream().noneMatch(one -> one.get("id").asString().equals(ENTRY)));
    }

    @Test
    void onlyWhatItKnowsIsFound() {
        assertTrue(desk.find("/rules/no-caution").isPresent());
        for (String path : List.of("/rules/../no-caution", "/entry/nobody.json", "/book/nobody.html", "/figures/none",
                "/" + FILE)) {
            assertTrue(desk.find(path).isEmpty(), path);
        }
    }
}
