package ringout.solve.meter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringout.graph.Circuit;
import ringout.model.Event;

/** Voltages with the power on, held against the trade's table of power-up stages and against Ohm's law by hand. */
class VoltsQuestionTest {
    private static VoltsAnswer ask(Circuit circuit, String red, String black) {
        return VoltsQuestion.ask(circuit, MeterTests.at(circuit, red), MeterTests.at(circuit, black), Optional.empty());
    }

    private static Reading.Volts volts(VoltsAnswer answer) {
        return (Reading.Volts) answer.reading();
    }

    private static List<Fault> faults(VoltsAnswer answer, Class<? extends Reading> shown) {
        return answer.meanings().stream()
                .filter(meaning -> shown.isInstance(meaning.first()))
                .flatMap(meaning -> meaning.faults().stream())
                .toList();
    }

    /** Source: the trade's stages of the first power-up: 5.3 V +- 0.15, 6.0 V +- 0.2, 12.0 V +- 0.3. */
    @ParameterizedTest
    @CsvSource({"FC-P1-1, FC-P1-5, 5.3, 0.16", "LGC-PWR-1, LGC-PWR-2, 6.0, 0.2", "VTX-PWR-1, VTX-PWR-2, 12.0, 0.3"})
    void railsOfTheStages(String red, String black, double rail, double tolerance) {
        Reading.Volts at = volts(ask(MeterTests.linewarden(), red, black));
        assertEquals(rail, at.volts(), tolerance);
        assertTrue(at.least() >= rail - tolerance - 0.15 && at.least() < rail, at.toString());
        assertTrue(at.least() <= rail - tolerance + 0.01, at.toString());
        assertTrue(at.most() <= rail + tolerance + 0.01 && at.most() > rail + tolerance - 0.1, at.toString());
    }

    /** Packs full 50.4 V (4.2 V a cell); 50.16 V with the packs as measured, 25.1 V each. */
    @Test
    void thePackVoltageAtTheBoard() {
        Reading.Volts at = volts(ask(MeterTests.linewarden(), "PDB-T2-1", "PDB-T2-2"));
        assertEquals(50.2, at.volts(), 0.1);
        assertEquals(50.4, at.most(), 0.1);
        assertTrue(at.least() > 36 && at.least() < 39.6, at.toString());
    }

    /** 0.65 A through both conductors of W78, 20 AWG (0.518 mm2), 160 mm, and four contacts: by Ohm's law from the list. */
    @Test
    void theDropOfTheLastLead() {
        Circuit circuit = MeterTests.linewarden();
        VoltsAnswer far = ask(circuit, "LGC-PWR-1", "LGC-PWR-2");
        double near = volts(ask(circuit, "RG6-O-1", "RG6-O-2")).volts();
        assertEquals(0.65, far.amps().orElseThrow(), 1e-6);
        assertTrue(near - volts(far).volts() > 0.65 * 0.160 / 58 / 0.518, near + " " + far.reading());
        assertTrue(near - volts(far).volts() < 0.65 * 2 * (0.160 / 58 / 0.518 + 2 * 0.02), near + " " + far.reading());
    }

    @Test
    void redAndBlackExchangedReadsNegative() {
        Circuit circuit = MeterTests.linewarden();
        Reading.Volts there = volts(ask(circuit, "LGC-PWR-1", "LGC-PWR-2"));
        Reading.Volts back = volts(ask(circuit, "LGC-PWR-2", "LGC-PWR-1"));
        assertEquals(-there.volts(), back.volts(), 1e-12);
        assertEquals(-there.most(), back.least(), 1e-12);
    }

    @Test
    void everyBreakOfTheOnlyWayIsToldAndAReturnWithASecondWayIsNot() {
        VoltsAnswer answer = ask(MeterTests.linewarden(), "LGC-PWR-1", "LGC-PWR-2");
        List<String> broken = faults(answer, Reading.Floating.class).stream()
                .filter(fault -> fault.kind() == Fault.Kind.OPEN_CONDUCTOR)
                .map(fault -> fault.object() + " " + fault.details())
                .toList();
        assertEquals(
                List.of("W78 [RG6-O-1]", "W77 [PDB-T4-1]", "W03 [BAT2-POS-1]", "W02 [BAT1-POS-1]", "W01 [PDB-BN-1]"),
                broken);
        assertTrue(
                answer.unseen().stream().anyMatch(fault -> fault.details().equals(List.of("RG6-O-2"))),
                "the command lead is a second return: " + answer.unseen());
        List<String> dead = faults(answer, Reading.Floating.class).stream()
                .filter(fault -> fault.kind() == Fault.Kind.SOURCE_OFF)
                .map(Fault::object)
                .toList();
        assertEquals(List.of("RG6 regulator", "BAT1 cells", "BAT2 cells"), dead);
    }

    @Test
    void aPulledPlugKeepsItsVoltageOnTheLeadSideOnly() {
        Circuit pulled = MeterTests.linewarden("GMC-PWR");
        VoltsAnswer lead = ask(pulled, "W72@GMC-PWR-1", "W72@GMC-PWR-2");
        assertEquals(12, volts(lead).volts(), 1e-3);
        assertEquals(
                new Reading.Floating(), ask(pulled, "GMC-PWR-1", "GMC-PWR-2").reading());
        Meaning crossed = lead.meanings().get(0);
        assertEquals(-12, ((Reading.Volts) crossed.first()).volts(), 1e-3);
        assertEquals("W72", crossed.faults().get(0).object());
    }

    @Test
    void signalsFloat() {
        assertEquals(
                new Reading.Floating(),
                ask(MeterTests.linewarden(), "FC-C2-H", "FC-C2-L").reading());
    }

    @Test
    void twoRailsAgainstEachOther() {
        Reading.Volts at = volts(ask(MeterTests.linewarden(), "RG12-O1-1", "FC-P1-1"));
        assertEquals(12 - 5.3, at.volts(), 0.1);
    }

    /** The event takes 0.9 A an actuator instead of what they take at rest, so the drop to the gear controller grows. */
    @Test
    void anEventLowersTheVoltage() {
        Circuit circuit = MeterTests.linewarden();
        Event moving = circuit.wiring().aircraft().events().get(0);
        VoltsAnswer during = VoltsQuestion.ask(
                circuit, MeterTests.at(circuit, "LGC-PWR-1"), MeterTests.at(circuit, "LGC-PWR-2"), Optional.of(moving));
        VoltsAnswer rest = ask(circuit, "LGC-PWR-1", "LGC-PWR-2");
        assertTrue(volts(during).volts() < volts(rest).volts(), during.reading() + " " + rest.reading());
        assertTrue(during.amps().orElseThrow() > 1.8, "" + during.amps());
        assertEquals(Optional.of("gear moving"), during.event());
    }
}
