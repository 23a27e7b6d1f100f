package ringout.present.html;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import ringout.cli.Main;

/** Ticks and readings entered on the page, kept when it is closed, and taken along as a file. */
class RecordInBrowserTest {
    private static final String CHOOSE_W65 = "choose({kind: 'wire', wire: byLead.get('W65')[0]})";

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

    @Test
    void whatIsEnteredIsStillThereWhenThePageIsOpenedAgain() {
        try (Browser browser = new Browser(390, 844).open(page)) {
            browser.run(CHOOSE_W65);
            browser.click("#detail .tick input");
            browser.one("#detail .reading input").sendKeys("0,1" + Keys.ENTER);
            assertTrue(browser.text("#detail output").startsWith("0.1 ohm, inside the band"), browser.text("#detail"));
            browser.open(page);
            browser.run(CHOOSE_W65);
            assertEquals(true, browser.run("return document.querySelector('#detail .tick input').checked"));
            assertTrue(browser.text("#detail output").startsWith("0.1 ohm, inside the band"), browser.text("#detail"));
            browser.run("openTab('record')");
            assertTrue(browser.text("#list").contains("1 of 145 conductors rung out, 1 of 118 ends made"));
            assertTrue(browser.text("#list").contains("Still to ring out (59 leads)"), browser.text("#list"));
            assertEquals("", browser.breaches());
            assertEquals(java.util.List.of(), browser.errors());
        }
    }

    @Test
    void aReadingOutsideItsBandIsToldAtOnce() {
        try (Browser browser = new Browser(1366, 850).open(page)) {
            browser.run("choose({kind: 'plug', plug: byPlug.get('FC-C2')})");
            browser.one("#detail .reading input").sendKeys("118" + Keys.ENTER);
            assertTrue(browser.text("#detail output.bad").contains("OUTSIDE the band"), browser.text("#detail"));
            assertTrue(browser.text("#detail output.bad").contains("59.6 ohm"), browser.text("#detail"));
            browser.one("#detail .reading input").sendKeys("sixty" + Keys.ENTER);
            assertTrue(browser.text("#detail output").startsWith("not a reading"), browser.text("#detail"));
            browser.one("#detail .reading input").clear();
            browser.one("#detail .reading input").sendKeys("ol" + Keys.ENTER);
            assertTrue(browser.text("#detail output.bad").startsWith("over range, OUTSIDE"), browser.text("#detail"));
            browser.one("#detail .reading input").sendKeys("0.0596k" + Keys.ENTER);
            assertTrue(browser.text("#detail output").startsWith("59.6 ohm, inside"), browser.text("#detail"));
        }
    }

    @Test
    void theFileGoesOnRecord() throws java.io.IOException {
        try (Browser browser = new Browser(1366, 850).open(page)) {
            browser.run(
                    "keep.who = 'A. N.'; tick('W65', 'to', true); tick('W66', 'to', true); tick('W66', 'to', false)");
            browser.run("choose({kind: 'plug', plug: byPlug.get('FC-C2')})");
            browser.one("#detail .reading input").sendKeys("59,8" + Keys.ENTER);
            browser.run(CHOOSE_W65);
            browser.one("#detail .reading input").sendKeys("OL" + Keys.ENTER);
            Path file = Files.writeString(folder.resolve("taken.json"), String.valueOf(browser.run("return asFile()")));
            StringWriter told = new StringWriter();
            PrintWriter out = new PrintWriter(told);
            Path into = folder.resolve("recorded.json");
            Main.run(out, out, "record", "samples/linewarden", "--take", file.toString(), "-o", into.toString());
            assertTrue(told.toString().contains("4 taken, 0 on record already, 0 to look at"), told::toString);
            String json = Files.readString(into);
            assertTrue(json.contains("FC-C2-H FC-C2-L") && json.contains("59.8"), json);
        }
    }

    @Test
    void theRecordGoesIntoAFileAndComesBack() {
        try (Browser browser = new Browser(1366, 850).open(page)) {
            browser.run("keep.who = 'A. N.'; tick('W65', 'from', true)");
            String file = String.valueOf(browser.run("return asFile()"));
            assertTrue(file.contains("\"by\": \"A. N.\""), file);
            browser.run("keep.entries = []; store(); openTab('record')");
            String take =
                    "return takeUp(new File([arguments[0]], 'r.json'), words => { byId('said').textContent = words; })"
                            + ".then(() => keep.entries.length)";
            assertEquals(1L, browser.run(take, file));
            assertEquals(1L, browser.run(take, file), "nothing is taken up twice");
            assertEquals(1L, browser.run(take, "{\"entries\": [{\"kind\": 3}]}"), "a wrong file changes nothing");
            assertTrue(browser.text("#list").contains("W65: made at the from end"), browser.text("#list"));
            assertEquals(
                    2L, browser.run(take, file.replace("\"W65\"", "\"W66\"").replace("\"hash\": \"", "\"hash\": \"x")));
            assertTrue(browser.text("#list").contains("W66: made at the from end"), browser.text("#list"));
        }
    }
}
