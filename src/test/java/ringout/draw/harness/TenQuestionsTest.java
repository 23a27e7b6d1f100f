package ringout.draw.harness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import ringout.graph.Circuit;

/**
 * Questions people ask with the sheets in their hands. Each is answered from the finished SVG alone, by its lines, its texts
 * and where they stand; the answers were worked out by hand from the list.
 */
class TenQuestionsTest {
    private static final Map<String, List<Element>> SHEETS = new HashMap<>();

    /** A text where it stands. */
    private record Text(double x, double y, String words) {}

    private static List<Element> sheets(String sample, SheetSet.Kind kind) {
        return SHEETS.computeIfAbsent(sample + " " + kind, key -> {
            List<Circuit> circuits = Leaves.circuits(sample);
            Map<SheetSet.Kind, List<Element>> byKind = new HashMap<>();
            for (SheetSet.Numbered sheet : set(sample, circuits)) {
                if (sheet.kind() == kind) {
                    byKind.computeIfAbsent(kind, k -> new ArrayList<>()).add(Leaves.verified(sheet.sheet()));
                }
            }
            return byKind.getOrDefault(kind, List.of());
        });
    }

    private static final Map<String, List<SheetSet.Numbered>> SETS = new HashMap<>();

    private static List<SheetSet.Numbered> set(String sample, List<Circuit> circuits) {
        return SETS.computeIfAbsent(sample, key -> SheetSet.of(circuits.get(0), Leaves.report(circuits), "0badcafe"));
    }

    private static Element one(List<Element> sheets, String name, Predicate<Element> which) {
        return Leaves.of(sheets, name).stream().filter(which).findFirst().orElseThrow();
    }

    private static Predicate<Element> is(String datum, String value) {
        return element -> element.getAttribute("data-" + datum).equals(value);
    }

