package org.fieldfold.handbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.deque.html.axecore.selenium.AxeBuilder;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.fieldfold.fold.FlipEdge;
import org.fieldfold.fold.FoldSchemes;
import org.fieldfold.pack.SampleCounter;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * axe-core's rules, which follow WCAG 2.2, over the screens of the handbook: by day, by night, and where no script
 * runs. What a screen hides behind a tick, a closed section or a tap is opened first.
 */
class AxeTest {
    /** Pages of the one file, and what is tapped there before they are judged; a low line stands for a blank. */
    private static final List<List<String>> SCREENS = screens("index", "look",
            "look .key_.tile .key_.tile .key_.tile", "part-leaf", "crops", "crop-cabbage",
            "colorado-potato-beetle .begin .plus", "convergent-lady-beetle",
            "rotation", "low-tunnel", "read-insecticide-last", "count", "reckoners", "notes", "weeks",
            "weeks-lowbridge", "offices", "materials", "sources");
    private static final List<List<String>> SPANISH = screens("index", "look .key_.tile",
            "colorado-potato-beetle .begin .plus", "rotation", "reckoners", "notes", "offices");
    private static final List<List<String>> READ = screens("index", "look", "part-leaf", "colorado-potato-beetle",
            "rotation", "count", "reckoners", "notes", "offices");
    private static final List<String> FOLDER = List.of("index", "colorado-potato-beetle", "rotation", "notes",
            "offices");

    /** Takes the pages aside that are not shown: axe would walk through all of them. */
    private static final String ALONE = """
            window.aside = [...document.querySelectorAll('main > .page')].filter(page => !page.checkVisibility())
                .map(page => [document.createComment(''), page]);
            window.aside.forEach(pair => pair[1].replaceWith(pair[0]));
            document.querySelectorAll('details').forEach(one => one.open = true);
            document.querySelectorAll('.gate input').forEach(one => one.checked = true);
            document.querySelectorAll('.page').forEach(one => one.style.contentVisibility = 'visible');
            return !!window.axe;
            """;
    private static final String BACK =
            "window.aside.forEach(pair => pair[0].replaceWith(pair[1])); localStorage.clear()";
    private static final String JUDGE = """
            const done = arguments[arguments.length - 1];
            axe.run(document, Object.assign({resultTypes: ['violations']}, arguments[0])).then(found => done(
                found.violations.map(rule => rule.id + ' ' + rule.nodes.slice(0, 3).map(node =>
                    node.html.slice(0, 200)).join(' | '))), wrong => done([String(wrong)]));
            """;
    /** The size of targets (WCAG 2.2, 2.5.8) is not asked for by itself. */
    private static final Map<String, Object> ALL = Map.of("rules", Map.of("target-size", Map.of("enabled", true)));
    /** By night other colours are shown, and nothing else. */
    private static final Map<String, Object> COLOURS = Map.of("runOnly",
            List.of("color-contrast", "link-in-text-block"));

    @TempDir
    static Path folder;
    private static Phone phone;
    private static String axe;

    @BeforeAll
    static void open() throws IOException {
        phone = Phone.open();
        Shipped.write(folder, Shipped.FILES);
        Shipped.write(folder, Shipped.SPANISH);
        try (InputStream code = AxeBuilder.class.getResourceAsStream("/axe.min.js")) {
            axe = new String(code.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @AfterAll
    static void close() throws IOException {
        if (phone != null) {
            phone.close();
        }
    }

    private static List<List<String>> screens(String... all) {
        return Stream.of(all).map(one -> Stream.of(one.split(" ")).map(step -> step.replace('_', ' ')).toList())
                .toList();
    }

    private static void scheme(String name) {
        phone.tell("Emulation.setEmulatedMedia", Map.of("features",
                List.of(Map.of("name", "prefers-color-scheme", "value", name))));
    }

    /** What is wrong with the screen as it stands. */
    private static List<String> judged(String where, boolean byNight) {
        if (!Boolean.TRUE.equals(phone.run(ALONE))) {
            phone.run(axe);
        }
        scheme("light");
        List<String> found = new ArrayList<>(said(where, ALL));
        if (byNight) {
            scheme("dark");
            found.addAll(said(where + " by night", COLOURS));
        }
        phone.run(BACK);
        return found;
    }

    private static List<String> said(String where, Map<String, Object> how) {
        return ((List<?>) phone.driver().executeAsyncScript(JUDGE, how)).stream()
                .map(wrong -> where + ": " + wrong).toList();
    }

    private static List<String> judged(Path file, List<List<String>> screens, boolean byNight) {
        List<String> found = new ArrayList<>();
        for (List<String> screen : screens) {
            phone.at(file, "#" + screen.get(0));
            for (String step : screen.subList(1, screen.size())) {
                phone.tap(phone.seen(step));
            }
            assertTrue(phone.find("[id='" + screen.get(0) + "']").isDisplayed(), screen.get(0));
            found.addAll(judged(String.join(" ", screen), byNight));
        }
        return found;
    }

    @Test
    void findsNothingOnTheScreensOfTheOneFileByDayAndByNight() {
        assertEquals(List.of(), judged(folder.resolve("handbook.en.html"), SCREENS, true));
    }

    @Test
    void findsNothingOnTheSpanishScreens() {
        assertEquals(List.of(), judged(folder.resolve("handbook.es.html"), SPANISH, true));
    }

    @Test
    void findsNothingWhereNoScriptRuns() throws IOException {
        Path file = folder.resolve("read.html");
        Files.writeString(file, new String(Shipped.oneFile().bytes(), StandardCharsets.UTF_8)
                .replaceFirst("(?s)<script>.*</script>", ""));
        assertEquals(List.of(), judged(file, READ, true));
        assertEquals(0, phone.all("button, form").size());
    }

    @Test
    void findsNothingOnThePagesOfTheFolder() {
        List<String> found = new ArrayList<>();
        for (String page : FOLDER) {
            phone.go(folder.resolve("handbook/en/" + page + ".html"), "");
            found.addAll(judged("folder " + page, true));
        }
        assertEquals(List.of(), found);
    }

    @Test
    void findsNothingOnThePageAtAnOfficesCounter() throws IOException {
        for (String language : List.of("en", "es")) {
            Path file = folder.resolve("counter." + language + ".html");
            Files.writeString(file, SampleCounter.page(FoldSchemes.all().get(0), FlipEdge.SHORT, language));
            phone.go(file, "");
            assertTrue(phone.find(".handouts").isDisplayed());
            assertEquals(List.of(), judged("counter " + language, false));
        }
    }

    @Test
    void findsNothingWhereTheEditionIsPastItsDay() {
        phone.goLater(folder.resolve("handbook.en.html"), "#leek-moth");
        assertTrue(phone.find("#leek-moth .expired").isDisplayed());
        assertEquals(List.of(), judged("expired", true));
    }

    /** A judge that says yes to all would be none. */
    @Test
    void findsWhatIsWrong() throws IOException {
        Path file = folder.resolve("wrong.html");
        Files.writeString(file, "<!DOCTYPE html><title>x</title><main><p style='color:#aaa'>pale<input></p></main>");
        phone.go(file, "");
        String said = String.join("\n", judged("wrong", false));
        assertTrue(List.of("color-contrast", "html-has-lang", "label").stream().allMatch(said::contains), said);
    }
}
