package ringout.draw.harness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import ringout.finding.Finding;
import ringout.finding.Report;
import ringout.finding.Severity;
import ringout.graph.Circuit;

/** The finding sheets of the samples with mistakes, judged from the finished SVG. */
class FindingSheetsTest {
    private static final Pattern STEP = Pattern.compile("\\((\\d+)\\) ([^ ,]+)");

    private static Map<Integer, Element> sheets(String sample) {
        List<Circuit> circuits = Leaves.circuits(sample);
        Map<Integer, Element> sheets = new TreeMap<>();
        FindingSheets.of(circuits.get(0), Leaves.report(circuits), "0badcafe")
                .forEach(one -> sheets.put(
                        one.number(),
                        Leaves.verified(one.drawing().numbered(1, 1).sheet())));
        return sheets;
    }

    private static Map<String, String> remarks(Element sheet) {
        Map<String, String> remarks = new HashMap<>();
        for (Element remark : Leaves.of(sheet, "remark")) {
            List<String> texts = Leaves.texts(remark);
            remarks.put(texts.get(0), String.join(" ", texts.subList(1, texts.size())));
        }
        return remarks;
    }

    @ParameterizedTest
    @ValueSource(strings = {"linewarden-review", "starter"})
    void everyFindingOfWeightHasItsSheetAndNoOther(String sample) {
        Report report = Leaves.report(Leaves.circuits(sample));
        List<Integer> wanted = new ArrayList<>();
        for (int i = 0; i < report.headlines().size(); i++) {
            if (report.headlines().get(i).finding().severity().atLeast(Severity.S3)) {
                wanted.add(i + 1);
            }
        }
        Map<Integer, Element> sheets = sheets(sample);
        assertEquals(wanted, List.copyOf(sheets.keySet()));
        assertFalse(wanted.isEmpty(), "nothing wrong with " + sample);
        sheets.forEach((number, sheet) -> {
            Set<String> badges = new HashSet<>();
            Leaves.of(sheet, "badge").forEach(badge -> badges.add(badge.getAttribute("data-number")));
            badges.remove("n");
            assertEquals(Set.of(Integer.toString(number)), badges);
            Finding finding = report.headlines().get(number - 1).finding();
            assertTrue(Leaves.texts(Leaves.of(sheet, "finding").get(0))
                    .contains(finding.severity() + " " + finding.code()));
            assertTrue(
                    remarks(sheet)
                            .getOrDefault("sum", "")
                            .startsWith(finding.evidence().sum()),
                    finding.code());
            assertEquals(finding.meter(), remarks(sheet).getOrDefault("measure", ""), finding.code());
            assertEquals(finding.fix(), remarks(sheet).getOrDefault("fix", ""), finding.code());
            assertTrue(remarks(sheet).get("caution").contains("propellers off"));
        });
    }

    /** The number in front of a pin of the path in words stands beside that pin on the drawing. */
    @Test
    void stepsOfThePathAreNumberedAtTheirPins() {
        int numbered = 0;
        for (Element sheet : sheets("linewarden-review").values()) {
            Map<String, String> atPins = new HashMap<>();
            for (Element pin : Leaves.of(sheet, "pin")) {
                String words = String.join(" ", Leaves.texts(pin));
                Matcher step = Pattern.compile("\\((\\d+)\\)").matcher(words);
                if (step.find()) {
                    atPins.put(pin.getAttribute("data-pin"), step.group(1));
                }
            }
            Matcher steps = STEP.matcher(remarks(sheet).getOrDefault("path", ""));
            Map<String, String> told = new HashMap<>();
            while (steps.find()) {
                told.put(steps.group(2), steps.group(1));
            }
            atPins.forEach((pin, step) -> assertEquals(told.get(pin), step, pin));
            numbered += atPins.size();
        }
        assertTrue(numbered >= 8, "only " + numbered + " steps");
    }

    /** No drawn lead is more than two plugs away from a marked one: a walk over the sheet alone. */
    @Test
    void onlyWhatIsNearIsDrawn() {
        for (Element sheet : sheets("linewarden-review").values()) {
            Set<String> near = new HashSet<>();
            Leaves.of(sheet, "casing").forEach(casing -> near.add(unitOf(casing.getAttribute("data-target"))));
            List<Element> wires = Leaves.of(sheet, "wire");
            assertTrue(wires.size() <= 18, wires.size() + " conductors");
            for (int step = 0; step < 3; step++) {
                Set<String> more = new HashSet<>();
                for (Element wire : wires) {
                    String from = unitOf(wire.getAttribute("data-from"));
                    String to = unitOf(wire.getAttribute("data-to"));
                    String lead = wire.getAttribute("data-wire");
                    if (near.contains(from) || near.contains(to) || near.contains(lead)) {
                        more.add(from);
                        more.add(to);
                    }
                }
                near.addAll(more);
            }
            for (Element wire : wires) {
                assertTrue(near.contains(unitOf(wire.getAttribute("data-from"))), wire.getAttribute("data-wire"));
            }
        }
    }

    private static String unitOf(String pin) {
        return pin.matches("W\\d+\\..*") ? pin : pin.replaceAll("-.*", "");
    }
}
