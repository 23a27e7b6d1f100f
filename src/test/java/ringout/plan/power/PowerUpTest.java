package ringout.plan.power;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.model.Aircraft;
import ringout.model.Airframe;
import ringout.model.Datum;
import ringout.model.LoadSpec;
import ringout.model.State;
import ringout.model.UnitType;
import ringout.model.shape.Shape;
import ringout.read.AircraftReader;
import ringout.solve.power.LoadCase;
import ringout.solve.power.OperatingPoint;
import ringout.solve.power.PackCharge;
import ringout.solve.power.PowerFlow;

/**
 * The first power-up of the samples. Bench currents of 0.53, 0.63 and 1.93 A, 2.8 A while the gimbal starts, 43.6 V in the hover:
 * worked out by hand from the loads of the sample, 48 V, and efficiencies 0.90, 0.85 and 0.92.
 */
class PowerUpTest {
    private static Aircraft sample(String name) {
        return AircraftReader.read(Path.of("samples", name)).aircraft();
    }

    private static Circuit circuit(Aircraft aircraft) {
        return Circuit.all(Wiring.of(aircraft)).get(0);
    }

    private static PowerUp of(String name) {
        return PowerUps.of(circuit(sample(name)));
    }

    private static PowerStage stage(PowerUp powerUp, String id) {
        return powerUp.stages().stream()
                .filter(stage -> stage.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static Expected.Reading reading(PowerStage stage, String unit, String at) {
        return stage.readings().stream()
                .filter(Expected.Reading.class::isInstance)
                .map(Expected.Reading.class::cast)
                .filter(one -> one.unit().equals(unit) && one.at().contains(at))
                .findFirst()
                .orElseThrow(() -> new AssertionError(stage.id() + " has no " + unit + " at " + at));
    }

    private static void near(double expected, double value) {
        assertEquals(expected, value, 0.02 * expected);
    }

    @Test
    void linewardenOnTheBench() {
        PowerUp powerUp = of("linewarden");
        List<Double> amps = List.of(0.53, 0.625, 1.93);
        List<Double> limits = List.of(1.0, 1.5, 4.0);
        List<PowerStage> bench = powerUp.stages(PowerStage.Kind.BENCH);
        assertEquals(3, bench.size());
        for (int i = 0; i < bench.size(); i++) {
            Expected.Reading read = reading(bench.get(i), "A", "supply");
            near(amps.get(i), read.value());
            assertTrue(read.holds(amps.get(i)));
            assertFalse(read.holds(1.3 * amps.get(i)));
            assertEquals(limits.get(i), bench.get(i).supply().limitA().orElseThrow());
            assertEquals(48.0, bench.get(i).supply().volts().orElseThrow());
        }
        assertEquals(List.of("RG6-IN", "RG12-IN"), bench.get(0).pulled());
        assertEquals(List.of("RG6-IN"), bench.get(1).plugged());
        assertEquals(List.of("RG12-IN"), bench.get(2).plugged());
        assertTrue(bench.get(2).notes().contains("up to 2.80 A while GMC is at its peak"));
        near(5.3, reading(bench.get(0), "V", "FC-C2-1").value());
        near(6.0, reading(bench.get(1), "V", "LGC-PWR-1").value());
        near(12.0, reading(bench.get(2), "V", "GMC-PWR-1").value());
        assertEquals(
                List.of("9.1", "9.2", "9.3"),
                bench.stream().map(PowerStage::step).toList());
    }

    @Test
    void linewardenOnItsPacks() {
        PowerUp powerUp = of("linewarden");
        near(50.4, reading(stage(powerUp, "U4"), "V", "-IN-").value());
        double amps = reading(stage(powerUp, "U4"), "A", "packs").value();
        assertTrue(1.8 <= amps && amps <= 2.0, amps + " A at rest");
        near(43.6, reading(stage(powerUp, "U6"), "V", "PDB-BP-1").value());
        assertTrue(reading(stage(powerUp, "U6"), "A", "packs").holds(38));
    }

    /** The sheet against the operating point of a circuit made by hand: plugs open, 48 V instead of the packs. */
    @Test
    void readingsAreThoseOfTheOperatingPoint() {
        Circuit whole = circuit(sample("linewarden"));
        Shape<State> shape = Shape.of(State.class);
        for (PowerStage stage : PowerUps.of(whole).stages(PowerStage.Kind.BENCH)) {
            Circuit staged = Circuit.of(whole.wiring(), shape.with(whole.state(), "pulled", stage.pulled()));
            PowerFlow flow = (PowerFlow) OperatingPoint.of(staged, LoadCase.IDLE.with(PackCharge.supply(4.0)));
            assertEquals(
                    flow.packs().get(0).amps(), reading(stage, "A", "supply").value(), 1e-9);
            double sum = flow.loads().stream().mapToDouble(load -> load.watts()).sum();
            assertTrue(48 * reading(stage, "A", "supply").value() > sum, "a supply gives more than its loads take");
        }
    }

    @Test
    void dewmakerKeepsItsPumpsAndAtomisersForLater() {
        PowerUp powerUp = of("dewmaker");
        List<PowerStage> bench = powerUp.stages(PowerStage.Kind.BENCH);
        assertEquals(2, bench.size());
        assertTrue(
                bench.get(0).pulled().containsAll(List.of("PMPL-PWR", "PMPR-PWR", "LGT1-PWR", "NOZ1-PWR", "NOZ4-S")));
        assertTrue(bench.get(1).units().containsAll(List.of("PMPL", "NOZ1", "FPV")));
        assertTrue(bench.get(1).before().stream().anyMatch(words -> words.startsWith("hands clear of the disc")));
        near(5.0, reading(bench.get(1), "V", "NOZ1-S").value());
        near(12.0, reading(bench.get(1), "V", "FPV-PWR").value());
        assertTrue(bench.get(0).readings().stream().noneMatch(Expected.CannotTell.class::isInstance));
        assertEquals(52.0, bench.get(0).supply().volts().orElseThrow());
        near(50.6, reading(stage(powerUp, "U5"), "V", "PDB-BP1").value());
        near(131, reading(stage(powerUp, "U5"), "A", "packs").value());
    }

    @Test
    void theContactWithPreChargeIsLastAndBrokenFirst() {
        PlugOrder plugs = of("linewarden").plugs();
        assertEquals(List.of("BAT1-NEG", "BAT1-POS", "BAT2-NEG", "BAT2-POS"), plugs.made());
        assertEquals(List.of("BAT2-POS", "BAT2-NEG", "BAT1-POS", "BAT1-NEG"), plugs.broken());
        assertEquals(List.of(), plugs.disagrees());
    }

    /** The field story of a red that goes in before the link: the last contact has no pre-charge. */
    @Test
    void putsAWrongOrderRightAndSaysSo() {
        Aircraft clean = sample("linewarden");
        Airframe airframe = Shape.of(Airframe.class)
                .with(clean.airframe(), "plugOrder", List.of("BAT1-NEG", "BAT2-POS", "BAT2-NEG", "BAT1-POS"));
        PlugOrder plugs = PowerUps.of(circuit(Shape.of(Aircraft.class).with(clean, "airframe", airframe)))
                .plugs();
        assertEquals("BAT2-POS", plugs.made().get(3));
        assertEquals(1, plugs.disagrees().size());
    }

    /** 0.05 V for each of 14 cells is 0.70 V; 22 A through 2 x 15.4 milliohm is 0.678 V. */
    @Test
    void packsAreComparedBeforeTheSecondJoins() {
        List<PlugOrder.Act> making = of("dewmaker").plugs().making();
        assertEquals(5, making.size());
        assertTrue(making.get(3) instanceof PlugOrder.Compare compare
                && compare.packs().equals(List.of("PKA", "PKB"))
                && compare.words().contains("less than 0.68 V"));
    }

    @Test
    void asksInsteadOfGuessingACurrent() {
        Aircraft clean = sample("linewarden");
        Shape<UnitType> shape = Shape.of(UnitType.class);
        List<UnitType> types = clean.types().stream()
                .map(type -> type.name().equals("ESC60")
                        ? shape.with(
                                type, "loads", List.of(withoutIdle(type.loads().get(0))))
                        : type)
                .toList();
        PowerUp powerUp = PowerUps.of(circuit(Shape.of(Aircraft.class).with(clean, "types", types)));
        PowerStage first = stage(powerUp, "U1");
        assertTrue(first.readings().stream()
                .anyMatch(one -> one instanceof Expected.CannotTell open
                        && open.at().contains("current")
                        && open.needs().contains("current at rest")));
        assertTrue(first.supply().limitA().isEmpty());
        assertTrue(first.readings().stream()
                .noneMatch(one ->
                        one instanceof Expected.Reading read && read.unit().equals("A")));
    }

    private static LoadSpec withoutIdle(LoadSpec load) {
        return Shape.of(LoadSpec.class).with(load, "idleA", Datum.unknown());
    }
}
