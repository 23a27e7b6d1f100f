package ringout.draw;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** A finished sheet as a test reads it: elements by their facts, with what is written and drawn in them. */
public final class SvgPage {
    private final Element root;

    private SvgPage(Element root) {
        this.root = root;
    }

    /** Reads a sheet. */
    public static SvgPage of(String svg) {
        try {
            var builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
            return new SvgPage(
                    builder.parse(new InputSource(new StringReader(svg))).getDocumentElement());
        } catch (SAXException | IOException | ParserConfigurationException e) {
            throw new IllegalArgumentException(e);
        }
    }

    /** All elements that state a fact, by its value; a value stated twice fails. */
    public Map<String, Element> by(String fact) {
        Map<String, Element> found = new LinkedHashMap<>();
        for (Element element : with(fact)) {
            if (found.put(element.getAttribute("data-" + fact), element) != null) {
                throw new IllegalStateException(element.getAttribute("data-" + fact) + " is there twice");
            }
        }
        return found;
    }

    /** All elements that state a fact. */
    public List<Element> with(String fact) {
        List<Element> found = new ArrayList<>();
        for (Element element : all("*")) {
            if (element.hasAttribute("data-" + fact)) {
                found.add(element);
            }
        }
        return found;
    }

    private List<Element> all(String name) {
        return below(root, name);
    }

    /** All elements of a name below one. */
    public static List<Element> below(Element parent, String name) {
        NodeList nodes = parent.getElementsByTagName(name);
        List<Element> found = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            found.add((Element) nodes.item(i));
        }
        return found;
    }

    /** What is written below an element, in order. */
    public static List<String> texts(Element parent) {
        return below(parent, "text").stream().map(Element::getTextContent).toList();
    }

    /** What is written anywhere. */
    public List<String> texts() {
        return texts(root);
    }

    /** A number of an element. */
    public static double number(Element element, String name) {
        return Double.parseDouble(element.getAttribute(name));
    }
}
