package ringout.draw.style;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Letters: IEC 60757. The shades are ours. */
class InsulationTest {
    @Test
    void twoColoursAreJoinedInTableOrder() {
        assertEquals(List.of("#d62020", "#1f5fbf"), Insulation.of("RDBU"));
        assertEquals(List.of("#1e8a3c", "#f5d800"), Insulation.of("GNYE"));
        assertEquals(List.of("#ffffff", "#f08000"), Insulation.of("wh/og"));
    }

    @Test
    void whatIsNoCodeHasNoColour() {
        assertEquals(List.of(), Insulation.of("RED"));
        assertEquals(List.of(), Insulation.of("XX"));
        assertEquals(List.of(), Insulation.of("?"));
        assertEquals(List.of(), Insulation.of(""));
    }
}
