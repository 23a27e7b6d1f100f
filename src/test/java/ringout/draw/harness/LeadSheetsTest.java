package ringout.draw.harness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import ringout.draw.card.CardSheet;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.Lead;

/** The lead drawings of the samples, judged from the finished SVG. */
class LeadSheetsTest {
    private static List<Element> sheets(List<Circuit> circuits) {
        List<Element> sheets = new ArrayList<>();
        for (CardSheet sheet : LeadSheets.of(circuits.get(0), Leaves.report(circuits), "0badcafe")) {
            sheets.add(Leaves.verified(sheet.numbered(1, 1).sheet()));
        }
        return sheets;
    }

    private static Element lead(List<Element> sheets, String name) {
        return Leaves.of(sheets, "lead").stream()
                .filter(card -> card.getAttribute("data-lead").equals(name))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"linewarden", "dewmaker", "starter", "linewarden-review"})
    void everyLeadIsThereOnceWithAllItsConductors(String sample) {
        List<Circuit> circuits = Leaves.circuits(sample);
        Wiring wiring = circuits.get(0).wiring();
        Set<String> leads = new TreeSet<>();
        List<String> wanted = new ArrayList<>();
        for (Wire wire : wiring.wires()) {
            leads.add(wire.lead().id());
            wanted.add(wire.lead().id() + " " + wiring.name(wire.fromPin()) + " " + wiring.name(wire.toPin()));
        }
        List<String> drawn = new ArrayList<>();
        List<String> told = new ArrayList<>();
        for (Element card : Leaves.of(sheets(circuits), "lead")) {
            drawn.add(card.getAttribute("data-lead"));
            for (Element row : Leaves.of(card, "conductor")) {
                told.add(drawn.get(drawn.size() - 1) + " " + row.getAttribute("data-from") + " "
                        + row.getAttribute("data-to"));
            }
        }
        Collections.sort(drawn);
        assertEquals(List.copyOf(leads), drawn);
        Collections.sort(wanted);
        Collections.sort(told);
        assertEquals(wanted, told);
    }

    /** From the datum to the far plug is what the list says, at the scale stated; below 380 mm the scale is 1:1. */
    @ParameterizedTest
    @ValueSource(strings = {"linewarden", "dewmaker", "starter"})
    void lengthOnPaperIsTheStatedLengthAtTheStatedScale(String sample) {
        List<Circuit> circuits = Leaves.circuits(sample);
        List<Element> sheets = sheets(circuits);
        int measured = 0;
        for (Lead lead : circuits.get(0).wiring().aircraft().leads()) {
            Element card = lead(sheets, lead.id());
            String scale = card.getAttribute("data-scale");
            double mm = lead.lengthMm().or(0.0);
            List<Element> cells = Leaves.of(card, "cell");
            double left = Leaves.number(cells.get(0), "x");
            double right = Leaves.number(cells.get(1), "x") + Leaves.number(cells.get(1), "width");
            assertEquals(mm >= 48 && mm < 380, scale.equals("1:1"), lead.id() + " " + scale);
            if (scale.startsWith("1:")) {
                assertEquals(mm / Integer.parseInt(scale.substring(2)), right - left, 0.01, lead.id());
                measured++;
            }
            String measure =
                    String.join(" ", Leaves.texts(Leaves.of(card, "dimension").get(0)));
            assertTrue(measure.startsWith(Math.round(mm) + " mm"), lead.id() + " " + measure);
            assertTrue(measure.endsWith(scale), lead.id() + " " + measure);
        }
        assertTrue(measured > 5, "only " + measured + " to scale");
    }

    @Test
    void labelsSleeveAndWhatItPassesAreDrawn() {
        Element card = lead(sheets(Leaves.circuits("linewarden")), "W65");
        List<String> labels = Leaves.of(card, "label").stream()
                .map(label -> label.getAttribute("data-end") + " " + String.join(" ", Leaves.texts(label)))
                .toList();
        assertEquals(List.of("FC-C2 W65", "GN1-C1 W65"), labels);
        assertEquals("braid", Leaves.of(card, "sleeve").get(0).getAttribute("data-sleeve"));
        // FC stands at 0, 0, 15 mm: to the hole at -20, 0, 45 are 36.1 mm, on to the fold at -40, 0, 60 another 25.
        assertEquals(
                List.of("1 hole through top plate, guarded, about 36 mm", "2 flex, guarded, about 61 mm"),
                Leaves.of(card, "passed").stream()
                        .map(passed ->
                                Leaves.texts(passed).get(Leaves.texts(passed).size() - 1))
                        .toList());
    }

    @Test
    void theFuseIsAtTheEndTheListSays() {
        Element card = lead(sheets(Leaves.circuits("linewarden")), "W71");
        Element fuse = Leaves.of(card, "fuse").get(0);
        assertEquals("7.5 A", fuse.getAttribute("data-rating"));
        List<Element> cells = Leaves.of(card, "cell");
        double middle = (Leaves.number(cells.get(0), "x") + Leaves.number(cells.get(1), "x")) / 2;
        assertTrue(Leaves.number(Leaves.of(fuse, "sign").get(0), "x") < middle, "not nearer to the from end");
    }

    @Test
    void aFaultyLeadHasTheBadgeOfItsFinding() {
        List<Element> sheets = sheets(Leaves.circuits("linewarden-review"));
        Element badge = Leaves.of(lead(sheets, "W33"), "badge").get(0);
        assertEquals("S1", badge.getAttribute("data-severity"));
        assertTrue(Leaves.of(lead(sheets, "W34"), "badge").isEmpty(), "W34 is sound");
        // The number is that of the finding list on the same sheet.
        String number = badge.getAttribute("data-number");
        assertTrue(
                Leaves.of(sheets, "finding").stream()
                        .anyMatch(line -> line.getAttribute("data-number").equals(number)
                                && Leaves.texts(line).toString().contains("return too thin")),
                "no line " + number);
    }
}
