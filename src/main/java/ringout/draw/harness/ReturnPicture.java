package ringout.draw.harness;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import ringout.check.form.Figures;
import ringout.draw.tree.Girth;
import ringout.draw.tree.TreeNode;
import ringout.draw.tree.TreeScene;
import ringout.finding.Headline;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.graph.returns.ReturnGraph;
import ringout.graph.returns.ReturnWay;
import ringout.graph.wire.Ampacity;
import ringout.model.PinRole;
import ringout.solve.power.LoadCase;
import ringout.solve.power.LoadFigure;
import ringout.solve.power.OperatingPoint;
import ringout.solve.power.PowerFlow;

/** The returns of one state as a scene: the widest way of every unit's 0V to the minus of a pack. */
final class ReturnPicture {
    private static final String NOTHING = "-";

    private final Circuit circuit;
    private final Wiring wiring;
    private final ReturnGraph returns;
    private final PowerFlow average;
    private final Optional<PowerFlow> peak;
    private final TreeParts parts;

    /** The minus of every pack that no other is joined to. */
    private final List<PowerSource> roots = new ArrayList<>();

    private final Map<Integer, Way> ways = new LinkedHashMap<>();
    private final Map<Integer, Hop> above = new LinkedHashMap<>();
    private final List<String> notes = new ArrayList<>();

    /** The widest way of a unit. */
    private record Way(int pin, PowerSource root, ReturnWay way) {}

    /** The lead by which a unit returns, and to which unit. */
    private record Hop(int to, Wire wire) {}

    private ReturnPicture(Circuit circuit, PowerFlow average) {
        this.circuit = circuit;
        this.average = average;
        wiring = circuit.wiring();
        returns = ReturnGraph.of(circuit);
        parts = new TreeParts(circuit);
        peak = OperatingPoint.of(circuit, LoadCase.PEAK) instanceof PowerFlow flow
                ? Optional.of(flow)
                : Optional.empty();
    }

    /** The scene with its title block; nothing when there is no operating point. */
    static Optional<TreeScene> of(Circuit circuit, List<Headline> headlines, SheetTitle title) {
        return OperatingPoint.of(circuit, LoadCase.AVERAGE) instanceof PowerFlow flow
                ? Optional.of(new ReturnPicture(circuit, flow).scene(headlines, title))
                : Optional.empty();
    }

    private TreeScene scene(List<Headline> headlines, SheetTitle title) {
        findRoots();
        findWays();
        ways.values().forEach(this::hop);
        draw();
        tellLoops();
        TreeMarks marks = new TreeMarks(circuit, headlines, parts.ofLead(), parts.ofUnit());
        return new TreeScene(
                title.info("0V and returns", "return diagram", marks.lines().size()),
                parts.nodes(),
                parts.links(),
                List.of("own A avg / peak", "widest A", "least at"),
                marks.marks(),
                marks.lines(),
                notes);
    }

    private void findRoots() {
        PowerGraph power = PowerGraph.of(circuit);
        for (PowerSource source : power.sources()) {
            boolean pack = source.kind() == PowerSource.Kind.PACK && power.works(source) && source.minus() >= 0;
            if (pack
                    && power.bottom(source).index() == source.index()
                    && roots.stream().noneMatch(root -> returns.reaches(source.minus(), root.minus()))) {
                roots.add(source);
            }
        }
    }

    /** The widest way of each unit with a 0V or the minus of a pack, over the pin that has it. */
    private void findWays() {
        for (int unit = 0; unit < wiring.directory().count(); unit++) {
            if (!circuit.aboard(unit)) {
                continue;
            }
            boolean zero = false;
            Optional<Way> best = Optional.empty();
            for (int pin = wiring.firstPin(unit); pin < wiring.endPin(unit); pin++) {
                boolean own = wiring.is(pin, PinRole.ZERO_V);
                zero |= own;
                Optional<Way> way = own || wiring.is(pin, PinRole.PACK_MINUS) ? way(pin) : Optional.empty();
                boolean wider = way.isPresent() && (best.isEmpty() || width(way.get()) > width(best.get()));
                best = wider ? way : best;
            }
            if (best.isPresent()) {
                ways.put(unit, best.get());
            } else if (zero) {
                notes.add("the 0V of " + wiring.directory().name(unit) + " reaches no pack minus");
            }
        }
    }

    private Optional<Way> way(int pin) {
        for (PowerSource root : roots) {
            Optional<ReturnWay> way = returns.way(pin, root.minus());
            if (way.isPresent()) {
                return Optional.of(new Way(pin, root, way.get()));
            }
        }
        return Optional.empty();
    }

    private double width(Way way) {
        return returns.width(way.pin(), way.root().minus()).high();
    }

    /** Notes of every unit on a way by which lead it goes on. */
    private void hop(Way way) {
        int at = wiring.unitOf(way.pin());
        for (Wire wire : way.way().wires()) {
            int from = wiring.unitOf(wire.fromPin());
            int next = from == at ? wiring.unitOf(wire.toPin()) : from;
            if (next != at && !leads(next, at)) {
                above.putIfAbsent(at, new Hop(next, wire));
            }
            at = next;
        }
    }

    /** Whether the way of one unit passes another. */
    private boolean leads(int unit, int to) {
        int at = unit;
        while (at != to && above.containsKey(at)) {
            at = above.get(at).to();
        }
        return at == to;
    }

