package ringout.solve.power;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import ringout.graph.Circuit;
import ringout.graph.Part;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.index.IndexGraph;
import ringout.graph.power.PlacedLoad;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.graph.power.Volts;
import ringout.model.Datum;
import ringout.model.PartKind;
import ringout.model.Rail;
import ringout.solve.Resistivity;
import ringout.solve.dc.DcCircuit;
import ringout.solve.dc.DcElement;
import ringout.solve.dc.Draw;

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
    private final int[] elementOfEdge;
    private final int[] elementOfLoad;
    private final Map<Integer, Integer> outputs = new HashMap<>();
    private final DcCircuit dc;

    PowerModel(Circuit circuit, LoadCase of) {
        this.circuit = circuit;
        this.of = of;
        wiring = circuit.wiring();
        power = PowerGraph.of(circuit);
        domain = PowerDomain.of(circuit);
        builder = DcCircuit.builder(domain.count());
        parts = new PartElements(circuit, of, assumed);
        elementOfEdge = new int[circuit.live().edgeBound()];
        Arrays.fill(elementOfEdge, NONE);
        elementOfLoad = new int[power.loads().size()];
        Arrays.fill(elementOfLoad, NONE);
        references();
        edges();
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
                    builder.reference(domain.node(source.minus()));
                }
            }
        }
    }

    private void edges() {
        IndexGraph live = circuit.live();
        for (int edge = 0; edge < live.edgeBound(); edge++) {
            if (live.hasEdge(edge) && domain.holds(live.from(edge)) && domain.holds(live.to(edge))) {
                edge(edge, domain.node(live.from(edge)), domain.node(live.to(edge)));
            }
        }
    }

    private void edge(int edge, int a, int b) {
        int ref = wiring.ref(edge);
        switch (wiring.kind(edge)) {
            case CONDUCTOR ->
                elementOfEdge[edge] = resistor(a, b, conductor(wiring.wires().get(ref)));
            case CONTACT -> elementOfEdge[edge] = resistor(a, b, contact(edge));
            case JOIN -> elementOfEdge[edge] = resistor(a, b, 0);
            case PART -> part(edge, wiring.parts().get(ref), a, b);
        }
    }

    private int resistor(int a, int b, double ohm) {
        return builder.add(new DcElement.Resistor(a, b, ohm));
    }

    private double conductor(Wire wire) {
        if (!Resistivity.isKnown(wire)) {
            boolean length = !wire.lengthMm().isKnown();
            assumed.add(length ? "length" : "wire size", wire.lead().id(), 0, "mOhm");
        }
        return Math.max(0, Resistivity.ohm(wire, of.wires().of(wire)));
    }

    private double contact(int edge) {
        int a = wiring.graph().from(edge);
        int pin = wiring.isPin(a) ? a : wiring.graph().to(edge);
        return Math.max(0, Resistivity.contactOhm(wiring, pin));
    }

    private void part(int edge, Part part, int a, int b) {
        OptionalDouble ohm = PowerDomain.conducts(part) ? PartElements.ohm(part) : OptionalDouble.empty();
        if (ohm.isPresent()) {
            elementOfEdge[edge] = resistor(a, b, Math.max(0, ohm.getAsDouble()));
        } else if (part.origin() instanceof Part.Inner inner && PowerGraph.isDiode(part)) {
            elementOfEdge[edge] = builder.add(parts.diode(inner, a, b));
        }
    }

    private void source(PowerSource source) {
        int plus = domain.node(source.plus());
        int minus = domain.node(source.minus());
        if (!power.works(source) || plus == PowerDomain.OUTSIDE) {
            return;
        }
        if (minus == PowerDomain.OUTSIDE) {
            assumed.without("0V", source.name());
            return;
        }
        Optional<DcElement> element = element(source, minus, plus);
        if (element.isPresent()) {
            int added = builder.add(element.get());
            outputs.put(source.index(), added);
            if (source.part() >= 0) {
                elementOfEdge[wiring.parts().get(source.part()).edge()] = added;
            }
        }
    }

    private Optional<DcElement> element(PowerSource source, int minus, int plus) {
        if (source.part() < 0) {
            return parts.output(source, minus, plus);
        }
        Part part = wiring.parts().get(source.part());
        Part.Inner inner = (Part.Inner) part.origin();
        if (inner.part().kind().is(PartKind.SOURCE)) {
            return parts.pack(inner, source, minus, plus);
        }
        int in = domain.node(part.from());
        int inZero = domain.node(parts.inputZero(part, inner, source.minus()));
        if (in == PowerDomain.OUTSIDE || inZero == PowerDomain.OUTSIDE) {
            return Optional.empty();
        }
        return parts.regulator(inner, source, new int[] {in, inZero, plus, minus});
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
                assumed.add(datum, unit, amount(drawn.draw().get()), "of its other figures");
            }
        });
        drawn.draw()
                .ifPresent(draw -> elementOfLoad[placed.index()] =
                        builder.add(new DcElement.Load(domain.node(placed.plus()), domain.node(placed.zero()), draw)));
    }

    private static double amount(Draw draw) {
        if (draw instanceof Draw.ConstantCurrent c) {
            return c.amps();
        }
        return draw instanceof Draw.ConstantPower p ? p.watts() : 0;
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

    /** {@return the element of a live edge, or {@link #NONE}} */
    int ofEdge(int edge) {
        return elementOfEdge[edge];
    }

    /** {@return the element of a placed load, or {@link #NONE}} */
    int ofLoad(int load) {
        return elementOfLoad[load];
    }

    /** {@return the element of a source, or {@link #NONE}} */
    int ofSource(int source) {
        return outputs.getOrDefault(source, NONE);
    }
}
