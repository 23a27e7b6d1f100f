package ringout.draw.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import org.junit.jupiter.api.Test;
import ringout.draw.DemoScene;
import ringout.draw.RandomScenes;
import ringout.draw.paper.SheetSize;
import ringout.draw.route.RoutedLink;
import ringout.draw.scene.Box;
import ringout.draw.scene.Pin;
import ringout.draw.scene.Plug;
import ringout.draw.scene.SheetInfo;
import ringout.draw.scene.Spot;
import ringout.draw.scene.Wire;
import ringout.draw.scene.WireKind;
import ringout.draw.scene.WiringScene;
import ringout.draw.scene.WiringSceneBuilder;
import ringout.present.svg.SvgOutcome;

class WiringDrawingTest {
    private static WiringDrawing.Fits fits(WiringScene scene) {
        return assertInstanceOf(WiringDrawing.Fits.class, WiringDrawing.of(scene, SheetSize.all()));
    }

    private static SvgOutcome.Verified verified(WiringScene scene) {
        SvgOutcome outcome = SvgOutcome.of(fits(scene).sheet());
        if (outcome instanceof SvgOutcome.Refused refused) {
            throw new AssertionError(refused.flaws().toString());
        }
        return (SvgOutcome.Verified) outcome;
    }

    @Test
    void demoSheetPassesTheVerifier() {
        SvgOutcome.Verified sheet = verified(DemoScene.of());
        assertEquals(DemoScene.of().wires().size(), sheet.verdict().wires());
        assertTrue(
                sheet.verdict().longestUnlabelled() <= 120.5,
                "unlabelled " + sheet.verdict().longestUnlabelled());
    }

    @Test
    void sameSceneGivesTheSameBytes() {
        assertEquals(verified(DemoScene.of()).text(), verified(DemoScene.of()).text());
    }

    /** Any pin to any pin, shared pins, hostile names: whatever is drawn, the verifier has nothing against it. */
    @Property(seed = "20261125", tries = 120, shrinking = ShrinkingMode.OFF)
    void whateverTheSceneTheSheetIsSound(@ForAll Random random, @ForAll boolean odd) {
        if (WiringDrawing.of(RandomScenes.of(random, odd), SheetSize.all()) instanceof WiringDrawing.Fits fits) {
            if (SvgOutcome.of(fits.sheet()) instanceof SvgOutcome.Refused refused) {
                throw new AssertionError(refused.flaws().toString());
            }
        }
    }

    private static Plug plug(String unit, String name, int pins) {
        List<ringout.draw.scene.Row> rows = new ArrayList<>();
        for (int i = 1; i <= pins; i++) {
            rows.add(new Pin(unit + "-" + name + "-" + i, Integer.toString(i), ""));
        }
        return new Plug(unit + "-" + name, name, rows);
    }

    private static WiringSceneBuilder chain(int boxes, int pins) {
        WiringSceneBuilder scene = WiringScene.builder(SheetInfo.of("chain", "wiring diagram", "test", "as flown"));
        for (int b = 0; b < boxes; b++) {
            String unit = "U" + b;
            scene.box(new Box(unit, unit, "", "", List.of(plug(unit, "A", pins), plug(unit, "B", pins))));
        }
        for (int b = 0; b + 1 < boxes; b++) {
            for (int i = 1; i <= pins; i++) {
                String id = "W" + b + "." + i;
                String to = "U" + (b + 1) + "-A-" + i;
                scene.wire(new Wire(id, "W" + b, "", "", WireKind.OTHER, id, "U" + b + "-B-" + i, to));
            }
        }
        return scene;
    }

    @Test
    void smallestSheetThatHoldsTheSceneIsTaken() {
        assertEquals(SheetSize.A4, fits(chain(2, 3).build()).sheet().size());
        WiringDrawing tooMuch = WiringDrawing.of(chain(12, 12).build(), List.of(SheetSize.A4));
        WiringDrawing.DoesNotFit no = assertInstanceOf(WiringDrawing.DoesNotFit.class, tooMuch);
        assertTrue(no.width() > 259 || no.height() > 140, no.toString());
    }

    @Test
    void chainOfFewBoxesIsDrawnWithoutCrossings() {
        SvgOutcome.Verified sheet = verified(chain(4, 4).build());
        assertEquals(0, sheet.verdict().crossings());
    }

    @Test
    void zonesNameWhereEachPinLies() {
        WiringDrawing.Fits drawn = fits(chain(2, 3).build());
        assertEquals(12 - 6, drawn.zones().size(), "pins with wires");
        drawn.zones().values().forEach(zone -> assertTrue(zone.matches("[A-D][1-6]"), zone));
    }

    /** A drawing held against an earlier one: everything stays, and the new lead is the only new line. */
    @Test
    void heldPlacesStayWhenALeadIsAdded() {
        WiringDrawing.Fits before = fits(chain(4, 3).build());
        WiringSceneBuilder more = chain(4, 3);
        more.wire(new Wire("WX.1", "WX", "", "", WireKind.OTHER, "x", "U0-A-1", "U3-B-1"));
        List<Spot> spots = before.routed().placed().spots();
        spots.forEach(more::hold);
        WiringDrawing.Fits after = fits(more.build());
        Map<String, Spot> was = new TreeMap<>();
        spots.forEach(spot -> was.put(spot.id(), spot));
        for (Spot spot : after.routed().placed().spots()) {
            Spot old = was.get(spot.id());
            assertEquals(old.column(), spot.column(), spot.id());
            assertEquals(old.left(), spot.left(), spot.id());
            assertEquals(old.right(), spot.right(), spot.id());
        }
        Map<String, Integer> bends = new TreeMap<>();
        before.routed().links().forEach(l -> bends.put(l.link().id(), l.bends()));
        for (RoutedLink link : after.routed().links()) {
            if (!link.link().id().equals("WX.1")) {
                assertEquals(
                        bends.get(link.link().id()), link.bends(), link.link().id());
            }
        }
    }
}
