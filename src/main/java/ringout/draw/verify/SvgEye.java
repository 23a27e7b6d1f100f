package ringout.draw.verify;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import ringout.draw.letter.Lettering;
import ringout.draw.letter.Weight;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;
import ringout.draw.verify.Seen.Group;

/** Reads a sheet: the elements that the SVG writer uses, and no others. */
final class SvgEye {
    private static final Set<String> SILENT = Set.of("title", "desc", "defs", "metadata");

    private final Seen seen = new Seen();
    private int order;

    private SvgEye() {}

    static Seen read(String svg) {
        SvgEye eye = new SvgEye();
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            var builder = factory.newDocumentBuilder();
            builder.setErrorHandler(null);
            Element root = builder.parse(new InputSource(new StringReader(svg))).getDocumentElement();
            eye.root(root);
        } catch (SAXException | IOException | ParserConfigurationException | NumberFormatException e) {
            eye.complain("not well-formed: " + e.getMessage());
        }
        return eye.seen;
    }

    private void complain(String words) {
        seen.unreadable.add(new Flaw(Flaw.Kind.UNREADABLE, words, new Point(0, 0)));
    }

    private void root(Element svg) {
        String[] box = svg.getAttribute("viewBox").split(" ");
        if (!svg.getTagName().equals("svg") || box.length != 4) {
            complain("the root is no svg with a view box");
            return;
        }
        double width = Double.parseDouble(box[2]);
        double height = Double.parseDouble(box[3]);
        seen.sheet = new Area(0, 0, width, height);
        boolean millimetres = svg.getAttribute("width").equals(box[2] + "mm")
                && svg.getAttribute("height").equals(box[3] + "mm")
                && box[0].equals("0")
                && box[1].equals("0");
        if (!millimetres) {
            complain("a user unit is not a millimetre");
        }
        children(svg, new Group(0, "", Map.of(), Optional.empty()));
    }

    private void children(Element parent, Group group) {
        for (Node node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element element && !SILENT.contains(element.getTagName())) {
                order++;
                element(element, new Group(order, element.getAttribute("class"), data(element), Optional.of(group)));
            }
        }
    }

    private static Map<String, String> data(Element element) {
        Map<String, String> data = new HashMap<>();
        NamedNodeMap attributes = element.getAttributes();
        for (int i = 0; i < attributes.getLength(); i++) {
            String name = attributes.item(i).getNodeName();
            if (name.startsWith("data-")) {
                data.put(name.substring(5), attributes.item(i).getNodeValue());
            }
        }
        return data;
    }

    private void element(Element e, Group group) {
        if (e.hasAttribute("transform") && !e.getTagName().equals("text")) {
            complain("transform on " + e.getTagName());
        }
        switch (e.getTagName()) {
            case "g" -> children(e, group);
            case "rect" -> patch(e, group, new Area(num(e, "x"), num(e, "y"), num(e, "width"), num(e, "height")), true);
            case "ellipse" -> patch(e, group, ellipse(e), false);
            case "polygon" -> patch(e, group, around(points(e)), false);
            case "polyline" ->
                seen.lines.add(
                        new Seen.Line(order, group, points(e), e.getAttribute("stroke"), num(e, "stroke-width")));
            case "text" -> text(e, group);
            default -> complain("element " + e.getTagName());
        }
    }

    private void patch(Element e, Group group, Area area, boolean upright) {
        seen.patches.add(new Seen.Patch(
                order, group, area, upright, e.getAttribute("fill"), e.getAttribute("stroke"), num(e, "stroke-width")));
    }

    private static Area ellipse(Element e) {
        double rx = num(e, "rx");
        double ry = num(e, "ry");
        return new Area(num(e, "cx") - rx, num(e, "cy") - ry, 2 * rx, 2 * ry);
    }

    private static double num(Element e, String name) {
        return e.hasAttribute(name) ? Double.parseDouble(e.getAttribute(name)) : 0;
    }

    private static List<Point> points(Element e) {
        List<Point> points = new ArrayList<>();
        for (String pair : e.getAttribute("points").split(" ")) {
            int comma = pair.indexOf(',');
            points.add(new Point(
                    Double.parseDouble(pair.substring(0, comma)), Double.parseDouble(pair.substring(comma + 1))));
        }
        return points;
    }

    private static Area around(List<Point> points) {
        double left = points.stream().mapToDouble(Point::x).min().orElse(0);
        double right = points.stream().mapToDouble(Point::x).max().orElse(0);
        double top = points.stream().mapToDouble(Point::y).min().orElse(0);
        double bottom = points.stream().mapToDouble(Point::y).max().orElse(0);
        return new Area(left, top, right - left, bottom - top);
    }

    private void text(Element e, Group group) {
        String words = e.getTextContent();
        double cap = Lettering.capOf(num(e, "font-size"));
        Weight weight = e.getAttribute("font-weight").equals("bold") ? Weight.BOLD : Weight.REGULAR;
        double width = Lettering.width(words, cap, weight);
        double x = num(e, "x");
        double y = num(e, "y");
        double start =
                switch (e.getAttribute("text-anchor")) {
                    case "middle" -> -width / 2;
                    case "end" -> -width;
                    default -> 0;
                };
        double up = cap + Lettering.riseOf(words, cap);
        double down = Lettering.hangs(words) ? Lettering.descentOf(cap) : 0;
        Area area = new Area(x + start, y - up, width, up + down);
        if (e.hasAttribute("transform")) {
            if (!e.getAttribute("transform").startsWith("rotate(-90 " + e.getAttribute("x") + " ")) {
                complain("text " + words + " is turned in a way that is not understood");
            }
            area = new Area(x - up, y - start - width, up + down, width);
        }
        double squeeze = e.hasAttribute("textLength") ? num(e, "textLength") / width : 1;
        seen.texts.add(new Seen.Text(order, group, words, area, cap, e.getAttribute("fill"), squeeze));
    }
}
