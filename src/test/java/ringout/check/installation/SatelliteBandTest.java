package ringout.check.installation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Harmonics and path loss held against the trade handbook's vectors. */
class SatelliteBandTest {
    @Test
    void freeSpace() {
        assertEquals(25.9, SatelliteBand.couplingDb(300, 1575.42), 0.05);
        // ten times the distance: 20 dB more
        assertEquals(45.9, SatelliteBand.couplingDb(3000, 1575.42), 0.05);
    }

    /** Cellular uplink hits L1 twice over; 868 and 915 MHz are clean; 1.2 GHz video sits in L2; 406 MHz times 3 touches L2. */
    @ParameterizedTest
    @CsvSource({
        "788, 798, L1 x2",
        "902, 928, ''",
        "863, 870, ''",
        "433.05, 434.79, ''",
        "1220, 1230, L2 x1",
        "406, 406.1, L2 x3",
        "389, 390, L5 x3",
        "2400, 2483.5, ''",
        "805, 806, L1 x2",
        "805.1, 806, ''",
        "779, 779.5, L1 x2",
        "778, 779.4, ''"
    })
    void harmonics(double low, double high, String wanted) {
        List<String> hits = SatelliteBand.ALL.stream()
                .flatMap(band -> band.hit(low, high).stream().map(hit -> band.name() + " x" + hit.times()))
                .toList();
        assertEquals(wanted, hits.stream().collect(Collectors.joining(" ")));
    }
}