    private void draw() {
        Map<Integer, PowerSource> rootOf = new HashMap<>();
        roots.forEach(root -> rootOf.put(root.unit(), root));
        for (PowerSource root : roots) {
            String name = wiring.directory().name(root.unit());
            List<String> lines = List.of("pack minus", amps(root) + " A");
            parts.node(
                    new TreeNode(id(root.unit()), "minus", name, lines, lines, false, Optional.empty()), root.unit());
        }
        above.keySet().stream()
                .sorted()
                .filter(unit -> !rootOf.containsKey(unit))
                .forEach(this::node);
        above.forEach((unit, hop) -> {
            if (!rootOf.containsKey(unit)) {
                link(unit, hop);
            }
        });
    }

    /** Leads whose 0V closes a loop: it runs beside the widest ways and takes a part of their current. */
    private void tellLoops() {
        List<String> loops = wiring.wires().stream()
                .filter(wire -> circuit.mated(wire) && returns.ampacity(wire).high() > 0)
                .filter(wire -> wiring.unitOf(wire.fromPin()) != wiring.unitOf(wire.toPin()))
                .filter(wire -> above.containsKey(wiring.unitOf(wire.fromPin()))
                        && above.containsKey(wiring.unitOf(wire.toPin())))
                .map(wire -> wire.lead().id())
                .filter(lead -> !parts.ofLead().containsKey(lead))
                .distinct()
                .toList();
        if (!loops.isEmpty()) {
            notes.add(loops.size() + " more leads with a 0V, not drawn, close loops: " + String.join(" ", loops));
        }
    }

    private String id(int unit) {
        return parts.id("unit " + unit, wiring.directory().name(unit));
    }

    private String amps(PowerSource pack) {
        double usual = average.packs().stream()
                .filter(figure -> figure.source().index() == pack.index())
                .mapToDouble(figure -> figure.amps())
                .sum();
        OptionalDouble most = peak.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(peak.get().packs().stream()
                        .filter(figure -> figure.source().index() == pack.index())
                        .mapToDouble(figure -> figure.amps())
                        .sum());
        return TreeFigures.both(usual, most);
    }

    private void node(int unit) {
        boolean leaf = above.values().stream().noneMatch(hop -> hop.to() == unit);
        boolean draws =
                average.loads().stream().anyMatch(figure -> figure.load().unit() == unit);
        OptionalDouble most =
                peak.map(flow -> OptionalDouble.of(takes(flow, unit))).orElse(OptionalDouble.empty());
        String own = draws ? TreeFigures.both(takes(average, unit), most) : NOTHING;
        Way way = ways.get(unit);
        String width =
                way == null ? "?" : words(returns.width(way.pin(), way.root().minus()));
        String least = way == null
                ? "?"
                : way.way().bottleneck().map(wire -> wire.lead().id()).orElse("-");
        Wire wire = Objects.requireNonNull(above.get(unit)).wire();
        List<String> ownLine = own.equals(NOTHING) ? List.of() : List.of("own " + own + " A");
        List<String> lines = new ArrayList<>(ownLine);
        lines.add("widest " + width + " A at " + least);
        lines.add(TreeParts.size(wire).strip() + ", " + carries(wire));
        List<String> brief = new ArrayList<>(ownLine);
        if (!least.equals(wire.lead().id())) {
            brief.add("widest " + width + " A, " + least);
        }
        brief.add(lines.get(lines.size() - 1));
        String size =
                way == null ? "" : way.way().bottleneck().map(TreeParts::size).orElse("");
        List<String> cells = List.of(own, width, least + size);
        String name = wiring.directory().name(unit);
        parts.node(
                new TreeNode(
                        id(unit), "return", name, leaf ? cells : lines, leaf ? cells : brief, leaf, Optional.empty()),
                unit);
    }

    private static double takes(PowerFlow flow, int unit) {
        return flow.loads().stream()
                .filter(figure -> figure.load().unit() == unit)
                .mapToDouble(LoadFigure::amps)
                .sum();
    }

    private void link(int unit, Hop hop) {
        boolean leaf = above.values().stream().noneMatch(other -> other.to() == unit);
        Wire wire = hop.wire();
        String name = wire.lead().id();
        String label = leaf ? TreeParts.words(List.of(wire), false) + ", " + carries(wire) : name;
        String brief = leaf ? name + ", " + carries(wire) : name;
        Girth girth = Girth.of(returns.ampacity(wire).low());
        parts.link(id(hop.to()), id(unit), List.of(wire), label, brief, false, girth);
    }

    /** What goes through a lead at average, all its conductors side by side, of what they carry: {@code 6.21 of 57 A}. */
    private String carries(Wire wire) {
        double sum = 0;
        int from = wiring.unitOf(wire.fromPin());
        for (Wire other : wiring.wires()) {
            boolean beside = other.leadIndex() == wire.leadIndex()
                    && wiring.unitOf(other.fromPin()) == from
                    && circuit.nets().same(other.fromEnd(), wire.fromEnd());
            sum += beside ? average.amps(other) : 0;
        }
        return Figures.of(Math.abs(sum)) + " of " + words(returns.ampacity(wire)) + " A";
    }

    private static String words(Ampacity carries) {
        if (carries.isKnown()) {
            return Double.isInfinite(carries.low()) ? "no limit" : Figures.of(carries.low());
        }
        return Figures.of(carries.low()) + " or more";
    }
}
