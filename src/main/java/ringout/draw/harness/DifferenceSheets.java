package ringout.draw.harness;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import ringout.compare.fleet.Tail;
import ringout.draw.difference.BothAircraft;
import ringout.draw.ink.StyledSheet;
import ringout.draw.scene.WiringScene;
import ringout.draw.wiring.WiringDrawing;
import ringout.finding.Report;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.Aircraft;
import ringout.model.seal.Seal;

/**
 * The difference drawing: the wiring sheets on which something differs. What is new is heavy with plus signs, what is gone a
 * crossed ghost, what changed carries the badge of its difference, and all else is faint.
 */
public final class DifferenceSheets {
    /**
     * A sheet of the drawing.
     *
     * @param name for a file, without an ending
     * @param sheet ready to be written
     */
    public record Named(String name, StyledSheet sheet) {}

    private final Wiring wiring;
    private final Circuit circuit;
    private final BothAircraft both;
    private final DifferencePlan plan;
    private final SheetTitle title;
    private final List<String> notes = new ArrayList<>();

    private DifferenceSheets(Aircraft base, Tail tail, Report report) {
        this.both = BothAircraft.of(tail.judgement().differences());
        this.wiring = Wiring.of(both.aircraft());
        this.circuit = Circuit.all(wiring).get(0).whole();
        this.plan = new DifferencePlan(wiring, both, tail);
        this.title =
                new SheetTitle(circuit, report, Seal.ofList(tail.aircraft()).mark());
        notes.add("against " + base.designation().or(base.name())
                + base.tail().known().map(name -> " tail " + name).orElse("")
                + base.typeRevision().known().map(letter -> " rev " + letter).orElse("")
                + ", hash " + Seal.ofList(base).mark()
                + "; numbers are those of the list of differences");
        both.notDrawn().forEach(wire -> notes.add("gone and not drawn: " + wire));
    }

    /**
     * The sheets on which something differs, none when nothing does that a wiring sheet can show.
     *
     * @param base the aircraft compared with
     * @param tail the aircraft compared, with its differences
     * @param report what the checks say of it
     */
    public static List<Named> of(Aircraft base, Tail tail, Report report) {
        return new DifferenceSheets(base, tail, report).sheets();
    }

    private List<Named> sheets() {
        List<WiringDrawing.Fits> fits = WiringSheets.fit(portions(), this::scene);
        List<Named> named = new ArrayList<>();
        for (int i = 0; i < fits.size(); i++) {
            String name = String.format(Locale.ROOT, "difference-%02d", i + 1);
            named.add(new Named(name, fits.get(i).numbered(i + 1, fits.size()).sheet()));
        }
        return named;
    }

    /** The portions with a touched row; and for each touched unit the one in which it has most conductors. */
    private List<Portion> portions() {
        List<Portion> all = Cut.of(circuit);
        Set<Integer> wanted = new TreeSet<>();
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).leads().stream().anyMatch(plan::touchesRow)) {
                wanted.add(i);
            }
        }
        for (String unit : plan.units()) {
            int best = -1;
            long most = 0;
            for (int i = 0; i < all.size(); i++) {
                long conductors = conductors(all.get(i), unit);
                if (conductors > most) {
                    most = conductors;
                    best = i;
                }
            }
            if (best >= 0) {
                wanted.add(best);
            }
        }
        return wanted.stream().map(all::get).toList();
    }

    private long conductors(Portion portion, String unit) {
        int number = wiring.directory().find(unit).orElse(-1);
        return wiring.wires().stream()
                .filter(wire -> portion.leads().contains(wire.leadIndex()) && at(wire, number))
                .count();
    }

    private boolean at(Wire wire, int unit) {
        return wiring.unitOf(wire.fromPin()) == unit || wiring.unitOf(wire.toPin()) == unit;
    }

    private WiringScene scene(Portion portion) {
        int findings = new DifferenceScene(circuit, portion, plan).findings();
        DifferenceScene scene = new DifferenceScene(circuit, portion, plan);
        return scene.scene(title.info(portion.title(), "difference drawing", findings), notes);
    }
}
