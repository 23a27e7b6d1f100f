package ringout.draw.verify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import ringout.draw.DemoScene;
import ringout.draw.ink.StyledSheet.Promise;
import ringout.draw.letter.Lettering;
import ringout.draw.paper.SheetSize;
import ringout.draw.verify.Flaw.Kind;
import ringout.draw.wiring.WiringDrawing;
import ringout.present.svg.SvgText;
import ringout.present.svg.SvgWriter;

/** A sound sheet is spoilt in one way at a time; each time the verifier must say so. */
class VerifierTest {
    private static String svg;
    private static List<Promise> promised;

    @BeforeAll
    static void draw() {
        WiringDrawing.Fits fits = (WiringDrawing.Fits) WiringDrawing.of(DemoScene.of(), SheetSize.all());
        SvgText text = SvgWriter.write(fits.sheet());
        svg = text.text();
        promised = text.promised();
    }

    private static Set<Kind> kinds(String text) {
        return Verifier.verify(text, promised).flaws().stream().map(Flaw::kind).collect(Collectors.toSet());
    }

    private static void expect(Kind kind, String spoilt) {
        assertFalse(spoilt.equals(svg), "nothing was spoilt");
        assertTrue(
                kinds(spoilt).contains(kind),
                kind + " not found: " + Verifier.verify(spoilt, promised).flaws());
    }

    private static String replace(String pattern, String by) {
        return Pattern.compile(pattern, Pattern.DOTALL).matcher(svg).replaceFirst(by);
    }

    private static String groupOf(String wire) {
        Matcher m = Pattern.compile(
                        "  <g class=\"wire\" id=\"wire-" + Pattern.quote(wire) + "\".*?\n  </g>\n", Pattern.DOTALL)
                .matcher(svg);
        assertTrue(m.find(), wire);
        return m.group();
    }

    private static String pointsOf(String wire) {
        Matcher m = Pattern.compile("points=\"([^\"]*)\"").matcher(groupOf(wire));
        assertTrue(m.find());
        return m.group(1);
    }

    @Test
    void soundSheetHasNoFlaw() {
        assertEquals(List.of(), Verifier.verify(svg, promised).flaws());
    }

    @Test
    void countsAreThoseOfTheLines() {
        Verdict verdict = Verifier.verify(svg, promised);
        assertEquals(promised.size(), verdict.wires());
        int bends = 0;
        for (Promise promise : promised) {
            bends += pointsOf(promise.wire()).split(" ").length - 2;
        }
        assertTrue(verdict.bends() >= bends, "the arrow turns too");
        assertTrue(verdict.bends() <= bends + 4);
    }

    @Test
    void absentWireIsMissed() {
        expect(Kind.WIRE_ABSENT, svg.replace(groupOf("W62.1"), ""));
    }

    @Test
    void wireDrawnTwiceIsSeen() {
        String group = groupOf("W62.1");
        String spoilt = svg.replace(group, group + group);
        expect(Kind.WIRE_TWICE, spoilt);
        expect(Kind.WIRE_ON_WIRE, spoilt);
    }

    @Test
    void wireNobodyPromisedIsSeen() {
        expect(Kind.WIRE_UNPROMISED, svg.replace("data-wire=\"W62.1\"", "data-wire=\"W000.1\""));
    }

    @Test
    void exchangedEndsAreSeen() {
        String spoilt = svg.replace("data-from=\"PMON-OUT-1\"", "data-from=\"PMON-OUT-2\"");
        expect(Kind.WRONG_END, spoilt);
        String one = pointsOf("W62.1");
        String other = pointsOf("W62.2");
        expect(Kind.WRONG_END, svg.replace(one, "@").replace(other, one).replace("@", other));
    }

    @Test
    void wireShortOfItsPinIsSeen() {
        Matcher first = Pattern.compile("^([0-9.]+),").matcher(pointsOf("W62.1"));
        assertTrue(first.find());
        double x = Double.parseDouble(first.group(1));
        String moved = pointsOf("W62.1").replaceFirst("^[0-9.]+", Double.toString(x + 0.8));
        expect(Kind.WRONG_END, svg.replace(pointsOf("W62.1"), moved));
    }

    @Test
    void wiresOnEachOtherAreSeen() {
        expect(Kind.WIRE_ON_WIRE, svg.replace(pointsOf("W62.3"), pointsOf("W62.4")));
    }

