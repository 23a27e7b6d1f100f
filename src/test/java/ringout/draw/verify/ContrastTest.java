package ringout.draw.verify;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ratios on white by the formula of WCAG 2.x, worked from its definition; #767676 and #777777 are its well-known pair. */
class ContrastTest {
    @ParameterizedTest
    @CsvSource({
        "#000000, 21.000",
        "#767676, 4.542",
        "#777777, 4.478",
        "#0000ff, 8.592",
        "#ff0000, 3.998",
        "#ffa500, 1.975",
        "#00ff00, 1.372",
        "#ffff00, 1.074"
    })
    void ratioOnWhite(String colour, double expected) {
        assertEquals(expected, Contrast.ratio(colour, "#ffffff"), 0.001);
    }

    @ParameterizedTest
    @CsvSource({"#ff0000, #0000ff, 2.149"})
    void ratioOfTwo(String one, String other, double expected) {
        assertEquals(expected, Contrast.ratio(one, other), 0.001);
        assertEquals(expected, Contrast.ratio(other, one), 0.001);
    }
}
