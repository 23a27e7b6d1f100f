package ringout.present.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import ringout.draw.DemoScene;
import ringout.draw.ink.Ink;
import ringout.draw.ink.Pen;
import ringout.draw.ink.Stroke;
import ringout.draw.ink.StyledSheet;
import ringout.draw.ink.StyledSheet.Promise;
import ringout.draw.ink.Tag;
import ringout.draw.ink.Words;
import ringout.draw.letter.Weight;
import ringout.draw.paper.Point;
import ringout.draw.paper.SheetSize;
import ringout.draw.scene.Wire;
import ringout.draw.verify.Flaw;
import ringout.draw.wiring.WiringDrawing;

class SvgWriterTest {
    private static Document parse(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }

    private static StyledSheet sheet(List<Ink> ink, List<Promise> promised) {
        return new StyledSheet(SheetSize.A4, "t", "", List.of(), ink, promised);
    }

    private static StyledSheet demo() {
        return ((WiringDrawing.Fits) WiringDrawing.of(DemoScene.of(), SheetSize.all())).sheet();
    }

    @Test
    void hostileTextComesBackAsItWas() throws Exception {
        String hostile = "<script>alert(\"1\")</script> & '\u03A9' ]]>";
        Words words = Words.of(hostile, new Point(1, 2), Words.Align.START, 2.5, Weight.REGULAR, "#000000");
        Tag tag = Tag.of("unit").withId("unit", hostile).with("unit", hostile).titled(hostile, hostile);
        Ink group = new ringout.draw.ink.Cluster(tag, List.of(words));
        Document document =
                parse(SvgWriter.write(sheet(List.of(group), List.of())).text());
        assertEquals(hostile, document.getElementsByTagName("text").item(0).getTextContent());
        Element unit = (Element) document.getElementsByTagName("g").item(0);
        assertEquals(hostile, unit.getAttribute("data-unit"));
        assertEquals(hostile, unit.getElementsByTagName("title").item(0).getTextContent());
        assertTrue(unit.getAttribute("id").matches("[A-Za-z][A-Za-z0-9_.-]*"), unit.getAttribute("id"));
    }

    @Test
    void whatXmlForbidsIsReplaced() throws Exception {
        Words words = Words.of("a\u0001\uD800b", new Point(1, 2), Words.Align.START, 2.5, Weight.REGULAR, "#000000");
        Document document =
                parse(SvgWriter.write(sheet(List.of(words), List.of())).text());
        assertEquals(
                "a\uFFFD\uFFFDb", document.getElementsByTagName("text").item(0).getTextContent());
    }

    @Test
    void numbersAreShortAndPlain() {
        assertEquals("0", Numbers.of(-0.0001));
        assertEquals("1.5", Numbers.of(1.5));
        assertEquals("100", Numbers.of(100.00004));
        assertEquals("0.001", Numbers.of(1e-3));
    }

    /** The contract of pages and tests: classes, data, titles, and identifiers used once. */
    @Test
    void everyWireAndPinIsNamed() throws Exception {
        Document document = parse(SvgWriter.write(demo()).text());
        NodeList all = document.getElementsByTagName("*");
        Set<String> ids = new HashSet<>();
        Set<String> wires = new HashSet<>();
        for (int i = 0; i < all.getLength(); i++) {
            Element e = (Element) all.item(i);
            if (e.hasAttribute("id")) {
                assertTrue(ids.add(e.getAttribute("id")), "used twice: " + e.getAttribute("id"));
            }
            if (e.getAttribute("class").equals("wire")) {
                for (String name : List.of("data-wire", "data-net", "data-from", "data-to", "data-kind")) {
                    assertFalse(e.getAttribute(name).isEmpty(), name);
                }
                assertEquals("title", e.getElementsByTagName("*").item(0).getNodeName());
                wires.add(e.getAttribute("data-wire"));
            }
        }
        Set<String> expected = new HashSet<>();
        DemoScene.of().wires().stream().map(Wire::id).forEach(expected::add);
        assertEquals(expected, wires);
    }

    /** Renderers draw what depends on variables or media black, without a word. */
    @Test
    void nothingDependsOnStyleSheets() {
        String svg = SvgWriter.write(demo()).text();
        for (String forbidden :
                List.of("var(", "@media", "<style", "style=", "currentColor", "http://", "<image", "href")) {
            String bare = svg.replace("xmlns=\"http://www.w3.org/2000/svg\"", "");
            assertFalse(bare.contains(forbidden), forbidden);
        }
    }

    @Test
    void flawedSheetIsRefusedWithItsFlaws() {
        Stroke stray = new Stroke(Tag.of("line"), List.of(new Point(1, 1), new Point(2, 2)), Pen.solid("#000000", 0.5));
        StyledSheet sheet = sheet(List.of(stray), List.of(new Promise("W1.1", "A-1", "B-1")));
        SvgOutcome.Refused refused = assertInstanceOf(SvgOutcome.Refused.class, SvgOutcome.of(sheet));
        assertTrue(refused.flaws().stream().anyMatch(f -> f.kind() == Flaw.Kind.WIRE_ABSENT));
        assertThrows(
                IllegalArgumentException.class,
                () -> new SvgOutcome.Verified("", new ringout.draw.verify.Verdict(refused.flaws(), 0, 0, 0, 0)));
    }
}
