package ringout.present.html;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import ringout.cli.Main;

/** The page as its user meets it, in a browser that reaches no network. */
class PageInBrowserTest {
    private static final String BUS_WIRE = "g.wire[data-wire='W65.H'] polyline";

    @TempDir
    private static Path folder;

    private static Path page;

    @BeforeAll
    static void draw() {
        Assumptions.assumeTrue(Files.isExecutable(Path.of("/usr/bin/chromium")), "no Chromium on this machine");
        page = drawn(Path.of("samples", "linewarden-review"), folder);
    }

    private static Path drawn(Path aircraft, Path into) {
        StringWriter told = new StringWriter();
        PrintWriter out = new PrintWriter(told);
        Main.run(out, out, "draw", aircraft.toString(), "-o", into.toString(), "--format", "html");
        assertTrue(Files.exists(into.resolve("page.html")), told::toString);
        return into.resolve("page.html");
    }

    @ParameterizedTest
    @CsvSource({"1366, 850", "390, 844"})
    void nothingIsFetchedAndNoRuleOfAccessBroken(int width, int height) {
        try (Browser browser = new Browser(width, height).open(page)) {
            assertEquals("", browser.breaches());
            browser.run("choose({kind: 'wire', wire: 70}); openTab('plugs')");
            assertEquals("", browser.breaches());
            for (String light : List.of("dark", "sun", "day")) {
                browser.run("document.documentElement.dataset.light = arguments[0]", light);
                assertEquals("", browser.breaches(), light);
            }
            assertTrue((Long) browser.run("return document.documentElement.scrollWidth") <= width);
            assertEquals(0L, browser.run("return performance.getEntriesByType('resource').length"));
            assertEquals(List.of(), browser.errors());
        }
    }

    @Test
    void aTappedWireLightsItsNetFromEndToEnd() {
        try (Browser browser = new Browser(1366, 850).open(page)) {
            sheet(browser, "bus diagram bus CAN2");
            browser.tap(BUS_WIRE);
            String told = browser.text("#detail");
            assertTrue(told.contains("FC-C2-2, W65, GN1-C1-2 = GN1-C2-2, W66, IMU-C1-2"), told);
            assertTrue(told.contains("59.6 ohm (58.7 to 60.4 ohm) at FC-C2"), told);
            assertEquals(4, browser.all("g.wire.lit").size());
            assertTrue(browser.all("g.wire.lit").stream()
                    .allMatch(wire ->
                            String.valueOf(wire.getDomAttribute("data-wire")).endsWith(".H")));
            assertEquals(List.of(), browser.errors());
        }
    }

    @Test
    void aPulledPlugTellsWhatDiesAndWhichReadingsChange() {
        try (Browser browser = new Browser(1366, 850).open(page)) {
            browser.click("#tab-plugs");
            browser.one("#search").sendKeys("LOG-C1");
            browser.click("#list button[data-key^='plug=']");
            String told = browser.text("#detail");
            assertTrue(told.contains("Plug LOG-C1"), told);
            assertTrue(told.contains("LOG, GMC"), told);
            assertTrue(told.contains("FC-C2 59.6 ohm (58.7 to 60.4 ohm) 11"), told);
            assertEquals(1, browser.all("g.plug.here").size());
        }
    }

    @Test
    void aSupplyPlugPulledLeavesItsUnitsDark() {
        try (Browser browser = new Browser(1366, 850).open(page)) {
            browser.run("choose({kind: 'plug', plug: byPlug.get('RG12-O3')})");
            String told = browser.text("#detail");
            assertTrue(told.contains("Pulled, no supply"), told);
            browser.run("choose({kind: 'plug', plug: byPlug.get('PDB-O2')})");
            told = browser.text("#detail").replace("\n", " ");
            assertTrue(told.contains("Motors that stop MOT2"), told);
        }
    }

    @Test
    void aFindingLeadsToItsPlaceAndBack() {
        try (Browser browser = new Browser(1366, 850).open(page)) {
            browser.click("#list li:nth-child(5) button");
            assertTrue(browser.text("#detail").contains("T07"), browser.text("#detail"));
            assertTrue(browser.text("#detail").contains("leads.csv row 38, W68"), browser.text("#detail"));
            assertFalse(browser.all("g.badge.here[data-target]").isEmpty());
            browser.run(
                    "[...document.querySelectorAll('#detail .go button')].find(b => b.textContent === 'Wire W68').click()");
            assertTrue(browser.text("#detail h2").startsWith("W68: LOG-C2"), browser.text("#detail h2"));
            browser.back();
            assertTrue(browser.text("#detail").contains("T07"), browser.text("#detail"));
            browser.tap("g.badge[data-number='5'][data-target] *");
            assertTrue(browser.text("#detail").contains("T07"), browser.text("#detail"));
        }
    }

