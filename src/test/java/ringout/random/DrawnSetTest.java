package ringout.random;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import ringout.draw.harness.SheetSet;
import ringout.finding.Report;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.Aircraft;
import ringout.present.svg.SvgOutcome;

/**
 * The whole set of random aircraft, sound and with a random mistake in turn, judged from the finished SVG. {@code
 * -Ddrawn=200} draws so many, which takes some minutes.
 */
class DrawnSetTest {
    private static final long SEED = 20261126;
    private static final int AIRCRAFT = Integer.getInteger("drawn", 3);
    private static final int MOST = 60;

    private static final Pattern WIRE =
            Pattern.compile("class=\"wire\"[^>]* data-from=\"([^\"]*)\" data-to=\"([^\"]*)\"");
    private static final Pattern CONDUCTOR =
            Pattern.compile("class=\"conductor\"[^>]* data-from=\"([^\"]*)\" data-to=\"([^\"]*)\"");

    @Test
    void nothingIsWrongWithAnySheet() {
        Random random = new Random(SEED);
        List<String> wrong = new ArrayList<>();
        int sheets = 0;
        for (int i = 0; i < AIRCRAFT; i++) {
            Craft craft = Craft.of(random.nextLong());
            Aircraft aircraft = i % 2 == 0 ? craft.aircraft() : mistaken(craft, random);
            sheets += judged(craft.toString(), aircraft, i % 2 == 0, wrong);
        }
        assertEquals(List.of(), wrong);
        assertTrue(sheets > 5 * AIRCRAFT, "only " + sheets + " sheets");
        System.out.println(AIRCRAFT + " aircraft, " + sheets + " sheets, nothing reported");
    }

    private static Aircraft mistaken(Craft craft, Random random) {
        List<Kind> kinds = new ArrayList<>(Kinds.all());
        Collections.shuffle(kinds, random);
        return kinds.stream()
                .flatMap(kind -> kind.in(craft).stream())
                .findFirst()
                .map(fault -> craft.with(fault.edits()))
                .orElse(craft.aircraft());
    }

    /** An aircraft that cannot be drawn is told, and the next one is drawn. */
    private static int judged(String name, Aircraft aircraft, boolean sound, List<String> wrong) {
        try {
            return judge(name, aircraft, sound, wrong);
        } catch (RuntimeException | StackOverflowError e) {
            wrong.add(name + " " + e);
            return 0;
        }
    }

    /** Draws one aircraft; adds what is wrong. */
    private static int judge(String name, Aircraft aircraft, boolean sound, List<String> wrong) {
        Report report = Told.review(aircraft);
        Circuit circuit = Circuit.all(Wiring.of(aircraft)).get(0);
        List<SheetSet.Numbered> set = SheetSet.of(circuit, report, "0badcafe");
        List<String> wired = new ArrayList<>();
        List<String> led = new ArrayList<>();
        for (SheetSet.Numbered sheet : set) {
            SvgOutcome outcome = SvgOutcome.of(sheet.sheet());
            if (outcome instanceof SvgOutcome.Refused refused) {
                wrong.add(name + " " + sheet.name() + " " + refused.flaws());
                continue;
            }
            String svg = ((SvgOutcome.Verified) outcome).text();
            if (sheet.kind() == SheetSet.Kind.WIRING) {
                List<String> ends = ends(WIRE, svg.replaceAll("class=\"wire[^\"]*\"[^>]*missing[^>]*>", ""));
                if (ends.size() > MOST) {
                    wrong.add(name + " " + sheet.name() + " holds " + ends.size() + " conductors");
                }
                wired.addAll(ends);
            } else if (sheet.kind() == SheetSet.Kind.LEAD) {
                led.addAll(ends(CONDUCTOR, svg));
            }
        }
        List<String> wanted = new ArrayList<>();
        for (Wire wire : circuit.wiring().wires()) {
            wanted.add(circuit.wiring().name(wire.fromPin()) + " "
                    + circuit.wiring().name(wire.toPin()));
        }
        Collections.sort(wanted);
        compare(name + " wiring", wanted, wired, wrong);
        compare(name + " leads", wanted, led, wrong);
        if (sound) {
            SheetSet.missing(circuit, set).forEach(line -> wrong.add(name + " lacks " + line));
        }
        return set.size();
    }

    private static List<String> ends(Pattern pattern, String svg) {
        List<String> ends = new ArrayList<>();
        Matcher matcher = pattern.matcher(svg);
        while (matcher.find()) {
            ends.add(matcher.group(1) + " " + matcher.group(2));
        }
        return ends;
    }

    /** Every conductor once with both ends on the right pins. */
    private static void compare(String what, List<String> wanted, List<String> drawn, List<String> wrong) {
        Collections.sort(drawn);
        if (!wanted.equals(drawn)) {
            List<String> lost = new ArrayList<>(wanted);
            drawn.forEach(lost::remove);
            List<String> more = new ArrayList<>(drawn);
            wanted.forEach(more::remove);
            wrong.add(what + " lost " + lost + ", too many " + more);
        }
    }
}
