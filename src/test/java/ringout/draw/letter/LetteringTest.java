package ringout.draw.letter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.io.InputStream;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

class LetteringTest {
    private static final double EXACT = 1e-3;

    /** Oracle: the font engine of the JDK over the bundled font files. */
    private static GlyphVector glyphs(String text, Weight weight) throws Exception {
        try (InputStream bytes = BundledFont.open(weight)) {
            Font font = Font.createFont(Font.TRUETYPE_FONT, bytes).deriveFont(1000f);
            return font.createGlyphVector(new FontRenderContext(new AffineTransform(), true, true), text);
        }
    }

    @Test
    void widthsAreThoseOfTheBundledFont() throws Exception {
        String text = "FC-CAN1-2 W68 26 GNYE 120 \u03A9 \u00C5 <\u2026> \u0416 j\u0142";
        for (Weight weight : Weight.values()) {
            double em = Lettering.emOf(2.5);
            double oracle = glyphs(text, weight).getLogicalBounds().getWidth() / 1000 * em;
            assertEquals(oracle, Lettering.width(text, 2.5, weight), EXACT);
        }
    }

    @Test
    void capitalHeightIsThatOfTheLetterH() throws Exception {
        for (Weight weight : Weight.values()) {
            double height = glyphs("H", weight).getVisualBounds().getHeight() / 1000;
            assertEquals(2.5, Lettering.emOf(2.5) * height, 0.01);
        }
    }

    @Test
    void lettersStayWithinTheDepthAndRiseThatLayoutCountsOn() throws Exception {
        for (Weight weight : Weight.values()) {
            var bounds = glyphs("gjpqyQ,;()[]{}|_/@$\u00C5\u00C9\u0130\u0416", weight)
                    .getVisualBounds();
            double cap = 2.5;
            double em = Lettering.emOf(cap) / 1000;
            assertTrue(bounds.getMaxY() * em <= Lettering.descentOf(cap) + 0.35, "depth " + bounds.getMaxY() * em);
            assertTrue(-bounds.getMinY() * em <= cap + Lettering.riseOf("\u00C5", cap) + 0.05);
            double plain = glyphs("ABCDEFGHIKLMNOPRSTUVWXZ0123456789-+.", weight)
                            .getVisualBounds()
                            .getMaxY()
                    * em;
            assertTrue(plain < 0.06, "hangs by " + plain);
        }
    }

    @Property(seed = "20261125")
    void cutTextIsNeverWiderThanItsRoom(
            @ForAll @StringLength(max = 80) String text, @ForAll @DoubleRange(min = 5, max = 60) double room) {
        String printable = Lettering.printable(text);
        String cut = Lettering.fit(printable, 2.5, Weight.REGULAR, room);
        assertTrue(Lettering.width(cut, 2.5, Weight.REGULAR) <= room + EXACT);
        for (String line : Lettering.wrap(printable, 2.5, Weight.REGULAR, room, 3)) {
            assertTrue(Lettering.width(line, 2.5, Weight.REGULAR) <= room + EXACT, line);
        }
    }

    @Test
    void wrappingKeepsWordsWhole() {
        double room = Lettering.width("power monitor and", 2.5, Weight.REGULAR) + 0.1;
        assertEquals(
                List.of("power monitor and", "5.3 V regulator"),
                Lettering.wrap("power monitor and 5.3 V regulator", 2.5, Weight.REGULAR, room, 2));
    }

    @Test
    void directionAndControlMarksAreNotPrinted() {
        assertEquals("a\uFFFDb \uFFFDc", Lettering.printable(" a\u202Eb\t\n \u0000c "));
        assertEquals("\uFFFD", Lettering.printable("\uD800"));
    }
}
