package ringout.draw.harness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static ringout.draw.harness.Sheets.sample;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import ringout.draw.SvgPage;
import ringout.draw.style.Drawn;
import ringout.finding.Trial;
import ringout.graph.loss.LossTable;

/** The matrices of losses and of wrong plugs, judged from the finished SVG. */
class MatrixSheetsTest {
    private static List<SvgPage> pages(List<Drawn> sheets) {
        List<SvgPage> pages = new ArrayList<>();
        for (int i = 0; i < sheets.size(); i++) {
            pages.add(Sheets.page(sheets.get(i).numbered(i + 1, sheets.size())));
        }
        return pages;
    }

    private static List<SvgPage> loss(String sample) {
        return pages(SurveySheets.loss(sample(sample).circuit(), sample(sample).report(), "0badcafe"));
    }

    private static List<SvgPage> misplug(String sample) {
        return pages(
                SurveySheets.misplug(sample(sample).circuit(), sample(sample).report(), "0badcafe"));
    }

    /** Rows of the sheets by each of the things they name. */
    private static Map<String, Element> rows(List<SvgPage> pages) {
        Map<String, Element> rows = new HashMap<>();
        for (SvgPage page : pages) {
            for (Element row : page.with("row")) {
                for (String name : row.getAttribute("data-row").split(", ")) {
                    assertEquals(null, rows.put(name, row), name + " stands in two rows");
                }
            }
        }
        return rows;
    }

    private static Set<String> dead(Element row) {
        Set<String> units = new TreeSet<>();
        for (Element cell : SvgPage.below(row, "g")) {
            if (cell.getAttribute("data-result").equals("dead")) {
                String thing = cell.getAttribute("data-thing");
                units.add(thing.substring(thing.lastIndexOf(" / ") + 3));
            }
        }
        return units;
    }

    @ParameterizedTest
    @ValueSource(strings = {"linewarden", "dewmaker", "linewarden-review", "starter"})
    void everythingThatFlightDependsOnIsListedWithWhatDiesOfIt(String sample) {
        Map<String, Element> rows = rows(loss(sample));
        LossTable table = LossTable.of(sample(sample).circuit());
        assertFalse(rows.isEmpty());
        for (LossTable.Line line : table.lines()) {
            Element row = rows.get(line.item().name());
            boolean matters = line.flightCritical() > 0 || line.units().size() > 1;
            assertTrue(row != null || !matters, line.item().name());
            if (row != null) {
                assertEquals(new TreeSet<>(line.units()), dead(row), line.item().name());
                String words = String.join(" ", SvgPage.texts(row));
                line.functionNames().forEach(name -> assertTrue(words.contains(name), name + " not in " + words));
            }
        }
    }

    /** Losing one bus of the coaxial aircraft leaves one rotor an arm, 0.25 kgf to steer with. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "dewmaker | W41 | 0.25 kgf without M1 M3 M5 M7",
                "dewmaker | FC-CB | 0.25 kgf without M2 M4 M6 M8",
                "linewarden | W41 | no hover without M1 M2 M3",
                "linewarden | BAT2-POS | no hover, all stop",
                "linewarden | FC-RC | -"
            })
    void rowSaysWhatThrustIsLeft(String sample, String item, String margin) {
        assertTrue(SvgPage.texts(rows(loss(sample)).get(item)).contains(margin));
    }

    /** What a cell says, by row and column. */
    private static Map<String, String> results(List<SvgPage> pages) {
        Map<String, String> results = new TreeMap<>();
        for (SvgPage page : pages) {
            page.by("thing").forEach((thing, cell) -> results.put(thing, cell.getAttribute("data-result")));
        }
        return results;
    }

    @ParameterizedTest
    @ValueSource(strings = {"linewarden", "dewmaker", "linewarden-review"})
    void everyWayThatWasTriedStandsInItsCell(String sample) {
        List<SvgPage> pages = misplug(sample);
        Map<String, String> results = results(pages);
        Set<String> said = new HashSet<>();
        pages.forEach(page -> said.addAll(page.texts()));
        String words = String.join(" ", said);
        int cells = 0;
        for (Trial trial : sample(sample).report().trials()) {
            if (trial.code().equals("M07")) {
                String a = trial.sockets().get(0);
                String b = trial.sockets().get(1);
                String result = results.get(a + " / " + b);
                assertEquals(result, results.get(b + " / " + a), a + " / " + b);
                if (result == null) {
                    assertTrue(trial.worst().isEmpty() && trial.told() != Trial.Told.NOT_TRIED, a + " / " + b);
                    assertTrue(words.contains(a) && words.contains(b), a + " / " + b);
                } else {
                    assertTrue(result.compareTo(name(trial)) <= 0 || rank(result) >= rank(name(trial)), a + " / " + b);
                    cells++;
                }
            }
        }
        assertTrue(cells > 20, cells + " cells");
    }

    private static String name(Trial trial) {
        return trial.worst()
                .map(finding -> finding.severity() + " " + finding.code())
                .orElse(
                        switch (trial.told()) {
                            case SAME_POINTS -> "same";
                            case NOT_TRIED -> "open";
                            case TRIED, BY_KIND -> "no harm";
                        });
    }

    private static int rank(String result) {
        return result.startsWith("S")
                ? 10 - (result.charAt(1) - '0')
                : List.of("same", "no harm", "open").indexOf(result);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "linewarden | PDB-O1 / PDB-O2 | S2 S10",
                "linewarden | FC-SER3 / FC-SER2 | S2 A09",
                "linewarden | LOG-C1 / LOG-C2 | same",
                "linewarden | FC-C2 / IMU-C1 | no harm",
                "linewarden-review | PDB-O1 / PDB-O2 | open"
            })
    void cellSaysTheWorst(String sample, String cell, String result) {
        assertEquals(result, results(misplug(sample)).get(cell));
    }

    /** A list with a finding of S1 is not tried: nothing in it may read as harmless. */
    @Test
    void whatWasNotTriedIsNoPass() {
        Map<String, String> results = results(misplug("linewarden-review"));
        assertFalse(results.containsValue("no harm"));
        assertTrue(results.containsValue("open"));
        String words = String.join(" ", misplug("linewarden-review").get(0).texts());
        assertTrue(words.contains("note: cannot tell, and not in the matrix: "), words);
    }

    @Test
    void wrongPlugsStandOnA4AndSameInputGivesSameBytes() {
        Sheets.Reviewed one = sample("dewmaker");
        for (Drawn sheet : SurveySheets.misplug(one.circuit(), one.report(), "0badcafe")) {
            String text = Sheets.verified(sheet.numbered(1, 1));
            assertTrue(text.contains("width=\"297mm\""));
            assertEquals(text, Sheets.verified(sheet.numbered(1, 1)));
        }
    }
}