    /** The texts right of a text and level with it, from left to right. */
    private static List<String> rightOf(Element root, String words) {
        List<Text> texts = new ArrayList<>();
        collect(root, texts);
        Text start = texts.stream()
                .filter(text -> text.words().equals(words))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + words));
        return texts.stream()
                .filter(text -> Math.abs(text.y() - start.y()) < 0.6 && text.x() > start.x())
                .sorted(Comparator.comparingDouble(Text::x))
                .map(Text::words)
                .toList();
    }

    private static void collect(Element root, List<Text> texts) {
        var found = root.getElementsByTagName("text");
        for (int i = 0; i < found.getLength(); i++) {
            Element text = (Element) found.item(i);
            texts.add(new Text(Leaves.number(text, "x"), Leaves.number(text, "y"), text.getTextContent()));
        }
    }

    /** From the motor along its phase wires to its controller, and from that along the pulse wire. */
    @Test
    void whichLeadCarriesTheSignalOfMotor4WhichPinWhichColour() {
        List<Element> wiring = sheets("linewarden", SheetSet.Kind.WIRING);
        Element phase = one(
                wiring,
                "wire",
                wire -> is("kind", "motor phase").test(wire)
                        && (wire.getAttribute("data-from") + wire.getAttribute("data-to")).contains("MOT4-"));
        String controller = phase.getAttribute("data-from").replaceAll("-PH.*", "");
        assertEquals("ESC4", controller);
        Element pulse = one(
                wiring,
                "wire",
                wire -> is("kind", "PWM pulse").test(wire)
                        && wire.getAttribute("data-to").startsWith(controller + "-"));
        assertEquals("ESC4-SIG-1", pulse.getAttribute("data-to"));
        Element label = one(wiring, "label", is("wire", pulse.getAttribute("data-wire")));
        assertEquals(List.of("W34 26 WH"), Leaves.texts(label));
    }

    @Test
    void whatIsPulledToMeasureTheBusAndWhatShouldItRead() {
        Element bus = sheets("linewarden", SheetSet.Kind.BUS).stream()
                .filter(sheet -> Leaves.texts(sheet).contains("bus CAN2"))
                .findFirst()
                .orElseThrow();
        assertTrue(Leaves.texts(bus).contains("expected ohms between H and L, power off everywhere"));
        assertEquals(
                List.of("mated", "pulled: into lead", "pulled: into unit"),
                rightOf(bus, "plug").subList(0, 3));
        // Two terminators of 120 ohm: both seen when mated, the far one into the lead, the own one into the unit; the
        // nodes
        // between and the conductors take or add an ohm.
        assertEquals(List.of("60", "119", "120"), rightOf(bus, "FC-C2").subList(0, 3));
    }

    @Test
    void whichFuseProtectsTheFeederOfTheLeftPump() {
        Element lead = one(
                sheets("dewmaker", SheetSet.Kind.LEAD),
                "lead",
                card -> Leaves.of(card, "label").stream().anyMatch(is("end", "PMPL-PWR")));
        assertEquals("W64", lead.getAttribute("data-lead"));
        Element fuse = Leaves.of(lead, "fuse").get(0);
        assertEquals("20 A", fuse.getAttribute("data-rating"));
        assertTrue(Leaves.texts(lead).stream().anyMatch(text -> text.contains("fuse 20 A at from end")));
        assertTrue(Leaves.texts(lead).contains("RG12-O1 to PMPL-PWR"));
    }

    @Test
    void whichClampHoldsTheBlackLeadOfController3() {
        Element row = Leaves.of(sheets("linewarden", SheetSet.Kind.FACE), "pin-row").stream()
                .filter(cells -> Leaves.texts(cells).contains("W23 ESC3-N-1"))
                .findFirst()
                .orElseThrow();
        assertEquals("PDB-K3N", row.getAttribute("data-plug"));
        assertTrue(Leaves.texts(row).contains("BK"));
    }

    @Test
    void whatIsLostWhenThePlugOfW65ComesOut() {
        Element row = one(
                sheets("linewarden", SheetSet.Kind.LOSS),
                "matrix-row",
                line -> line.getAttribute("data-row").contains("W65"));
        List<String> dead = Leaves.of(row, "result").stream()
                .filter(is("result", "dead"))
                .map(result -> result.getAttribute("data-thing").replaceAll(".* / ", ""))
                .sorted()
                .toList();
        // Everything beyond it on the bus.
        assertTrue(dead.containsAll(List.of("GMC", "GN1", "IMU", "LOG")), dead::toString);
    }

    @Test
    void howLongIsW65AndWhereDoesItPassThePlate() {
        Element lead = one(sheets("linewarden", SheetSet.Kind.LEAD), "lead", is("lead", "W65"));
        assertTrue(Leaves.texts(lead).contains("620 mm, 1:10"), Leaves.texts(lead)::toString);
        List<Element> cells = Leaves.of(lead, "cell");
        double drawn = Leaves.number(cells.get(1), "x")
                + Leaves.number(cells.get(1), "width")
                - Leaves.number(cells.get(0), "x");
        assertEquals(62, drawn, 0.01);
        assertTrue(Leaves.texts(lead).contains("1 hole through top plate, guarded, about 36 mm"));
    }

    @Test
    void whichAddressHasTheGimbalAndIsItTerminated() {
        Element member = one(sheets("linewarden", SheetSet.Kind.BUS), "unit", is("unit", "GMC"));
        List<String> texts = Leaves.texts(member);
        assertTrue(texts.contains("address 33"), texts::toString);
        assertTrue(texts.contains("on"), texts::toString);
    }

    @Test
    void howMuchIsLeftOfThe12VoltRegulator() {
        Element box = one(sheets("linewarden", SheetSet.Kind.POWER), "unit", is("unit", "RG12 12"));
        String words = String.join(" ", Leaves.texts(box));
        assertTrue(words.contains("12.00 V, 4.8 / 9 A of 8 / 10 A, left 40 / 10 %"), words);
    }

    @Test
    void whichWayDoesMotor4TurnOnWhichOutletAndClamp() {
        Element map = sheets("linewarden", SheetSet.Kind.MAP).get(0);
        Element row = one(List.of(map), "row", is("motor", "M4"));
        assertEquals(List.of("4", "O4", "K1", "CCW", "CCW"), rightOf(row, "M4"));
    }

    /** Looking at the plug from the unit, pin 1 is on the right. */
    @Test
    void whichColourIsOnTheLeftOfTheMatingFaceOfTheBusPlug() {
        Element face = one(
                sheets("linewarden", SheetSet.Kind.FACE),
                "face",
                one -> is("face", "FC-C2").test(one)
                        && is("view", "mating face").test(one));
        Element left = Leaves.of(face, "contact").stream()
                .min(Comparator.comparingDouble(
                        contact -> Leaves.number(Leaves.of(contact, "place").get(0), "x")))
                .orElseThrow();
        assertEquals(List.of("4", "BK"), Leaves.texts(left));
    }

    @Test
    void whatDoesTheReturnOfController3CarryAndMayIt() {
        Element wire = one(sheets("linewarden", SheetSet.Kind.RETURN), "wire", is("wire", "W23"));
        assertEquals("PDB out", wire.getAttribute("data-from"));
        assertEquals("ESC3 in", wire.getAttribute("data-to"));
        Element label = one(sheets("linewarden", SheetSet.Kind.RETURN), "label", is("wire", "W23"));
        assertTrue(String.join(" ", Leaves.texts(label)).contains("6.04 of 57.4 A"), Leaves.texts(label)::toString);
    }

    @Test
    void whatProvesTheThinReturnAndHowIsItMended() {
        Element sheet = sheets("linewarden-review", SheetSet.Kind.FINDING).stream()
                .filter(one -> Leaves.texts(one).contains("S1 P10"))
                .findFirst()
                .orElseThrow();
        Element remarks = Leaves.of(sheet, "remarks").get(0);
        assertEquals(
                List.of("power off, W33 out: open from 0V of ESC3 to BAT1 -, under 1 ohm when its own return is there"),
                rightOf(remarks, "measure"));
        assertEquals(List.of("fit a return of ESC3 for 6.09 A at ESC3-N"), rightOf(remarks, "fix"));
        assertEquals(
                List.of("(1) ESC3-SIG-2, W33, (2) PDB-O3-2 = (3) PDB-BN-1, W01, (4) BAT1-NEG-1"),
                rightOf(remarks, "path"));
    }
}
