package org.fieldfold.handbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.fieldfold.Outside;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** A telephone of 390 by 844 points with touch and without a network, as Chromium plays it. */
final class Phone implements AutoCloseable {
    /** Kept, or else what it was told is forgotten with it. */
    private static final Logger SELENIUM = Logger.getLogger("org.openqa.selenium");

    private final Path profile;
    private final ChromeDriver driver;

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
                "--user-data-dir=" + profile);
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.PERFORMANCE, Level.ALL);
        logs.enable(LogType.BROWSER, Level.ALL);
        options.setCapability("goog:loggingPrefs", logs);
        ChromeDriver driver = new ChromeDriver(new ChromeDriverService.Builder()
                .usingDriverExecutable(Path.of("/usr/bin/chromedriver").toFile()).usingAnyFreePort()
                .withSilent(true).build(), options);
        Phone phone = new Phone(profile, driver);
        driver.manage().timeouts().scriptTimeout(Duration.ofSeconds(30));
        phone.size(390, 844);
        phone.tell("Emulation.setTouchEmulationEnabled", Map.of("enabled", true, "maxTouchPoints", 5));
        // the browser's own first page asks for its parts
        driver.get("about:blank");
        phone.requests();
        phone.tell("Network.enable", Map.of());
        phone.tell("Network.emulateNetworkConditions", Map.of("offline", true, "latency", 0,
                "downloadThroughput", -1, "uploadThroughput", -1));
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

    void type(CharSequence... keys) {
        driver.switchTo().activeElement().sendKeys(keys);
    }

    void press(Keys key) {
        type(key);
    }

    String text(String selector) {
        return find(selector).getText();
    }

    /** Addresses that pages asked for since the last question, files apart. */
    List<String> requests() {
        List<String> asked = new ArrayList<>();
        driver.manage().logs().get(LogType.PERFORMANCE).forEach(entry -> {
            String line = entry.getMessage();
            int at = line.indexOf("\"Network.requestWillBeSent\"");
            if (at >= 0) {
                String url = line.replaceFirst("(?s).*\"request\":\\{.*?\"url\":\"([^\"]*)\".*", "$1");
                if (!url.startsWith("file:") && !url.startsWith("data:") && !url.startsWith("about:")) {
                    asked.add(url);
                }
            }
        });
        return asked;
    }

    /** What the browser complained about. */
    List<String> complaints() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .map(entry -> entry.getLevel() + " " + entry.getMessage()).toList();
    }

    @Override
    public void close() throws IOException {
        driver.quit();
        try (var files = Files.walk(profile)) {
            files.sorted(java.util.Comparator.reverseOrder()).forEach(file -> file.toFile().delete());
        }
    }
}
