package ringout.present.pdf;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Locale;
import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParserFactory;
import org.xml.sax.Attributes;
import org.xml.sax.ContentHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.AttributesImpl;
import org.xml.sax.helpers.DefaultHandler;

/** Writes formatting objects as events, so that no text ever has to be escaped or parsed. */
public final class FoWriter {
    private static final String OBJECTS = "http://www.w3.org/1999/XSL/Format";
    private final ContentHandler out;
    private final Deque<String> open = new ArrayDeque<>();

    /** Starts a document. */
    public FoWriter(ContentHandler out) throws SAXException {
        this.out = out;
        out.startDocument();
        out.startPrefixMapping("fo", OBJECTS);
    }

    /** Starts an element; attributes as name, value, name, value. */
    public FoWriter open(String name, String... attributes) throws SAXException {
        AttributesImpl list = new AttributesImpl();
        for (int i = 0; i + 1 < attributes.length; i += 2) {
            list.addAttribute("", attributes[i], attributes[i], "CDATA", attributes[i + 1]);
        }
        out.startElement(OBJECTS, name, "fo:" + name, list);
        open.push(name);
        return this;
    }

    /** Writes text. */
    public FoWriter text(String text) throws SAXException {
        char[] letters = text.toCharArray();
        out.characters(letters, 0, letters.length);
        return this;
    }

    /** Ends the innermost element. */
    public FoWriter close() throws SAXException {
        String name = open.pop();
        out.endElement(OBJECTS, name, "fo:" + name);
        return this;
    }

    /** Writes an element without content. */
    public FoWriter empty(String name, String... attributes) throws SAXException {
        return open(name, attributes).close();
    }

    /** Writes an element with nothing but text in it. */
    public FoWriter element(String name, String text, String... attributes) throws SAXException {
        return open(name, attributes).text(text).close();
    }

    /** Writes a drawing into the innermost element, which must be an instream-foreign-object. */
    public FoWriter drawing(String svg) throws SAXException {
        try {
            SAXParserFactory parsers = SAXParserFactory.newInstance();
            parsers.setNamespaceAware(true);
            parsers.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            parsers.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            parsers.newSAXParser().parse(new InputSource(new StringReader(svg)), new Inner());
        } catch (ParserConfigurationException | IOException e) {
            throw new IllegalStateException("a drawing cannot be read", e);
        }
        return this;
    }

    /** Ends the document. */
    public void end() throws SAXException {
        out.endPrefixMapping("fo");
        out.endDocument();
    }

    /** A length as an attribute says it. */
    public static String mm(double length) {
        return String.format(Locale.ROOT, "%.3fmm", length);
    }

    /** Passes the elements of a drawing on, without the start and end of its document. */
    private final class Inner extends DefaultHandler {
        @Override
        public void startPrefixMapping(String prefix, String uri) throws SAXException {
            out.startPrefixMapping(prefix, uri);
        }

        @Override
        public void endPrefixMapping(String prefix) throws SAXException {
            out.endPrefixMapping(prefix);
        }

        @Override
        public void startElement(String uri, String local, String name, Attributes attributes) throws SAXException {
            out.startElement(uri, local, name, attributes);
        }

        @Override
        public void endElement(String uri, String local, String name) throws SAXException {
            out.endElement(uri, local, name);
        }

        @Override
        public void characters(char[] letters, int start, int length) throws SAXException {
            out.characters(letters, start, length);
        }
    }
}
