package ringout.solve.power;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import ringout.graph.Circuit;
import ringout.graph.Part;
import ringout.graph.Wiring;
import ringout.graph.power.PlacedLoad;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.graph.power.Volts;
import ringout.model.Datum;
import ringout.model.PartKind;
import ringout.model.Rail;
import ringout.solve.dc.DcCircuit;
import ringout.solve.dc.DcElement;
import ringout.solve.dc.Draw;
import ringout.solve.network.Condensed;

/** The plain circuit of a load case, and which of its elements stands for which edge, part and load of the aircraft. */
final class PowerModel {
    static final int NONE = -1;

    private final Circuit circuit;
    private final Wiring wiring;
    private final PowerGraph power;
    private final PowerDomain domain;
    private final LoadCase of;
    private final Assumptions assumed = new Assumptions();
    private final DcCircuit.Builder builder;
    private final PartElements parts;
    private final ConductorNet net;
    private final int[] elementOfSource;
    private final int[] elementOfLoad;
    private final Map<Integer, Integer> elementOfPart = new HashMap<>();

    /** Of every element behind the resistors, the nodes of the whole network it stands on. */
    private final List<int[]> terminals = new ArrayList<>();

    private final DcCircuit dc;

    PowerModel(Circuit circuit, ConductorNet net, LoadCase of) {
        this.circuit = circuit;
        this.net = net;
        this.of = of;
        assumed.addAll(net.assumed());
        wiring = circuit.wiring();
        power = PowerGraph.of(circuit);
        domain = PowerDomain.of(circuit);
        builder = DcCircuit.builder(net.small().nodes());
        parts = new PartElements(circuit, of, assumed);
        elementOfSource = new int[power.sources().size()];
        Arrays.fill(elementOfSource, NONE);
        elementOfLoad = new int[power.loads().size()];
        Arrays.fill(elementOfLoad, NONE);
        references();
        resistors();
        wiring.parts().forEach(this::diode);
        power.sources().forEach(this::source);
        power.loads().forEach(this::load);
        dc = builder.build();
    }

    /** The minus of the lowest pack is zero volts; where there is none, that of another source. */
    private void references() {
        for (PowerSource.Kind kind : List.of(
                PowerSource.Kind.PACK,
                PowerSource.Kind.OUTPUT,
                PowerSource.Kind.REGULATOR,
                PowerSource.Kind.CONVERTER)) {
            for (PowerSource source : power.sources()) {
                boolean lowest = source.kind() == kind
                        && power.works(source)
                        && power.bottom(source).index() == source.index();
                if (lowest && domain.holds(source.minus())) {
                    builder.reference(core(source.minus()));
                }
            }
        }
    }

    private void resistors() {
        Condensed small = net.small();
        for (int r = 0; r < small.resistors(); r++) {
            builder.add(new DcElement.Resistor(small.from(r), small.to(r), small.ohms(r)));
        }
    }

    private void diode(Part part) {
        if (PowerGraph.isDiode(part)
                && part.origin() instanceof Part.Inner inner
                && circuit.live().hasEdge(part.edge())
                && domain.holds(part.from())) {
            elementOfPart.put(
                    part.index(), add(parts.diode(inner, core(part.from()), core(part.to())), part.from(), part.to()));
        }
    }

    /** The node of the small network a vertex with a source, load or diode on it has become. */
    private int core(int vertex) {
        return net.small().anchor(domain.node(vertex));
    }

    private int add(DcElement element, int... vertices) {
        int added = builder.add(element);
        for (int i = 0; i < vertices.length; i++) {
            vertices[i] = domain.node(vertices[i]);
        }
        terminals.add(vertices);
        return added;
    }

