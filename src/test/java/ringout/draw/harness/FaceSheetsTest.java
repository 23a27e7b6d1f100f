package ringout.draw.harness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import ringout.draw.card.CardSheet;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.wire.WireColour;

/** The plug face sheets of the samples, judged from the finished SVG. */
class FaceSheetsTest {
    private static List<Element> sheets(List<Circuit> circuits) {
        List<Element> sheets = new ArrayList<>();
        for (CardSheet sheet : FaceSheets.of(circuits.get(0), Leaves.report(circuits), "0badcafe")) {
            sheets.add(Leaves.verified(sheet.numbered(1, 1).sheet()));
        }
        return sheets;
    }

    /** The numbers of a face from left to right, row by row. */
    private static List<List<String>> rows(Element face) {
        Map<Double, TreeMap<Double, String>> rows = new TreeMap<>();
        for (Element contact : Leaves.of(face, "contact")) {
            Element place = Leaves.of(contact, "place").get(0);
            rows.computeIfAbsent(Leaves.number(place, "y"), y -> new TreeMap<>())
                    .put(Leaves.number(place, "x"), contact.getAttribute("data-contact"));
        }
        return rows.values().stream()
                .map(row -> (List<String>) new ArrayList<>(row.values()))
                .toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"linewarden", "dewmaker", "starter", "linewarden-review"})
    void matingFaceIsTheMirrorOfTheWireSide(String sample) {
        List<Element> sheets = sheets(Leaves.circuits(sample));
        int pairs = 0;
        for (Element card : Leaves.of(sheets, "plug")) {
            List<Element> faces = Leaves.of(card, "face");
            assertEquals(2, faces.size(), card.getAttribute("data-plug"));
            assertEquals("wire side", faces.get(0).getAttribute("data-view"));
            assertEquals("mating face", faces.get(1).getAttribute("data-view"));
            List<List<String>> mirrored = new ArrayList<>();
            for (List<String> row : rows(faces.get(0))) {
                List<String> turned = new ArrayList<>(row);
                Collections.reverse(turned);
                mirrored.add(turned);
            }
            assertEquals(mirrored, rows(faces.get(1)), card.getAttribute("data-plug"));
            faces.forEach(FaceSheetsTest::saysWhereItIsSeenFrom);
            pairs++;
        }
        assertTrue(pairs > 10, "only " + pairs + " plugs");
    }

    /** In words and by an icon, whose arrow points at the wires or at the face; and the mark stands over the first pin. */
    private static void saysWhereItIsSeenFrom(Element face) {
        String view = face.getAttribute("data-view");
        assertTrue(Leaves.texts(face).contains(view), view);
        Element icon = Leaves.of(face, "icon").get(0);
        double tip = points(Leaves.of(icon, "look").get(0)).get(0)[0];
        double back = points(Leaves.of(icon, "look").get(0)).get(1)[0];
        assertEquals(view.equals("wire side"), tip > back, view);
        Element mark = Leaves.of(face, "pin-1").get(0);
        double at = points(mark).get(2)[0];
        Element first = Leaves.of(face, "contact").stream()
                .filter(contact -> contact.getAttribute("data-contact").equals(mark.getAttribute("data-contact")))
                .findFirst()
                .orElseThrow();
        Element place = Leaves.of(first, "place").get(0);
        assertEquals(Leaves.number(place, "x") + Leaves.number(place, "width") / 2, at, 0.01);
    }

    private static List<double[]> points(Element polygon) {
        List<double[]> points = new ArrayList<>();
        for (String pair : polygon.getAttribute("points").split(" ")) {
            String[] xy = pair.split(",");
            points.add(new double[] {Double.parseDouble(xy[0]), Double.parseDouble(xy[1])});
        }
        return points;
    }

    /** Every end of every conductor stands in the table of its plug: pin, signal, colour, lead and far end. */
    @ParameterizedTest
    @ValueSource(strings = {"linewarden", "dewmaker", "starter", "linewarden-review"})
    void everyEndOfEveryConductorIsThereOnce(String sample) {
        List<Circuit> circuits = Leaves.circuits(sample);
        Wiring wiring = circuits.get(0).wiring();
        List<String> wanted = new ArrayList<>();
        for (Wire wire : wiring.wires()) {
            for (int pin : List.of(wire.fromPin(), wire.toPin())) {
                String plug = wiring.plugName(wiring.unitOf(pin), wiring.plugIndex(pin));
                String colour = WireColour.of(wiring, wire);
                String far = wire.lead().id() + " " + wiring.name(wire.otherPin(pin));
                wanted.add(plug + " | " + wiring.pin(pin).number() + " | " + colour + " | " + far);
            }
        }
        List<String> told = new ArrayList<>();
        for (Element row : Leaves.of(sheets(circuits), "pin-row")) {
            List<String> cells = new ArrayList<>(Leaves.texts(row));
            String last = cells.get(cells.size() - 1);
            if (!last.equals("no wire")) {
                String colour = Leaves.of(row, "edge").isEmpty() ? "" : cells.get(cells.size() - 2);
                told.add(row.getAttribute("data-plug") + " | " + row.getAttribute("data-contact") + " | " + colour
                        + " | " + last);
            }
        }
        Collections.sort(wanted);
        Collections.sort(told);
        assertEquals(wanted, told);
    }

    /** The letters in the face are those of the table, and grey places are those without a wire. */
    @Test
    void facesCarryTheColoursInLetters() {
        List<Element> sheets = sheets(Leaves.circuits("linewarden"));
        Map<String, String> letters = new HashMap<>();
        for (Element face : Leaves.of(sheets, "face")) {
            for (Element contact : Leaves.of(face, "contact")) {
                String key = face.getAttribute("data-face") + "-" + contact.getAttribute("data-contact");
                letters.put(key, String.join(" ", Leaves.texts(contact)));
            }
        }
        assertEquals("1 RD", letters.get("FC-C2-1"));
        assertEquals("2 YE", letters.get("FC-C2-2"));
        assertEquals("3 GN", letters.get("FC-C2-3"));
        assertEquals("4 BK", letters.get("FC-C2-4"));
    }

    /** The lead's half is drawn: where the list calls the unit's contacts sockets, pins. */
    @Test
    void contactsAreThoseOfTheLead() {
        List<Element> sheets = sheets(Leaves.circuits("linewarden"));
        Element face = Leaves.of(sheets, "face").stream()
                .filter(one -> one.getAttribute("data-face").equals("FC-C2"))
                .findFirst()
                .orElseThrow();
        List<Element> signs = Leaves.of(face, "sign");
        assertFalse(signs.isEmpty(), "no contact has a sign");
        signs.forEach(sign -> assertEquals("#000000", sign.getAttribute("fill")));
    }

    @Test
    void aFindingAboutAPlugHasItsBadgeThere() {
        List<Element> sheets = sheets(Leaves.circuits("linewarden-review"));
        List<String> badges = Leaves.of(Leaves.of(sheets, "plug"), "badge").stream()
                .map(badge -> badge.getAttribute("data-target") + " " + badge.getAttribute("data-severity"))
                .toList();
        assertTrue(badges.contains("FC-SER2 S3"), badges::toString);
    }
}
