package ringout.trace.predict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringout.graph.Circuit;
import ringout.graph.SmallAircraft;
import ringout.graph.Wiring;
import ringout.solve.ProbePoint;
import ringout.solve.meter.Change;
import ringout.solve.power.LoadCase;
import ringout.solve.power.LoadFigure;
import ringout.solve.power.OperatingPoint;
import ringout.solve.power.PowerFlow;
import ringout.trace.candidate.Candidate;
import ringout.trace.candidate.Candidates;
import ringout.trace.candidate.FaultKind;

class SupplyVoltsTest {
    private static Circuit circuit(String sample) {
        return Circuit.all(Wiring.of(SmallAircraft.sample(sample))).get(0);
    }

    private static int at(Circuit circuit, String pin) {
        return ProbePoint.find(circuit.wiring(), pin).orElseThrow();
    }

    private static Candidate titled(Circuit circuit, String title) {
        return Candidates.of(circuit).all().stream()
                .filter(candidate -> candidate.title().equals(title))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no candidate '" + title + "'"));
    }

    /** The oracle is the operating point itself, solved with loads of constant power by another way. */
    @ParameterizedTest
    @ValueSource(strings = {"linewarden", "dewmaker"})
    void withoutAFaultItIsTheOperatingPoint(String sample) {
        Circuit circuit = circuit(sample);
        PowerFlow flow = (PowerFlow) OperatingPoint.of(circuit, LoadCase.AVERAGE);
        for (LoadFigure load : flow.loads()) {
            if (load.fed()) {
                double volts = SupplyVolts.of(circuit)
                        .healthy(load.load().plus(), load.load().zero())
                        .orElseThrow();
                assertEquals(
                        load.volts(),
                        volts,
                        0.01,
                        circuit.wiring().directory().name(load.load().unit()));
            }
        }
    }

    /** The oracle is the operating point of the circuit with the conductor taken out, solved anew. */
    @ParameterizedTest
    @ValueSource(strings = {"linewarden", "dewmaker"})
    void withAnOpenConductorItIsTheOperatingPointWithoutIt(String sample) {
        Circuit circuit = circuit(sample);
        int compared = 0;
        for (Candidate candidate : Candidates.of(circuit).all()) {
            boolean open = candidate.kind() == FaultKind.OPEN_CONDUCTOR || candidate.kind() == FaultKind.RETURN_OPEN;
            if (open && candidate.id().hashCode() % 3 == 0) {
                int edge =
                        ((ringout.solve.meter.Change.Opened) candidate.changes().get(0)).element();
                if (OperatingPoint.of(circuit.without(edge), LoadCase.AVERAGE) instanceof PowerFlow flow) {
                    compared += compare(circuit, candidate, flow);
                }
            }
        }
        assertTrue(compared > 300, "compared " + compared);
    }

    private static int compare(Circuit circuit, Candidate candidate, PowerFlow flow) {
        int compared = 0;
        for (LoadFigure load : flow.loads()) {
            OptionalDouble volts = SupplyVolts.of(circuit)
                    .with(candidate, load.load().plus(), load.load().zero());
            if (load.fed() && volts.isPresent()) {
                // Loads keep their current or power there and their resistance here: with a drop d of V volts the two
                // differ by d * d / V for a constant current, twice that for a constant power;
                // what the other loads draw less at a lower voltage adds two per mille.
                double drop = SupplyVolts.of(circuit)
                                .healthy(load.load().plus(), load.load().zero())
                                .orElseThrow()
                        - load.volts();
                assertEquals(
                        load.volts(),
                        volts.getAsDouble(),
                        0.01 + 0.002 * load.volts() + 2.5 * drop * drop / load.volts(),
                        candidate.title() + " at "
                                + circuit.wiring().directory().name(load.load().unit()));
                compared++;
            }
        }
        return compared;
    }

    @Test
    void aBadContactLowersTheVoltageUnderLoadByItsDrop() {
        Circuit circuit = circuit("linewarden");
        int plus = at(circuit, "GMC-PWR-1");
        int zero = at(circuit, "GMC-PWR-2");
        double healthy = SupplyVolts.of(circuit).healthy(plus, zero).orElseThrow();
        Candidate poor = titled(circuit, "GMC-PWR-1 contact high-resistance");
        double now = SupplyVolts.of(circuit).with(poor, plus, zero).orElseThrow();
        PowerFlow flow = (PowerFlow) OperatingPoint.of(circuit, LoadCase.AVERAGE);
        double amps = flow.intoPin(plus);
        double load = healthy / amps;
        double extra = ((ringout.solve.meter.Change.Added) poor.changes().get(1)).ohm();
        assertEquals(healthy * load / (load + extra), now, 0.05);
        assertTrue(now < 0.95 * healthy, "was " + healthy + ", is " + now);
    }

    @Test
    void aCutGivesNothing() {
        Circuit circuit = circuit("linewarden");
        Candidate pulled = titled(circuit, "GMC-PWR not seated");
        OptionalDouble volts = SupplyVolts.of(circuit).with(pulled, at(circuit, "GMC-PWR-1"), at(circuit, "GMC-PWR-2"));
        assertEquals(0, volts.orElse(0), 1e-9);
    }

    @Test
    void aDeadRegulatorTakesItsRailAndTheRestStays() {
        Circuit circuit = circuit("linewarden");
        Candidate down = titled(circuit, "RG12 12 gives nothing");
        SupplyVolts volts = SupplyVolts.of(circuit);
        assertEquals(
                0,
                volts.with(down, at(circuit, "GMC-PWR-1"), at(circuit, "GMC-PWR-2"))
                        .orElse(0),
                2e-3);
        assertEquals(
                volts.healthy(at(circuit, "FC-C2-1"), at(circuit, "FC-C2-4")).orElseThrow(),
                volts.with(down, at(circuit, "FC-C2-1"), at(circuit, "FC-C2-4")).orElseThrow(),
                0.02);
        assertTrue(volts.packAmps(down).orElseThrow() < volts.packAmps().orElseThrow() - 0.3);
    }

    /** A current is told by the drop over milliohms, so a small error of a voltage is a large one of it. Oracle: solved anew without them. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "W68 return open at LOG-C2-4",
                "W43 return open at FC-MG-1",
                "W61 return open at PDB-T1-2",
                "W67 return open at IMU-C2-4",
                "LOG-C2 not seated",
                "PDB-T2 not seated",
                "PDB-HG not seated"
            })
    void theCurrentOfThePacksIsThatOfTheCircuitWithoutWhatIsOpen(String title) {
        Circuit circuit = circuit("linewarden");
        Candidate open = titled(circuit, title);
        int[] edges = open.changes().stream()
                .mapToInt(change -> ((Change.Opened) change).element())
                .toArray();
        double anew = SupplyVolts.atRest(circuit.without(edges)).packAmps().orElseThrow();
        double updated = SupplyVolts.atRest(circuit).packAmps(open).orElseThrow();
        assertEquals(anew, updated, 0.05, title);
    }
}