    private void source(PowerSource source) {
        if (!power.works(source) || !domain.holds(source.plus())) {
            return;
        }
        if (!domain.holds(source.minus())) {
            assumed.without("0V", source.name());
            return;
        }
        if (source.part() < 0) {
            parts.output(source, core(source.minus()), core(source.plus()))
                    .ifPresent(e -> elementOfSource[source.index()] = add(e, source.minus(), source.plus()));
            return;
        }
        Part part = wiring.parts().get(source.part());
        int element = part(source, part, (Part.Inner) part.origin());
        elementOfSource[source.index()] = element;
        elementOfPart.put(part.index(), element);
    }

    private int part(PowerSource source, Part part, Part.Inner inner) {
        int minus = source.minus();
        int plus = source.plus();
        if (inner.part().kind().is(PartKind.SOURCE)) {
            return parts.pack(inner, source, core(minus), core(plus))
                    .map(pack -> add(pack, minus, plus))
                    .orElse(NONE);
        }
        int inZero = PartElements.inputZero(wiring, part, inner, minus);
        if (!domain.holds(part.from()) || !domain.holds(inZero)) {
            return NONE;
        }
        int[] nodes = {core(part.from()), core(inZero), core(plus), core(minus)};
        return parts.regulator(inner, source, nodes)
                .map(regulator -> add(regulator, part.from(), inZero, plus, minus))
                .orElse(NONE);
    }

    private void load(PlacedLoad placed) {
        String unit = wiring.directory().name(placed.unit());
        if (!circuit.aboard(placed.unit()) || !domain.holds(placed.plus())) {
            return;
        }
        if (!domain.holds(placed.zero())) {
            assumed.without(placed.zero() < 0 ? "0V of " + placed.rail() : "way back from " + placed.rail(), unit);
            return;
        }
        LoadDraw drawn = LoadDraw.of(of, unit, placed, nominal(placed));
        drawn.missing().forEach(datum -> {
            if (drawn.draw().isEmpty()) {
                assumed.without(datum, unit);
            } else {
                assumed.add(
                        datum,
                        unit,
                        amount(drawn.draw().get()),
                        unit(drawn.draw().get()));
            }
        });
        if (drawn.draw().isPresent()) {
            DcElement load = new DcElement.Load(
                    core(placed.plus()), core(placed.zero()), drawn.draw().get());
            elementOfLoad[placed.index()] = add(load, placed.plus(), placed.zero());
        }
    }

    private static double amount(Draw draw) {
        if (draw instanceof Draw.ConstantCurrent c) {
            return c.amps();
        }
        return draw instanceof Draw.ConstantPower p ? p.watts() : ((Draw.Resistive) draw).ohms();
    }

    private static String unit(Draw draw) {
        if (draw instanceof Draw.ConstantCurrent) {
            return "A";
        }
        return draw instanceof Draw.ConstantPower ? "W" : "ohm";
    }

    private OptionalDouble nominal(PlacedLoad placed) {
        Datum<Double> rated = placed.limits().map(Rail::nominalV).orElse(Datum.notAsked());
        return rated.isKnown()
                ? OptionalDouble.of(rated.or(0.0))
                : power.between(placed.plus(), placed.zero())
                        .map(Volts::nominal)
                        .orElse(OptionalDouble.empty());
    }

    Circuit circuit() {
        return circuit;
    }

    PowerDomain domain() {
        return domain;
    }

    LoadCase of() {
        return of;
    }

    DcCircuit dc() {
        return dc;
    }

    List<Assumption> assumed() {
        return assumed.all();
    }

    ConductorNet net() {
        return net;
    }

    /** {@return the element of a pack, regulator or diode, or {@link #NONE}} */
    int ofPart(int part) {
        return elementOfPart.getOrDefault(part, NONE);
    }

    /** {@return the nodes of the whole network an element behind the resistors stands on} */
    int[] terminals(int element) {
        return terminals.get(element - net.small().resistors());
    }

    /** {@return the element of a placed load, or {@link #NONE}} */
    int ofLoad(int load) {
        return elementOfLoad[load];
    }

    /** {@return the element of a source, or {@link #NONE}} */
    int ofSource(int source) {
        return elementOfSource[source];
    }
}
