package ringout.draw.bus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import org.junit.jupiter.api.Test;
import ringout.draw.DemoBus;
import ringout.draw.RandomBuses;
import ringout.draw.paper.SheetSize;
import ringout.draw.scene.BusLead;
import ringout.draw.scene.BusMember;
import ringout.draw.scene.BusPoint;
import ringout.draw.scene.BusScene;
import ringout.draw.scene.BusTee;
import ringout.draw.scene.SheetInfo;
import ringout.draw.scene.Terminator;
import ringout.present.svg.SvgOutcome;

class BusDrawingTest {
    private static SvgOutcome.Verified verified(BusScene scene) {
        BusDrawing.Fits fits = assertInstanceOf(BusDrawing.Fits.class, BusDrawing.of(scene, SheetSize.all()));
        SvgOutcome outcome = SvgOutcome.of(fits.sheet());
        if (outcome instanceof SvgOutcome.Refused refused) {
            throw new AssertionError(refused.flaws().toString());
        }
        return (SvgOutcome.Verified) outcome;
    }

    @Test
    void demoBusesPassTheVerifier() {
        assertEquals(8, verified(DemoBus.wrongTerminator()).verdict().wires(), "four leads of two legs");
        assertEquals(18, verified(DemoBus.everything()).verdict().wires(), "six leads, two stubs and a ring");
    }

    @Test
    void sameSceneGivesTheSameBytes() {
        assertEquals(
                verified(DemoBus.everything()).text(),
                verified(DemoBus.everything()).text());
    }

    @Property(seed = "20261125", tries = 150, shrinking = ShrinkingMode.OFF)
    void whateverTheBusTheSheetIsSound(@ForAll Random random) {
        verified(RandomBuses.of(random));
    }

    /** Middle of each member's sign, from the SVG alone. */
    private static double signAt(String svg, String member) {
        Matcher sign = Pattern.compile(
                        "data-pin=\"" + member + "\".*?<rect x=\"([0-9.]+)\"[^>]*width=\"([0-9.]+)\"", Pattern.DOTALL)
                .matcher(svg);
        assertTrue(sign.find(), member);
        return Double.parseDouble(sign.group(1)) + Double.parseDouble(sign.group(2)) / 2;
    }

    @Test
    void trunkIsToTheStatedScale() {
        String svg = verified(DemoBus.wrongTerminator()).text();
        assertTrue(svg.contains("scale of length 1:10, 100 mm on the sheet is 1 m of lead"));
        String[] members = {"FC", "GN1", "IMU", "LOG", "GMC"};
        double[] metres = {0.62, 0.55, 0.18, 0.45};
        for (int i = 0; i < metres.length; i++) {
            assertEquals(100 * metres[i], signAt(svg, members[i + 1]) - signAt(svg, members[i]), 0.05);
        }
    }

    @Test
    void stubHangsToScale() {
        String svg = verified(DemoBus.everything()).text();
        assertTrue(svg.contains("50 mm on the sheet is 1 m of lead"));
        Matcher low = Pattern.compile(
                        "data-wire=\"W57.L\".*?points=\"[0-9.]+,([0-9.]+) [0-9.]+,([0-9.]+)\"", Pattern.DOTALL)
                .matcher(svg);
        assertTrue(low.find());
        double drawn = Double.parseDouble(low.group(2)) - Double.parseDouble(low.group(1));
        assertEquals(50 * 0.9, drawn, 0.05);
    }

    private static String resistorOf(String svg, String member) {
        Matcher sign = Pattern.compile(
                        "data-pin=\"" + member + "\".*?<rect [^>]*class=\"resistor\"[^>]*>", Pattern.DOTALL)
                .matcher(svg);
        assertTrue(sign.find(), member);
        String found = sign.group();
        return found.substring(found.lastIndexOf("<rect"));
    }

    @Test
    void terminatorsAreSolidHollowOrGhostsWhereTheyAre() {
        String svg = verified(DemoBus.everything()).text();
        assertTrue(resistorOf(svg, "FC").contains("fill=\"#000000\""));
        assertTrue(resistorOf(svg, "BMA").contains("fill=\"#ffffff\""));
        assertFalse(resistorOf(svg, "BMA").contains("dasharray"));
        assertTrue(resistorOf(svg, "GNA").contains("dasharray"));
        assertTrue(resistorOf(verified(DemoBus.wrongTerminator()).text(), "LOG").contains("fill=\"#000000\""));
    }

    @Test
    void eachMemberIsNamedWithItsAddress() {
        String svg = verified(DemoBus.wrongTerminator()).text();
        for (String text : List.of("FC", "address 10", "address 24", "address 21", "address 31", "address 33")) {
            assertTrue(svg.contains(">" + text + "<"), text);
        }
    }

    private static BusScene chain(int members, double metres) {
        List<BusPoint> trunk = new ArrayList<>();
        List<BusLead> leads = new ArrayList<>();
        for (int i = 0; i < members; i++) {
            trunk.add(new BusMember("U" + i, "UNIT" + i, "", "", Terminator.NONE, ""));
            if (i > 0) {
                leads.add(new BusLead("W" + i, "W" + i, metres));
            }
        }
        SheetInfo info = SheetInfo.of("bus", "bus diagram", "test", "as flown");
        return new BusScene(
                info,
                "B",
                "",
                trunk,
                leads,
                List.of(),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of());
    }

    @Test
    void busTooLargeForTheSheetIsSaidToBe() {
        assertInstanceOf(BusDrawing.DoesNotFit.class, BusDrawing.of(chain(40, 1), List.of(SheetSize.A4)));
        assertInstanceOf(BusDrawing.Fits.class, BusDrawing.of(chain(12, 0.5), List.of(SheetSize.A3)));
    }

    @Test
    void sceneThatContradictsItselfIsRefused() {
        BusScene good = chain(3, 1);
        List<BusPoint> teeWithoutStub = new ArrayList<>(good.trunk());
        teeWithoutStub.set(1, new BusTee("T"));
        assertThrows(
                IllegalArgumentException.class,
                () -> new BusScene(
                        good.info(),
                        "B",
                        "",
                        teeWithoutStub,
                        good.leads(),
                        List.of(),
                        Optional.empty(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of()));
        assertThrows(IllegalArgumentException.class, () -> new BusLead("W", "W", -1));
        assertThrows(IllegalArgumentException.class, () -> new BusLead("W", "W", Double.NaN));
    }
}
