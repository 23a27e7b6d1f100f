package ringout.draw.harness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Element;
import ringout.draw.scene.Earlier;
import ringout.draw.scene.Spot;
import ringout.finding.Report;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.model.Aircraft;
import ringout.model.edit.Edited;
import ringout.model.edit.Edits;
import ringout.present.json.LayoutJson;
import ringout.read.AircraftReader;
import ringout.read.edit.EditReader;

/** One plug moved is one line moved: two outputs compared from their SVG alone. */
class HeldLayoutTest {
    private static final Report NOTHING =
            new Report(List.of("as flown"), List.of(), List.of(), List.of(), List.of(), List.of(), 0, 0);

    /** What stands where on the wiring sheets of an output. */
    private record Seen(Map<String, String> units, Map<String, String> wires) {}

    private static Circuit circuit(Aircraft aircraft) {
        return Circuit.all(Wiring.of(aircraft)).get(0);
    }

    private static Aircraft sample(String name) {
        return AircraftReader.read(Path.of("samples/" + name)).aircraft();
    }

    private static Aircraft edited(Aircraft aircraft, String... lines) {
        EditReader.Result read = EditReader.read("moved.edit", String.join("\n", lines));
        assertEquals(List.of(), read.problems());
        Edited edited = Edits.apply(aircraft, read.edits());
        return edited.aircraft();
    }

    private static Seen seen(List<SheetSet.Numbered> set) {
        Seen seen = new Seen(new TreeMap<>(), new TreeMap<>());
        for (SheetSet.Numbered sheet : set) {
            if (sheet.kind() == SheetSet.Kind.WIRING) {
                Element svg = Leaves.verified(sheet.sheet());
                double[] origin = origin(svg);
                for (Element unit : Leaves.of(svg, "unit")) {
                    Element body = Leaves.of(unit, "body").get(0);
                    seen.units().put(sheet.name() + " " + unit.getAttribute("data-unit"), place(body, origin));
                }
                for (Element wire : Leaves.of(svg, "wire")) {
                    String points = Leaves.of(wire, "line").get(0).getAttribute("points");
                    seen.wires().put(sheet.name() + " " + wire.getAttribute("data-wire"), moved(points, origin));
                }
            }
        }
        return seen;
    }

    /** A diagram stands in the middle of its sheet: places are counted from its uppermost and leftmost unit. */
    private static double[] origin(Element svg) {
        double x = Double.MAX_VALUE;
        double y = Double.MAX_VALUE;
        for (Element unit : Leaves.of(svg, "unit")) {
            Element body = Leaves.of(unit, "body").get(0);
            x = Math.min(x, Leaves.number(body, "x"));
            y = Math.min(y, Leaves.number(body, "y"));
        }
        return new double[] {x, y};
    }

    private static String place(Element body, double[] origin) {
        return Math.round(Leaves.number(body, "x") - origin[0]) + ","
                + Math.round(Leaves.number(body, "y") - origin[1]);
    }

    private static String moved(String points, double[] origin) {
        StringBuilder text = new StringBuilder();
        for (String pair : points.split(" ")) {
            String[] xy = pair.split(",");
            text.append(Math.round(Double.parseDouble(xy[0]) - origin[0]))
                    .append(',')
                    .append(Math.round(Double.parseDouble(xy[1]) - origin[1]))
                    .append(' ');
        }
        return text.toString();
    }

    private static Set<String> changed(Map<String, String> before, Map<String, String> after) {
        Set<String> changed = new TreeSet<>();
        before.forEach((name, place) -> {
            if (!place.equals(after.get(name))) {
                changed.add(name);
            }
        });
        return changed;
    }

    @Test
    void placesAreReadBackAsTheyWereWritten() {
        Earlier layout = SheetSet.layout(SheetSet.of(circuit(sample("starter")), NOTHING, "1"));
        assertTrue(layout.sheets().get(0).spots().size() > 3, "no places");
        assertEquals(layout, LayoutJson.read(LayoutJson.of(layout)).orElseThrow());
        assertTrue(LayoutJson.read("{\"sheets\": [{]}").isEmpty(), "a broken file");
        assertTrue(LayoutJson.read("[]").isEmpty(), "another file");
    }

    @Test
    void drawnAgainNothingMoves() {
        List<SheetSet.Numbered> first = SheetSet.of(circuit(sample("linewarden")), NOTHING, "1");
        Seen before = seen(first);
        Seen after = seen(SheetSet.of(circuit(sample("linewarden")), NOTHING, "1", SheetSet.layout(first)));
        assertEquals(Set.of(), changed(before.units(), after.units()));
        assertEquals(Set.of(), changed(before.wires(), after.wires()));
    }

    /** Sheets the move does not touch are the same line for line; on the others column, order and sides are kept. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"W69 | from PDB-T1", "W33 | to ESC4-SIG", "W68 | from IMU-C2"})
    void onePlugMovedMovesOneLead(String lead, String end) {
        Aircraft list = sample("linewarden");
        List<SheetSet.Numbered> first = SheetSet.of(circuit(list), NOTHING, "1");
        Earlier layout = SheetSet.layout(first);
        Aircraft after = edited(list, "set leads[\"" + lead + "\"]." + end);
        List<SheetSet.Numbered> second = SheetSet.of(circuit(after), NOTHING, "1", layout);
        Earlier now = SheetSet.layout(second);
        assertEquals(layout.sheets().size(), now.sheets().size());
        for (int i = 0; i < layout.sheets().size(); i++) {
            assertEquals(
                    Set.copyOf(layout.sheets().get(i).wires()),
                    Set.copyOf(now.sheets().get(i).wires()));
            keepsPlaces(layout.sheets().get(i).spots(), now.sheets().get(i).spots());
        }
        Seen before = seen(first);
        Seen held = seen(second);
        Set<String> sheets = new TreeSet<>();
        changed(before.wires(), held.wires()).forEach(name -> sheets.add(name.substring(0, name.indexOf(' '))));
        assertEquals(1, sheets.size(), "the move touches one sheet, " + sheets + " changed");
    }

    private static void keepsPlaces(List<Spot> before, List<Spot> after) {
        Map<String, Spot> was = new HashMap<>();
        before.forEach(spot -> was.put(spot.id(), spot));
        List<Spot> both =
                after.stream().filter(spot -> was.containsKey(spot.id())).toList();
        assertTrue(both.size() >= before.size() - 1, "units lost");
        for (Spot spot : both) {
            Spot old = was.get(spot.id());
            assertEquals(old.column(), spot.column(), spot.id());
            assertEquals(shared(old.left(), spot), shared(spot.left(), old), spot.id());
            assertEquals(shared(old.right(), spot), shared(spot.right(), old), spot.id());
            for (Spot other : both) {
                if (other.column() == spot.column() && other.rank() > spot.rank()) {
                    assertTrue(was.get(other.id()).rank() > old.rank(), spot.id() + " and " + other.id());
                }
            }
        }
    }

    /** The plugs that the other has too, in their order. */
    private static List<String> shared(List<String> plugs, Spot other) {
        return plugs.stream()
                .filter(plug -> other.left().contains(plug) || other.right().contains(plug))
                .toList();
    }
}
