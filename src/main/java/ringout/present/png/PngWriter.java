package ringout.present.png;

import java.awt.Color;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.GraphicsEnvironment;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.List;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import org.apache.batik.transcoder.TranscoderException;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.ImageTranscoder;
import ringout.draw.letter.BundledFont;
import ringout.draw.letter.Weight;
import ringout.present.svg.SvgOutcome;

/** Renders verified sheets with Batik and the bundled font, so that no machine needs to have it installed. */
public final class PngWriter {
    /** Dots per inch at which lettering of 2.5 mm is read on a screen without effort. */
    public static final int SCREEN_DPI = 150;

    private static final float MM_PER_INCH = 25.4f;
    private static final float MM_PER_M = 1000;
    private static final String FORMAT = "javax_imageio_png_1.0";

    private PngWriter() {}

    /** {@return the sheet as PNG, in its size on paper at so many dots per inch} */
    public static byte[] write(SvgOutcome.Verified sheet, int dotsPerInch) {
        Fonts.register();
        Raster raster = new Raster(dotsPerInch);
        raster.addTranscodingHint(ImageTranscoder.KEY_PIXEL_UNIT_TO_MILLIMETER, MM_PER_INCH / dotsPerInch);
        raster.addTranscodingHint(ImageTranscoder.KEY_BACKGROUND_COLOR, Color.WHITE);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            raster.transcode(new TranscoderInput(new StringReader(sheet.text())), new TranscoderOutput(bytes));
        } catch (TranscoderException e) {
            throw new IllegalStateException("a verified sheet could not be rendered", e);
        }
        return bytes.toByteArray();
    }

    /** Encodes with the JDK: the renderer's own encoder takes longer than rendering the sheet. */
    private static final class Raster extends ImageTranscoder {
        private final int dotsPerInch;

        Raster(int dotsPerInch) {
            this.dotsPerInch = dotsPerInch;
        }

        @Override
        public BufferedImage createImage(int width, int height) {
            return new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        }

        @Override
        public void writeImage(BufferedImage image, TranscoderOutput output) throws TranscoderException {
            ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
            try (ImageOutputStream stream = new MemoryCacheImageOutputStream(output.getOutputStream())) {
                ImageTypeSpecifier type = ImageTypeSpecifier.createFromRenderedImage(image);
                IIOMetadata metadata = writer.getDefaultImageMetadata(type, writer.getDefaultWriteParam());
                metadata.mergeTree(FORMAT, resolution());
                writer.setOutput(stream);
                writer.write(null, new IIOImage(image, List.of(), metadata), writer.getDefaultWriteParam());
            } catch (IOException e) {
                throw new TranscoderException(e);
            } finally {
                writer.dispose();
            }
        }

        /** The pHYs chunk, pixels a metre, by which a printer knows the size on paper. */
        private IIOMetadataNode resolution() {
            String perMetre = Integer.toString(Math.round(dotsPerInch * MM_PER_M / MM_PER_INCH));
            IIOMetadataNode chunk = new IIOMetadataNode("pHYs");
            chunk.setAttribute("pixelsPerUnitXAxis", perMetre);
            chunk.setAttribute("pixelsPerUnitYAxis", perMetre);
            chunk.setAttribute("unitSpecifier", "meter");
            IIOMetadataNode root = new IIOMetadataNode(FORMAT);
            root.appendChild(chunk);
            return root;
        }
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
