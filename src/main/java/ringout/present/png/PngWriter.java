package ringout.present.png;

import java.awt.Color;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.GraphicsEnvironment;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import org.apache.batik.transcoder.TranscoderException;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.PNGTranscoder;
import ringout.draw.letter.BundledFont;
import ringout.draw.letter.Weight;
import ringout.present.svg.SvgOutcome;

/** Renders verified sheets with Batik and the bundled font, so that no machine needs to have it installed. */
public final class PngWriter {
    /** Dots per inch at which lettering of 2.5 mm is read on a screen without effort. */
    public static final int SCREEN_DPI = 150;

    private static final float MM_PER_INCH = 25.4f;

    private PngWriter() {}

    /** {@return the sheet as PNG, in its size on paper at so many dots per inch} */
    public static byte[] write(SvgOutcome.Verified sheet, int dotsPerInch) {
        Fonts.register();
        PNGTranscoder transcoder = new PNGTranscoder();
        transcoder.addTranscodingHint(PNGTranscoder.KEY_PIXEL_UNIT_TO_MILLIMETER, MM_PER_INCH / dotsPerInch);
        transcoder.addTranscodingHint(PNGTranscoder.KEY_BACKGROUND_COLOR, Color.WHITE);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            transcoder.transcode(new TranscoderInput(new StringReader(sheet.text())), new TranscoderOutput(bytes));
        } catch (TranscoderException e) {
            throw new IllegalStateException("a verified sheet could not be rendered", e);
        }
        return bytes.toByteArray();
    }

    /** Makes the bundled faces known once, before the renderer asks which there are. */
    private static final class Fonts {
        private static final boolean KNOWN = registerAll();

        static void register() {
            if (!KNOWN) {
                throw new IllegalStateException("fonts not registered");
            }
        }

        private static boolean registerAll() {
            for (Weight weight : Weight.values()) {
                try (InputStream bytes = BundledFont.open(weight)) {
                    GraphicsEnvironment.getLocalGraphicsEnvironment()
                            .registerFont(Font.createFont(Font.TRUETYPE_FONT, bytes));
                } catch (FontFormatException e) {
                    throw new IllegalStateException("bundled font " + weight, e);
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            }
            return true;
        }
    }
}
