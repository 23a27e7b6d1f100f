package ringout.draw.harness;

import java.io.StringReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Assertions;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;
import ringout.check.Catalogue;
import ringout.check.Review;
import ringout.draw.ink.StyledSheet;
import ringout.finding.Report;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.present.svg.SvgOutcome;
import ringout.read.AircraftReader;

/** Finished sheets as a reader meets them: elements of verified SVG, told by class and data. */
final class Leaves {
    private Leaves() {}

    /** Samples are read and reviewed once. */
    private static final Map<String, List<Circuit>> SAMPLES = new HashMap<>();

    private static final Map<String, Report> REPORTS = new HashMap<>();

    static List<Circuit> circuits(String sample) {
        return SAMPLES.computeIfAbsent(
                sample,
                name -> Circuit.all(Wiring.of(
                        AircraftReader.read(Path.of("samples/" + name)).aircraft())));
    }

    static Report report(List<Circuit> circuits) {
        String name = circuits.get(0).wiring().aircraft().name();
        return REPORTS.computeIfAbsent(name, key -> Review.of(circuits, Catalogue.all(), Review.NO_DAY));
    }

    /** The root of a sheet; a sheet with a flaw fails the test. */
    static Element verified(StyledSheet sheet) {
        SvgOutcome outcome = SvgOutcome.of(sheet);
        Assertions.assertTrue(outcome instanceof SvgOutcome.Verified, outcome::toString);
        return parsed(((SvgOutcome.Verified) outcome).text());
    }

    static Element parsed(String svg) {
        try {
            return DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new InputSource(new StringReader(svg)))
                    .getDocumentElement();
        } catch (Exception e) {
            throw new AssertionError(e);
        }
    }

    /** All elements of a class below some others, in their order. */
    static List<Element> of(List<Element> roots, String name) {
        List<Element> found = new ArrayList<>();
        roots.forEach(root ->
                walk(root, e -> Set.of(e.getAttribute("class").split(" ")).contains(name), found));
        return found;
    }

    static List<Element> of(Element root, String name) {
        return of(List.of(root), name);
    }

    private static void walk(Element root, Predicate<Element> wanted, List<Element> found) {
        for (Node node = root.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element element) {
                if (wanted.test(element)) {
                    found.add(element);
                }
                walk(element, wanted, found);
            }
        }
    }

    /** The texts below an element, in the order of the ink. */
    static List<String> texts(Element root) {
        List<Element> found = new ArrayList<>();
        walk(root, e -> e.getTagName().equals("text"), found);
        return found.stream().map(Element::getTextContent).toList();
    }

    static double number(Element element, String name) {
        return Double.parseDouble(element.getAttribute(name));
    }
}