    @Test
    void wiresTooNearAreSeen() {
        String points = pointsOf("W62.3");
        Matcher y = Pattern.compile(",([0-9.]+)").matcher(pointsOf("W62.4"));
        assertTrue(y.find());
        String near = Double.toString(Double.parseDouble(y.group(1)) - 1.5);
        expect(Kind.TOO_CLOSE, svg.replace(points, points.replaceAll(",[0-9.]+", "," + near)));
    }

    @Test
    void slantingWireIsSeen() {
        Matcher m = Pattern.compile("^(.*,)([0-9.]+)$").matcher(pointsOf("W62.1"));
        assertTrue(m.find());
        String slant = m.group(1) + (Double.parseDouble(m.group(2)) + 0.4);
        expect(Kind.OBLIQUE, svg.replace(pointsOf("W62.1"), slant));
    }

    @Test
    void wireThroughAUnitIsSeen() {
        Matcher body = Pattern.compile(
                        "data-unit=\"FC\".*?<rect x=\"([0-9.]+)\" y=\"([0-9.]+)\" width=\"([0-9.]+)\"", Pattern.DOTALL)
                .matcher(svg);
        assertTrue(body.find());
        double x = Double.parseDouble(body.group(1));
        double y = Double.parseDouble(body.group(2)) + 3;
        double right = x + Double.parseDouble(body.group(3));
        String through = (x - 5) + "," + y + " " + (right + 5) + "," + y;
        expect(Kind.WIRE_THROUGH_UNIT, svg.replace(pointsOf("W62.1"), through));
    }

    @Test
    void unitOnUnitIsSeen() {
        Matcher body = Pattern.compile("<rect [^>]*class=\"body\"[^>]*/>")
                .matcher(svg.substring(svg.indexOf("data-unit=\"FC\"")));
        assertTrue(body.find());
        int gmc = svg.indexOf("<rect", svg.indexOf("data-unit=\"GMC\""));
        int end = svg.indexOf("/>", gmc) + 2;
        expect(Kind.UNIT_ON_UNIT, svg.substring(0, gmc) + body.group() + svg.substring(end));
    }

    @Test
    void movedLabelIsSeen() {
        Matcher label = Pattern.compile("<text x=\"([0-9.]+)\" y=\"([0-9.]+)\"([^>]*)>W62 22 RD</text>")
                .matcher(svg);
        assertTrue(label.find());
        double y = Double.parseDouble(label.group(2)) + 4.5;
        String moved = "<text x=\"" + label.group(1) + "\" y=\"" + y + "\"" + label.group(3) + ">W62 22 RD</text>";
        String spoilt = svg.replace(label.group(), moved);
        expect(Kind.TEXT_ON_TEXT, spoilt);
        expect(Kind.TEXT_ON_WIRE, spoilt);
    }

    @Test
    void labelWithoutAGapInTheLineIsSeen() {
        expect(Kind.TEXT_ON_WIRE, replace("<rect [^>]*class=\"halo\"[^>]*/>(\\s*<text[^>]*>W62 22 RD)", "$1"));
    }

    @Test
    void smallLetteringIsSeen() {
        expect(Kind.TEXT_TOO_SMALL, svg.replaceFirst("font-size=\"3\\.4[0-9]*\"", "font-size=\"3.3\""));
    }

    @Test
    void squeezedTextIsSeen() {
        expect(Kind.TEXT_SQUEEZED, replace("(<text[^>]*>flight controller)<", "$1 and more<"));
    }

    @Test
    void whatLiesOutsideTheFrameIsSeen() {
        expect(Kind.OUTSIDE_FRAME, replace("(<text x=)\"[0-9.]+\"([^>]*>flight recorder)", "$1\"571\"$2"));
        expect(Kind.OUTSIDE_FRAME, svg.replace("class=\"border\"", ""));
    }

    @Test
    void paleLetteringAndPaleLinesAreSeen() {
        expect(Kind.LOW_CONTRAST, replace("fill=\"#000000\"([^>]*>flight recorder)", "fill=\"#a0a0a0\"$1"));
        expect(Kind.LOW_CONTRAST, svg.replace("stroke=\"#c04a00\"", "stroke=\"#ffa500\""));
    }

