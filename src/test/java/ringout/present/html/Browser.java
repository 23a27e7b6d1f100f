package ringout.present.html;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Collectors;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.JavascriptExecutor;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** A page open in a browser without a network. */
final class Browser implements AutoCloseable {
    /** It tells of every version of the browser it was not made with. */
    private static final Logger TALK = Logger.getLogger("org.openqa.selenium");

    static {
        TALK.setLevel(Level.SEVERE);
    }

    private final ChromeDriver driver;

    Browser(int width, int height) {
        ChromeOptions options = new ChromeOptions();
        options.setBinary("/usr/bin/chromium");
        options.addArguments("--headless=new", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage");
        // Nothing may be fetched: every name ends nowhere.
        options.addArguments("--host-resolver-rules=MAP * ~NOTFOUND");
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        options.setCapability("goog:loggingPrefs", logs);
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(Path.of("/usr/bin/chromedriver").toFile())
                .usingAnyFreePort()
                .build();
        driver = new ChromeDriver(service, options);
        driver.manage().window().setSize(new Dimension(width, height));
        driver.manage().timeouts().pageLoadTimeout(Duration.ofSeconds(60));
    }

    Browser open(Path page) {
        driver.get(page.toUri().toString());
        return this;
    }

    WebElement one(String selector) {
        return driver.findElement(By.cssSelector(selector));
    }

    List<WebElement> all(String selector) {
        return driver.findElements(By.cssSelector(selector));
    }

    /** Clicks with the mouse of a user: only what can be seen and is not covered. */
    void click(String selector) {
        one(selector).click();
    }

    /** Sends a click to a line of a drawing, whose middle may lie beside its ink. */
    void tap(String selector) {
        run("document.querySelector(arguments[0]).dispatchEvent(new MouseEvent('click', {bubbles: true}))", selector);
    }

    Object run(String script, Object... arguments) {
        return ((JavascriptExecutor) driver).executeScript(script, arguments);
    }

    String text(String selector) {
        return one(selector).getText();
    }

    void back() {
        driver.navigate().back();
    }

    /** What the browser complained of. */
    List<String> errors() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .filter(entry -> entry.getLevel().intValue() >= Level.WARNING.intValue())
                .map(entry -> entry.getMessage())
                .toList();
    }

    /** Breaches of the rules of axe-core, one line each. */
    String breaches() {
        run(axe());
        Object found = ((JavascriptExecutor) driver)
                .executeAsyncScript("const done = arguments[arguments.length - 1];"
                        + "axe.run(document, {resultTypes: ['violations']}).then(r => done(r.violations.map(v => v.id + ': '"
                        + " + v.nodes.map(n => n.html.slice(0, 200)).join(' | '))));");
        return ((List<?>) found).stream().map(Object::toString).collect(Collectors.joining("\n"));
    }

    private static String axe() {
        try (InputStream in = Browser.class.getResourceAsStream("/axe.min.js")) {
            if (in == null) {
                throw new IllegalStateException("axe-core is not on the class path");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        driver.quit();
    }
}
