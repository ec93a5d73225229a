package org.fieldfold.handbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.fieldfold.Outside;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.interactions.PointerInput;
import org.openqa.selenium.interactions.Sequence;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A telephone of 390 by 844 points with touch and out of reach of any network, as Chromium plays it. */
final class Phone implements AutoCloseable {
    /** Kept, or else what it was told is forgotten with it. */
    private static final Logger SELENIUM = Logger.getLogger("org.openqa.selenium");

    /** A request in the browser's log of the network; what the browser asks for itself has no origin. */
    private static final Pattern REQUEST =
            Pattern.compile("\\{\"params\":\\{.*?\"initiator\":\"(?!not an origin\")[^\"]*\".*?\"url\":\"([^\"]*)\".*");

    private static final String NETWORK = "network.json";

    private final Path profile;
    private final ChromeDriver driver;
    private boolean ended;

    private Phone(Path profile, ChromeDriver driver) {
        this.profile = profile;
        this.driver = driver;
    }

    static Phone open() throws IOException {
        // it warns that it does not know the newest browser's own protocol, which is asked here by name
        SELENIUM.setLevel(Level.SEVERE);
        Outside.need("chromium");
        Outside.need("chromedriver");
        Path profile = Files.createTempDirectory("fieldfold-phone");
        ChromeOptions options = new ChromeOptions();
        options.setBinary("/usr/bin/chromium");
        options.addArguments("--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
                "--disable-background-networking", "--disable-component-update", "--disable-sync",
                "--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1",
                "--log-net-log=" + profile.resolve(NETWORK), "--user-data-dir=" + profile);
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        options.setCapability("goog:loggingPrefs", logs);
        ChromeDriver driver = new ChromeDriver(new ChromeDriverService.Builder()
                .usingDriverExecutable(Path.of("/usr/bin/chromedriver").toFile()).usingAnyFreePort()
                .withSilent(true).build(), options);
        Phone phone = new Phone(profile, driver);
        driver.manage().timeouts().scriptTimeout(Duration.ofMinutes(3));
        phone.size(390, 844);
        phone.tell("Emulation.setTouchEmulationEnabled", Map.of("enabled", true, "maxTouchPoints", 5));
        return phone;
    }

    ChromeDriver driver() {
        return driver;
    }

    Map<String, Object> tell(String command, Map<String, Object> with) {
        return driver.executeCdpCommand(command, with);
    }

    void size(int width, int height) {
        tell("Emulation.setDeviceMetricsOverride", Map.of("width", width, "height", height,
                "deviceScaleFactor", 2, "mobile", true));
    }

    /** Opens a page anew, as from the telephone's storage. */
    void go(Path file, String fragment) {
        driver.get("about:blank");
        driver.get(file.toUri() + fragment);
    }

    /** Opens a page as on the first of February 2028, by the telephone's own clock. */
    void goLater(Path file, String fragment) {
        Object script = tell("Page.addScriptToEvaluateOnNewDocument", Map.of("source", """
                (function () {
                    const Real = Date, day = new Real(2028, 1, 1, 12).getTime();
                    window.Date = class extends Real {
                        constructor(...a) { if (a.length) { super(...a); } else { super(day); } }
                        static now() { return day; }
                    };
                })()""")).get("identifier");
        try {
            go(file, fragment);
        } finally {
            tell("Page.removeScriptToEvaluateOnNewDocument", Map.of("identifier", script));
        }
    }

    /** Goes to a place in a file, which is opened only where it is not open already. */
    void at(Path file, String fragment) {
        if (String.valueOf(driver.getCurrentUrl()).startsWith(file.toUri().toString())) {
            run("location.hash=arguments[0]", fragment);
        } else {
            go(file, fragment);
        }
    }

    Object run(String script, Object... with) {
        return driver.executeScript(script, with);
    }

    WebElement find(String selector) {
        return driver.findElement(By.cssSelector(selector));
    }

    List<WebElement> all(String selector) {
        return driver.findElements(By.cssSelector(selector));
    }

    /** The first element that can be seen. */
    WebElement seen(String selector) {
        return all(selector).stream().filter(WebElement::isDisplayed).findFirst()
                .orElseThrow(() -> new AssertionError("nothing to be seen of " + selector));
    }

    /** Taps it where it stands in the middle of the screen, clear of the bar. */
    void tap(WebElement target) {
        driver.executeScript("arguments[0].scrollIntoView({block:'center'})", target);
        target.click();
    }

    /** Puts a finger on it and lifts it, and waits until the page has taken that for a tap. */
    void touch(WebElement target) {
        driver.executeScript("arguments[0].scrollIntoView({block:'center'});window.tapped=false;"
                + "addEventListener('click',()=>{window.tapped=true},{capture:true,once:true})", target);
        PointerInput finger = new PointerInput(PointerInput.Kind.TOUCH, "finger");
        driver.perform(List.of(new Sequence(finger, 0)
                .addAction(finger.createPointerMove(Duration.ZERO, PointerInput.Origin.fromElement(target), 0, 0))
                .addAction(finger.createPointerDown(PointerInput.MouseButton.LEFT.asArg()))
                .addAction(finger.createPointerUp(PointerInput.MouseButton.LEFT.asArg()))));
        new WebDriverWait(driver, Duration.ofMinutes(1), Duration.ofMillis(20))
                .until(page -> !Boolean.FALSE.equals(driver.executeScript("return window.tapped")));
    }

    void type(CharSequence... keys) {
        driver.switchTo().activeElement().sendKeys(keys);
    }

    void press(Keys key) {
        type(key);
    }

    String text(String selector) {
        return find(selector).getText();
    }

    /**
     * Ends the browser, and gives the addresses that its pages asked the network for, as the browser's own log has
     * them: files and what stands in a page itself never come to the network.
     */
    List<String> end() throws IOException {
        driver.quit();
        ended = true;
        try (var lines = Files.lines(profile.resolve(NETWORK))) {
            return lines.map(REQUEST::matcher).filter(Matcher::matches).map(found -> found.group(1)).toList();
        }
    }

    /** What the browser complained about. */
    List<String> complaints() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .map(entry -> entry.getLevel() + " " + entry.getMessage()).toList();
    }

    @Override
    public void close() throws IOException {
        if (!ended) {
            driver.quit();
        }
        try (var files = Files.walk(profile)) {
            files.sorted(java.util.Comparator.reverseOrder()).forEach(file -> file.toFile().delete());
        }
    }
}