    @Test
    void textBelowLaterInkIsSeen() {
        Matcher text = Pattern.compile("<text x=\"([0-9.]+)\" y=\"([0-9.]+)\"[^>]*>flight recorder")
                .matcher(svg);
        assertTrue(text.find());
        String patch = "<rect x=\"" + text.group(1) + "\" y=\"" + (Double.parseDouble(text.group(2)) - 1)
                + "\" width=\"3\" height=\"1\" fill=\"#ffffff\"/>\n</svg>";
        expect(Kind.TEXT_COVERED, svg.replace("</svg>", patch));
    }

    @Test
    void dotOfFourIsSeen() {
        Matcher dots = Pattern.compile("<ellipse cx=\"([0-9.]+)\" cy=\"([0-9.]+)\"[^>]*class=\"dot\"")
                .matcher(svg.substring(svg.indexOf("data-splice=\"SPC\"")));
        double x = 0;
        List<Double> ys = new ArrayList<>();
        for (int i = 0; i < 3 && dots.find(); i++) {
            x = Double.parseDouble(dots.group(1));
            ys.add(Double.parseDouble(dots.group(2)));
        }
        Collections.sort(ys);
        double middleY = ys.get(1);
        String at = x + "," + middleY;
        String toTheDot = (x - 9) + "," + middleY + " " + at + "\"";
        String second = (x + 9) + "," + middleY + " " + at + "\"";
        String spoilt = svg.replace(pointsOf("W75.2") + "\"", toTheDot).replace(pointsOf("W76.1") + "\"", second);
        expect(Kind.FOUR_WAY_DOT, spoilt);
    }

    @Test
    void whatIsNotUnderstoodIsNotPassed() {
        expect(Kind.UNREADABLE, svg.replace("</svg>", "<circle r=\"3\"/></svg>"));
        expect(Kind.UNREADABLE, svg.replaceFirst("<g class=\"wire\"", "<g transform=\"scale(0.5)\" class=\"wire\""));
        expect(Kind.UNREADABLE, svg.replace("</svg>", ""));
        expect(Kind.UNREADABLE, svg.replaceFirst("width=\"[0-9]+mm\"", "width=\"300mm\""));
    }

    /** Small sheets of which only one thing matters. */
    private static Set<Kind> of(String ink, String... things) {
        String sheet =
                "<svg viewBox=\"0 0 99 99\" width=\"99mm\" height=\"99mm\"><rect class=\"border\" x=\"1\" y=\"1\" width=\"97\""
                        + " height=\"97\" fill=\"none\"/>" + ink + "</svg>";
        return Verifier.verify(sheet, List.of(), List.of(things)).flaws().stream()
                .map(Flaw::kind)
                .collect(Collectors.toSet());
    }

    private static String disc(String thing, int x) {
        return "<g data-thing=\"" + thing + "\"><ellipse class=\"disc\" cx=\"" + x
                + "\" cy=\"50\" rx=\"9\" ry=\"9\" fill=\"none\"/></g>";
    }

    @Test
    void everyPromisedThingIsThereOnceAndNoOther() {
        assertEquals(Set.of(), of(disc("M1", 20) + disc("M2", 50), "M1", "M2"));
        assertEquals(Set.of(Kind.THING_ABSENT), of(disc("M1", 20), "M1", "M2"));
        assertEquals(Set.of(Kind.THING_TWICE), of(disc("M1", 20) + disc("M1", 50), "M1"));
        assertEquals(Set.of(Kind.THING_UNPROMISED), of(disc("M1", 20) + disc("M2", 50), "M1"));
    }

    @Test
    void discsDoNotMeet() {
        assertEquals(Set.of(Kind.DISC_ON_DISC), of(disc("M1", 20) + disc("M2", 37), "M1", "M2"));
    }

    @Test
    void whatIsReadAtArmsLengthIsFiveMillimetresHigh() {
        String text = "<text x=\"20\" y=\"50\" font-size=\"%s\" fill=\"#000000\">M1</text>";
        String low = String.format(Locale.ROOT, text, Lettering.emOf(4.9));
        String high = String.format(Locale.ROOT, text, Lettering.emOf(5));
        assertEquals(Set.of(), of(low));
        assertEquals(Set.of(), of("<g class=\"arms-length\">" + high + "</g>"));
        assertEquals(Set.of(Kind.TEXT_TOO_SMALL), of("<g class=\"arms-length\">" + low + "</g>"));
    }
}
