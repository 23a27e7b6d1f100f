package ringout.present.pdf;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.time.Instant;
import java.util.Date;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Set;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.apache.fop.apps.FOUserAgent;
import org.apache.fop.apps.Fop;
import org.apache.fop.apps.FopFactory;
import org.apache.fop.apps.FopFactoryBuilder;
import org.apache.fop.apps.io.ResourceResolverFactory;
import org.apache.fop.configuration.ConfigurationException;
import org.apache.fop.configuration.DefaultConfigurationBuilder;
import org.apache.fop.events.Event;
import org.apache.fop.events.EventFormatter;
import org.xml.sax.ContentHandler;
import org.xml.sax.SAXException;

/**
 * Formats a stream of formatting objects (W3C XSL 1.1) into a PDF: with the bundled fonts embedded and no other, nothing
 * loaded from outside, and the same bytes for the same stream.
 */
public final class PdfEngine {
    /** Family of the bundled fonts, regular and bold. */
    public static final String FAMILY = "DejaVu Sans Condensed";

    /** No clock in a document: equal data must give equal bytes. */
    private static final Instant DATE = Instant.parse("2000-01-01T12:00:00Z");

    /** Held, or the level set here could be forgotten with it. */
    private static final Logger CHATTER = Logger.getLogger("org.apache.fop");

    /** Calls it severe that our base is no address a drawing could load from: none may load anything. */
    private static final Logger ADDRESSES = Logger.getLogger("org.apache.fop.fo.FONode");

    private static final Set<String> MISFITS = Set.of(
            "lineOverflows",
            "regionOverflow",
            "objectTooWide",
            "viewportIPDOverflow",
            "viewportBPDOverflow",
            "leaderWiderThanLine",
            "tableCellOverflow");

    private static final String CONFIGURATION = """
            <fop version="1.0"><use-cache>false</use-cache><renderers><renderer mime="application/pdf"><fonts>
            <font embed-url="@REGULAR@" kerning="no"><font-triplet name="@FAMILY@" style="normal" weight="normal"/></font>
            <font embed-url="@BOLD@" kerning="no"><font-triplet name="@FAMILY@" style="normal" weight="bold"/></font>
            </fonts></renderer></renderers></fop>
            """.replace("@REGULAR@", BundledResources.REGULAR)
            .replace("@BOLD@", BundledResources.BOLD)
            .replace("@FAMILY@", FAMILY);

    /** Enough to see what is wrong. */
    private static final int MOST_FLAWS = 20;

    /** Writes the formatting objects of one file. */
    @FunctionalInterface
    public interface Content {
        /** Writes them all, root element and all. */
        void writeTo(ContentHandler objects) throws SAXException;
    }

    private PdfEngine() {}

    /** {@return a formatter with the bundled fonts; making one costs some tenths of a second} */
    public static FopFactory factory() {
        CHATTER.setLevel(Level.SEVERE);
        ADDRESSES.setLevel(Level.OFF);
        try {
            BundledResources fonts = new BundledResources();
            FopFactory factory = new FopFactoryBuilder(BundledResources.BASE, fonts)
                    .setConfiguration(new DefaultConfigurationBuilder()
                            .build(new ByteArrayInputStream(CONFIGURATION.getBytes(UTF_8))))
                    .build();
            // The configuration puts the resolver of the machine back, for fonts alone.
            factory.getFontManager()
                    .setResourceResolver(
                            ResourceResolverFactory.createInternalResourceResolver(BundledResources.BASE, fonts));
            return factory;
        } catch (ConfigurationException e) {
            throw new IllegalStateException("the formatter refuses its configuration", e);
        }
    }

    /** {@return the file of some formatting objects} */
    public static PdfFile write(PdfInfo info, Content content) {
        FopFactory factory = factory();
        FOUserAgent agent = factory.newFOUserAgent();
        agent.setTitle(info.title());
        agent.setSubject(info.subject());
        agent.setCreator(info.creator());
        agent.setProducer(info.creator());
        agent.setCreationDate(Date.from(DATE));
        Set<String> flaws = new LinkedHashSet<>();
        agent.getEventBroadcaster().addEventListener(event -> note(event, flaws));
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            Fop fop = factory.newFop("application/pdf", agent, bytes);
            content.writeTo(fop.getDefaultHandler());
        } catch (SAXException e) {
            throw new IllegalStateException("the formatter refuses the document", e);
        }
        return new PdfFile(
                StableBytes.of(bytes.toByteArray()),
                flaws.stream().limit(MOST_FLAWS).toList());
    }

    private static void note(Event event, Set<String> flaws) {
        String id = event.getEventID();
        if (MISFITS.contains(id.substring(id.lastIndexOf('.') + 1))) {
            flaws.add(EventFormatter.format(event, Locale.ROOT));
        }
    }
}
