package ringout.present.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringout.solve.meter.Fault;
import ringout.solve.meter.Reading;

/** Figures and faults as they are printed. */
class OhmsWordsTest {
    @ParameterizedTest
    @CsvSource({
        "0, 0.00 ohm",
        "0.0034, 3.4 milliohm",
        "0.47, 0.47 ohm",
        "59.606, 59.6 ohm",
        "999.9, 999.9 ohm",
        "7500, 7.5 kohm",
        "2.5e6, 2.5 Mohm",
        "Infinity, over range"
    })
    void oneResistance(double ohm, String words) {
        assertEquals(words, OhmsWords.of(ohm));
    }

    @ParameterizedTest
    @CsvSource({
        "58.7, 60.4, 58.7 to 60.4 ohm",
        "0, 0.0799, 0.0 to 79.9 milliohm",
        "0.02, 0.95, 0.02 to 0.95 ohm",
        "900, 1200, 0.9 to 1.2 kohm",
        "60, 60.01, 60.0 ohm",
        "Infinity, Infinity, over range",
        "39000, Infinity, 39.0 kohm to over range"
    })
    void fromOneToAnother(double least, double most, String words) {
        assertEquals(words, OhmsWords.range(least, most));
    }

    @Test
    void whatIsNoNumberIsNeverPrintedAsOne() {
        assertEquals("no connection (over range)", ReadingWords.of(new Reading.NoConnection()));
        assertEquals("open", OhmsWords.cell(new Reading.NoConnection()));
        assertEquals("floating, no voltage from any supply", ReadingWords.of(new Reading.Floating()));
        assertEquals(
                "no voltage can be told: GMC 12 collapses it, only 40 % of the loads can be carried",
                ReadingWords.of(new Reading.Collapse("GMC 12", 0.4)));
        assertEquals("9.5 mV", ReadingWords.of(new Reading.Volts(0.0095, 0, 1)));
        assertEquals("0.00 V", ReadingWords.of(new Reading.Volts(-0.0, 0, 1)));
        assertEquals("-12.00 V", ReadingWords.of(new Reading.Volts(-12, -12, -12)));
    }

    @Test
    void faultsOfOneKindShareAPhrase() {
        Fault one = new Fault(Fault.Kind.OPEN_CONDUCTOR, "W65", List.of("FC-C2-2"), List.of(), List.of());
        Fault two = new Fault(Fault.Kind.OPEN_CONDUCTOR, "W65", List.of("FC-C2-3"), List.of(), List.of());
        Fault crossed = new Fault(Fault.Kind.CROSSED, "W66", List.of("A-1", "A-2"), List.of(), List.of());
        assertEquals(
                List.of("open conductor or contact: W65 (FC-C2-2 or FC-C2-3)", "crossed: W66 (A-1 with A-2)"),
                FaultWords.of(List.of(one, crossed, two)));
    }
}
