package ringout.present.html;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import ringout.cli.Main;

/** A unit is silent: the search for the fault on the page, without a network and without the program. */
class FaultInBrowserTest {
    private static final int PHONE = 390;

    @TempDir
    private static Path folder;

    private static Path page;

    @BeforeAll
    static void draw() {
        Assumptions.assumeTrue(Files.isExecutable(Path.of("/usr/bin/chromium")), "no Chromium on this machine");
        StringWriter told = new StringWriter();
        PrintWriter out = new PrintWriter(told);
        Main.run(out, out, "draw", "samples/linewarden", "-o", folder.toString(), "--format", "html", "--sheet", "bus");
        page = folder.resolve("page.html");
        assertTrue(Files.exists(page), told::toString);
    }

    /** Gives the answers that lead to a test the meter is read for in ohm, found in the tree of the gimbal. */
    private static void untilOhms(Browser browser) {
        List<?> way = (List<?>) browser.run("""
                const find = (node, way) => {
                  if (!node || node.kind !== 'test') return null;
                  const test = search.tests[node.test];
                  if (test.unit === 'ohm') return way;
                  for (const one of node.out) {
                    const on = find(one.then, [...way, words(test.outcomes[one.outcome])]);
                    if (on) return on;
                  }
                  return null;
                };
                return find(search.units.find(one => one.unit === 'GMC').tree, []);
                """);
        for (Object outcome : way) {
            browser.run(
                    "[...document.querySelectorAll('#list .answer')].find(b => b.textContent.startsWith(arguments[0])).click()",
                    outcome);
        }
    }

    @Test
    void aSilentGimbalIsFollowedByThumbAndKept() {
        try (Browser browser = new Browser(PHONE, 844).open(page)) {
            browser.click("#tab-fault");
            assertTrue(!browser.text("#list").contains("null"), browser.text("#list"));
            browser.run(
                    "[...document.querySelectorAll('#list .units button')].find(b => b.textContent === 'GMC').click()");
            assertTrue(browser.text("#step").startsWith("GMC is silent"), browser.text("#list"));
            assertTrue(browser.text("#list .step h3").startsWith("Test next: "), browser.text("#list"));
            assertTrue(browser.text("#list .step").contains("min, "), browser.text("#list"));
            assertTrue(browser.text("#list").contains("something not in the model"), browser.text("#list"));
            assertTrue(browser.one("#list .step ul.care").isDisplayed(), "cautions come before the test");
            smallTargets(browser);
            assertEquals("", browser.breaches());
            untilOhms(browser);
            String asked = browser.text("#list .step h3");
            browser.one("#typed").sendKeys("120" + Keys.ENTER);
            assertTrue(browser.text("#list ol.read").contains("about 120 (120)"), browser.text("#list"));
            String then = browser.text("#list .step h3");
            assertTrue(!then.equals(asked), then);
            smallTargets(browser);
            browser.open(page);
            browser.click("#tab-fault");
            assertEquals(then, browser.text("#list .step h3"), "kept when the page is opened again");
            browser.run("[...document.querySelectorAll('#list .go button')][0].click()");
            assertEquals(asked, browser.text("#list .step h3"), "back one answer");
            assertTrue(String.valueOf(browser.run("return asFile()")).contains("= about 120 (120)"), "in the record");
            assertTrue((Long) browser.run("return document.documentElement.scrollWidth") <= PHONE);
            assertEquals(List.of(), browser.errors());
        }
    }

    private static void smallTargets(Browser browser) {
        for (WebElement target : browser.all("button, select, summary, input[type=search], input[type=text]")) {
            assertTrue(!target.isDisplayed() || target.getSize().getHeight() >= 44, target.getDomProperty("outerHTML"));
        }
    }

