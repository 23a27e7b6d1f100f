package ringout.present.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.net.URI;
import org.apache.xmlgraphics.io.Resource;
import org.apache.xmlgraphics.io.ResourceResolver;
import ringout.draw.letter.BundledFont;
import ringout.draw.letter.Weight;

/** Gives the formatter the bundled fonts and nothing else: no file of the machine, nothing from a network. */
final class BundledResources implements ResourceResolver {
    static final URI BASE = URI.create("bundled:///");
    static final String REGULAR = "regular.ttf";
    static final String BOLD = "bold.ttf";

    @Override
    public Resource getResource(URI uri) throws IOException {
        if (uri.equals(BASE.resolve(REGULAR))) {
            return new Resource(BundledFont.open(Weight.REGULAR));
        }
        if (uri.equals(BASE.resolve(BOLD))) {
            return new Resource(BundledFont.open(Weight.BOLD));
        }
        throw new IOException("nothing is loaded from outside the program: " + uri);
    }

    @Override
    public OutputStream getOutputStream(URI uri) throws IOException {
        throw new IOException("nothing is written beside the document: " + uri);
    }
}