    @Test
    void searchFindsLeadsPlugsAndVolts() {
        try (Browser browser = new Browser(1366, 850).open(page)) {
            WebElement search = browser.one("#search");
            search.sendKeys("W68");
            assertTrue(browser.text("#list").contains("LOG-C2-2 to GMC-C1-2"), browser.text("#list"));
            search.clear();
            search.sendKeys("FC-C2");
            assertTrue(browser.text("#list").contains("Plugs (1)"), browser.text("#list"));
            search.clear();
            search.sendKeys("12 V");
            assertTrue(browser.text("#list").contains("RG12-O1-1"), browser.text("#list"));
            search.clear();
            search.sendKeys("no such thing");
            assertTrue(browser.text("#list").contains("nothing of that name"), browser.text("#list"));
        }
    }

    @Test
    void severitiesAreHiddenAndShown() {
        try (Browser browser = new Browser(1366, 850).open(page)) {
            int all = browser.all("#list .tag").size();
            browser.click("#severities input[value=S1]");
            assertEquals(all - 2, browser.all("#list .tag").size());
            assertTrue(browser.all("#list .tag.S1").isEmpty());
            browser.click("#severities input[value=S1]");
            assertEquals(all, browser.all("#list .tag").size());
        }
    }

    @Test
    void anotherStateTellsWhatIsTakenOff() {
        try (Browser browser = new Browser(1366, 850).open(page)) {
            browser.run("const s = byId('state'); s.value = '1'; s.dispatchEvent(new Event('change'))");
            assertTrue(browser.text("#drawn").contains("payload off"), browser.text("#drawn"));
            browser.run("choose({kind: 'plug', plug: byPlug.get('GMC-C1')})");
            assertTrue(browser.text("#detail").contains("not mated in state payload off"), browser.text("#detail"));
        }
    }

    @Test
    void theKeyboardDoesItAll() {
        try (Browser browser = new Browser(1366, 850).open(page)) {
            browser.run("document.body.focus()");
            browser.one("body").sendKeys("/");
            assertEquals("search", browser.run("return document.activeElement.id"));
            browser.one("#tab-findings").sendKeys(Keys.ARROW_RIGHT);
            assertEquals("true", browser.one("#tab-leads").getDomAttribute("aria-selected"));
            browser.one("#list button").sendKeys(Keys.ENTER);
            assertTrue(browser.one("#detail").isDisplayed());
            browser.one("#stage").sendKeys(Keys.ESCAPE);
            assertFalse(browser.one("#detail").isDisplayed());
            browser.one("#stage").sendKeys("0");
            String whole = browser.one("#stage svg").getDomAttribute("viewBox");
            browser.one("#stage").sendKeys("+");
            assertFalse(String.valueOf(whole).equals(browser.one("#stage svg").getDomAttribute("viewBox")));
            browser.one("#stage").sendKeys(Keys.ARROW_LEFT, "0");
            assertEquals(whole, browser.one("#stage svg").getDomAttribute("viewBox"));
        }
    }

    @Test
    void onAPhoneOnePaneShowsAtATime() {
        try (Browser browser = new Browser(390, 844).open(page)) {
            assertTrue(browser.one("#lists").isDisplayed());
            assertFalse(browser.one("#drawing").isDisplayed());
            browser.click("nav.panes button[data-pane=drawing]");
            assertTrue(browser.one("#stage svg").isDisplayed());
            sheet(browser, "bus diagram bus CAN2");
            browser.tap(BUS_WIRE);
            for (WebElement button : browser.all("button, select, input[type=search]")) {
                assertTrue(
                        !button.isDisplayed() || button.getSize().getHeight() >= 44,
                        button.getDomProperty("outerHTML"));
            }
        }
    }

    @Test
    void namesAreTextWhateverTheyHold(@TempDir Path hostile) throws IOException {
        String evil =
                "</script><script>window.hit = 1</script><img src=x onerror='window.hit = 2'>\\\" ' & \u202e gnol @DATA@ "
                        + "x".repeat(10_000);
        String aircraft = Files.readString(Path.of("src/test/resources/checks/T07/fires.json"))
                .replace(
                        "../library.json",
                        Path.of("src/test/resources/checks/library.json")
                                .toAbsolutePath()
                                .toString())
                .replaceFirst("\\{", "{\"name\": \"" + java.util.regex.Matcher.quoteReplacement(evil) + "\",")
                .replace("\"lengthMm\": 450", "\"lengthMm\": 450, \"note\": \"" + evil + "\"")
                .replace("GMC", "G<b>MC&'");
        Files.writeString(hostile.resolve("aircraft.json"), aircraft);
        try (Browser browser = new Browser(390, 844).open(drawn(hostile, hostile.resolve("out")))) {
            assertEquals(null, browser.run("return window.hit || null"));
            assertTrue(browser.text("h1").contains("</script><script>window.hit = 1</script>"), "the name is shown");
            browser.run("choose({kind: 'wire', wire: data.wires.length - 1})");
            assertTrue(browser.text("#detail").contains("onerror='window.hit = 2'"), "the remark is shown");
            assertTrue(browser.text("#detail").contains("G<b>MC&'"), "the unit is shown");
            assertEquals(null, browser.run("return window.hit || null"));
            assertTrue((Long) browser.run("return document.documentElement.scrollWidth") <= 390);
            assertEquals(List.of(), browser.errors());
        }
    }

    private static void sheet(Browser browser, String title) {
        browser.run("showSheet(sheets.findIndex(s => s.title === arguments[0]))", title);
    }
}
