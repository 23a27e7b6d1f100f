package ringout.draw.letter;

import java.io.InputStream;
import java.util.Objects;

/** The bundled fonts as TrueType files, for writers that draw or embed them. */
public final class BundledFont {
    private BundledFont() {}

    /** {@return the bytes of a face, to be closed by the caller} */
    public static InputStream open(Weight weight) {
        String name = weight == Weight.BOLD ? "DejaVuSansCondensed-Bold.ttf" : "DejaVuSansCondensed.ttf";
        return Objects.requireNonNull(BundledFont.class.getResourceAsStream(name), name + " is not bundled");
    }
}