    @Test
    void readingsAreTakenByTheBandsOfTheProgram() {
        try (Browser browser = new Browser(1366, 850).open(page)) {
            String outcome = "const t = search.tests.find(one => one.id.startsWith(arguments[0]));"
                    + "const r = measured(arguments[1], t.unit); const o = r ? outcomeOf(t, r) : -1;"
                    + "return o < 0 ? 'none' : words(t.outcomes[o])";
            assertEquals("about 120", browser.run(outcome, "ohms H-L", "118,2"));
            assertEquals("some hundred", browser.run(outcome, "ohms H-L", "0,9k"));
            assertEquals("few kilohm", browser.run(outcome, "ohms H-L", "1.2k"));
            assertEquals("short", browser.run(outcome, "ohms H-L", "0.4"));
            assertEquals("open", browser.run(outcome, "ohms H-L", "OL"));
            assertEquals("none", browser.run(outcome, "ohms H-L", "sixty"));
            assertEquals("negative", browser.run(outcome, "sign ", "-1,9"));
            assertEquals("none", browser.run(outcome, "sign ", "OL"));
            assertEquals("too much", browser.run(outcome, "drop ", "230 mV"));
            assertEquals("as it should", browser.run(outcome, "drop ", "0.02"));
        }
    }

    @Test
    void aReadingOutsideItsBandLeadsToTheSearch() {
        try (Browser browser = new Browser(1366, 850).open(page)) {
            browser.run("choose({kind: 'plug', plug: byPlug.get('FC-C2')})");
            assertTrue(browser.all("#detail .reading button").stream()
                    .noneMatch(one -> one.isDisplayed() && one.getText().equals("Find the fault")));
            browser.one("#detail .reading input").sendKeys("118" + Keys.ENTER);
            browser.click("#detail .reading button:last-child");
            assertTrue(browser.text("#list").contains("On what was measured"), browser.text("#list"));
            assertTrue(browser.text("#list .units").contains("GMC"), browser.text("#list"));
            assertEquals(List.of(), browser.errors());
        }
    }

    @Test
    void allWaysEndInAnAdviceInWords() {
        try (Browser browser = new Browser(1366, 850).open(page)) {
            browser.one("#search").sendKeys("GMC");
            browser.run(
                    "[...document.querySelectorAll('#list button')].find(b => b.textContent.startsWith('GMC is silent')).click()");
            browser.click("#list ol.ranked button");
            assertTrue(browser.one("#detail").isDisplayed(), "a fault leads to its place");
            browser.click("#detail .close");
            String kinds = """
                    const ends = {};
                    const go = (node, unit, way) => {
                      ends[node.kind] = ends[node.kind] || [unit, way];
                      (node.out || []).forEach(one => one.then && go(one.then, unit, [...way, words(search.tests[node.test].outcomes[one.outcome])]));
                    };
                    search.units.forEach(one => one.tree && go(one.tree, one.unit, []));
                    return Object.keys(ends).sort().map(kind => {
                      keep.entries = [];
                      startSearch(ends[kind][0]);
                      ends[kind][1].forEach(outcome => note({kind: 'note', item: 'w', text: outcome, $search: {act: 'answer', outcome}}));
                      fillList();
                      return kind + ': ' + byId('list').querySelector('.step h3').textContent + (byId('list').textContent.includes('undefined') ? ' undefined' : '');
                    }).join('; ');
                    """;
            String told = String.valueOf(browser.run(kinds));
            assertTrue(!told.contains("undefined"), told);
            assertTrue(told.contains("do: Stop measuring, repair this"), told);
            assertTrue(told.contains("in: Go in: "), told);
            assertTrue(told.contains("none: The readings fit no fault of the model"), told);
            assertTrue(told.contains("turn: Nothing separates these"), told);
            browser.run(
                    "keep.entries = []; startSearch('GMC'); answer('GMC', search.tests[standing().node.test], "
                            + "search.tests[standing().node.test].outcomes.findIndex((t, i) => !standing().node.out.some(o => o.outcome === i)), '')");
            assertEquals("", browser.breaches());
            assertEquals(List.of(), browser.errors());
        }
    }
}
