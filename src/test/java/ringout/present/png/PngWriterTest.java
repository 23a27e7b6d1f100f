package ringout.present.png;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import ringout.draw.DemoScene;
import ringout.draw.paper.SheetSize;
import ringout.draw.wiring.WiringDrawing;
import ringout.present.svg.SvgOutcome;

class PngWriterTest {
    private static SvgOutcome.Verified sheet;

    @BeforeAll
    static void draw() {
        WiringDrawing.Fits fits = (WiringDrawing.Fits) WiringDrawing.of(DemoScene.of(), SheetSize.all());
        sheet = (SvgOutcome.Verified) SvgOutcome.of(fits.sheet());
    }

    @Test
    void pictureHasTheSizeOfThePaper() throws Exception {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(PngWriter.write(sheet, 50)));
        assertEquals(594 / 25.4 * 50, image.getWidth(), 1);
        assertEquals(420 / 25.4 * 50, image.getHeight(), 1);
    }

    @Test
    void pictureIsInkOnWhitePaper() throws Exception {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(PngWriter.write(sheet, 100)));
        assertEquals(0xFFFFFFFF, image.getRGB(1, 1));
        int dark = 0;
        for (int x = 0; x < image.getWidth(); x++) {
            for (int y = 0; y < image.getHeight(); y++) {
                dark += (image.getRGB(x, y) & 0xFF) < 128 ? 1 : 0;
            }
        }
        double share = (double) dark / image.getWidth() / image.getHeight();
        assertTrue(share > 0.01 && share < 0.2, "share of dark points " + share);
    }

    @Test
    void sameSheetGivesTheSameBytes() {
        assertArrayEquals(PngWriter.write(sheet, 50), PngWriter.write(sheet, 50));
    }
}
