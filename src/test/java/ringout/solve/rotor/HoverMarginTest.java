package ringout.solve.rotor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Margins of the two frames of the trade handbook (section 3.6 and annex B), and exact mathematics. */
class HoverMarginTest {
    private static final double HUNDREDTH = 0.005;
    private static final List<Thruster> HEXA = ring(550, 5.2, 90, 30, -30, -90, -150, 150);
    private static final Lifted HEXA_WEIGHT = new Lifted(14.6, 0, 0);
    private static final Lifted X8_WEIGHT = new Lifted(41, 0, 0);

    /** Odd numbers turn clockwise. */
    private static List<Thruster> ring(double radiusMm, double maxKgf, double... bearings) {
        List<Thruster> all = new ArrayList<>();
        for (int i = 0; i < bearings.length; i++) {
            all.add(Thruster.at(i + 1, bearings[i], radiusMm, i % 2 == 0, maxKgf));
        }
        return all;
    }

    /** M1 CCW over M2 CW front right, M3 CW over M4 front left, M5 CCW over M6 rear left, M7 CW over M8 rear right. */
    private static List<Thruster> x8() {
        double[] bearings = {45, 45, -45, -45, -135, -135, 135, 135};
        boolean[] clockwise = {false, true, true, false, false, true, true, false};
        List<Thruster> all = new ArrayList<>();
        for (int i = 0; i < bearings.length; i++) {
            all.add(Thruster.at(i + 1, bearings[i], 850, clockwise[i], 10.5));
        }
        return all;
    }

    private static List<Thruster> without(List<Thruster> all, String lost) {
        Set<Integer> gone = lost.isBlank()
                ? Set.of()
                : Stream.of(lost.split(" ")).map(Integer::valueOf).collect(Collectors.toSet());
        return all.stream().filter(rotor -> !gone.contains(rotor.number())).toList();
    }

    private static void expect(String margin, OptionalDouble found) {
        if (margin.equals("none")) {
            assertEquals(OptionalDouble.empty(), found);
        } else {
            assertEquals(Double.parseDouble(margin), found.orElseThrow(), HUNDREDTH);
        }
    }

    /** Trade handbook, annex B and section 3.6: 14.6 kg, 5.2 kgf a rotor, M1 at 90 degrees and so on anticlockwise. */
    @ParameterizedTest
    @CsvSource({
        "'', true, 2.433",
        "'', false, 2.433",
        "1, false, 1.24",
        "1, true, 0",
        "1 4, false, 1.55",
        "1 4, true, 1.55",
        "1 3, false, 0.25",
        "1 3, true, none",
        "1 2, false, none",
        "1 2, true, none",
        "1 2 3, false, none",
        "4 5 6, false, none",
    })
    void carriesTheHexacopter(String lost, boolean holdYaw, String margin) {
        expect(margin, HoverMargin.of(without(HEXA, lost), HEXA_WEIGHT, holdYaw));
    }

    /** Trade handbook, section 3.6: coaxial eight, 41 kg, 10.5 kgf a rotor, one lost with yaw held. By hand: yaw
     * given up it is 3.5, since arm and opposite arm lift alike: s at most 10.5 - a and a at least 2 s. */
    @ParameterizedTest
    @CsvSource({
        "1, true, 2.75",
        "1, false, 3.5",
        "1 3 5 7, false, 0.25",
        "2 4 6 8, false, 0.25",
        "1 2, false, 0",
        "1 3 5 6, false, none",
        "2 4 7 8, false, none",
    })
    void carriesTheCoaxialEight(String lost, boolean holdYaw, String margin) {
        expect(margin, HoverMargin.of(without(x8(), lost), X8_WEIGHT, holdYaw));
    }

    /** Trade handbook, section 3.6: none. The opposite rotor must stand still for balance: nothing is left to steer with. */
    @ParameterizedTest
    @CsvSource({"1", "2", "3", "4"})
    void letsNoQuadrocopterLoseARotor(String lost) {
        List<Thruster> quad = ring(300, 3, 45, 135, -135, -45);
        expect("0.75", HoverMargin.of(quad, new Lifted(3, 0, 0), true));
        expect("0", HoverMargin.of(without(quad, lost), new Lifted(3, 0, 0), false));
        expect("none", HoverMargin.of(without(quad, lost), new Lifted(3, 0, 0), true));
    }

    /** Statics of a lever: four rotors at 1 m, centre of gravity 0.1 m forward, 4 kg: 1.1 kgf in front, 0.9 behind. */
    @ParameterizedTest
    @CsvSource({"0.1, 0, 0.9", "-0.1, 0, 0.9", "0, 0.1, 0.9", "0, -0.1, 0.9", "0.1, 0.1, 0.8", "0, 0, 1"})
    void feelsTheCentreOfGravity(double forward, double right, String margin) {
        List<Thruster> square = List.of(
                new Thruster(1, 1, 1, true, 4),
                new Thruster(2, 1, -1, false, 4),
                new Thruster(3, -1, -1, true, 4),
                new Thruster(4, -1, 1, false, 4));
        expect(margin, HoverMargin.of(square, new Lifted(4, forward, right), true));
    }

    @ParameterizedTest
    @CsvSource({"5.2, 31.2, 0", "5.2, 31.3, none", "5.2, 15.6, 2.6", "5.2, 20.8, 1.733"})
    void isHalfOfTheThrustAtMost(double max, double weight, String margin) {
        List<Thruster> hexa = ring(550, max, 90, 30, -30, -90, -150, 150);
        expect(margin, HoverMargin.of(hexa, new Lifted(weight, 0, 0), true));
    }

    /** The best of all corners of the region, found by solving every square choice of constraints. */
    @Property(tries = 120)
    void isTheBestCorner(@ForAll @IntRange(min = 0, max = 100_000) int seed, @ForAll boolean holdYaw) {
        java.util.Random random = new java.util.Random(seed);
        int count = 3 + random.nextInt(3);
        List<Thruster> rotors = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            rotors.add(Thruster.at(
                    i + 1,
                    random.nextInt(24) * 15,
                    300 + random.nextInt(5) * 50,
                    random.nextBoolean(),
                    2 + random.nextInt(4)));
        }
        Lifted weight = new Lifted(2 + random.nextInt(8), 0.02 * random.nextInt(4), 0.02 * random.nextInt(4));
        OptionalDouble best = Corners.best(rotors, weight, holdYaw);
        OptionalDouble found = HoverMargin.of(rotors, weight, holdYaw);
        if (best.isEmpty() || found.isEmpty()) {
            double other = Math.max(best.orElse(0), found.orElse(0));
            assertTrue(other < 1e-6, rotors + " " + best + " " + found);
        } else {
            assertEquals(best.getAsDouble(), found.getAsDouble(), 1e-6, Arrays.toString(rotors.toArray()));
        }
    }
}
