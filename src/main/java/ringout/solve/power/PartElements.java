package ringout.solve.power;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import ringout.graph.Circuit;
import ringout.graph.Part;
import ringout.graph.Wiring;
import ringout.graph.power.PowerSource;
import ringout.model.Datum;
import ringout.model.InnerPart;
import ringout.model.PartKind;
import ringout.model.PartRating;
import ringout.model.Rail;
import ringout.solve.PartResistance;
import ringout.solve.dc.DcElement;
import ringout.solve.dc.RegulatorRating;

/** Two-terminal parts as elements of a plain circuit, with usual values for what their types do not tell. */
final class PartElements {
    private static final double MILLI = 0.001;

    /** What a source without a known resistance gets, small enough not to show. */
    private static final double STIFF_OHM = 1e-4;

    private static final double DIODE_OHM = 0.010;
    private static final double IDEAL_DIODE_OHM = 0.001;
    private static final double DIODE_V = 0.6;
    private static final double EFFICIENCY = 0.85;

    private final Circuit circuit;
    private final LoadCase of;
    private final Assumptions assumed;

    PartElements(Circuit circuit, LoadCase of, Assumptions assumed) {
        this.circuit = circuit;
        this.of = of;
        this.assumed = assumed;
    }

    /** {@return a diode between two nodes} */
    DcElement diode(Part.Inner inner, int anode, int cathode) {
        PartRating rating = inner.part().rating();
        boolean ideal = inner.part().kind().is(PartKind.IDEAL_DIODE);
        if (!ideal && !rating.forwardV().isKnown()) {
            assumed.add("forward voltage", name(inner), DIODE_V, "V");
        }
        double drop = rating.forwardV().or(ideal ? 0 : DIODE_V);
        double ohm = PartResistance.given(rating).orElse(ideal ? IDEAL_DIODE_OHM : DIODE_OHM);
        return new DcElement.Diode(anode, cathode, Math.max(0, drop), Math.max(ohm, STIFF_OHM));
    }

    /** {@return a pack between two nodes, if its voltage is known} */
    Optional<DcElement> pack(Part.Inner inner, PowerSource source, int minus, int plus) {
        String unit = circuit.wiring().directory().name(inner.unit());
        OptionalDouble volts = of.charge()
                .volts(source, inner.part(), circuit.wiring().directory().unit(inner.unit()));
        if (volts.isEmpty()) {
            assumed.without("voltage of the pack", unit);
            return Optional.empty();
        }
        boolean supply = of.charge().kind() == PackCharge.Kind.SUPPLY;
        if (!supply && !source.milliohm().isKnown()) {
            assumed.add("internal resistance", unit, 0, "mOhm");
        }
        double ohm = supply ? STIFF_OHM : Math.max(source.milliohm().or(0.0) * MILLI, STIFF_OHM);
        return Optional.of(new DcElement.Source(minus, plus, volts.getAsDouble(), ohm));
    }

    /** {@return a regulator between its nodes, if its output voltage is known} */
    Optional<DcElement> regulator(Part.Inner inner, PowerSource source, int[] nodes) {
        PartRating rating = inner.part().rating();
        OptionalDouble volts = rating.outputV().isKnown()
                ? OptionalDouble.of(rating.outputV().or(0.0))
                : source.volts().nominal();
        if (volts.isEmpty() || !(volts.getAsDouble() > 0)) {
            assumed.without("output voltage", name(inner));
            return Optional.empty();
        }
        String unit = circuit.wiring().directory().name(inner.unit());
        if (rating.quiescentA() instanceof Datum.Unknown) {
            assumed.add("current at no load of " + inner.part().name(), unit, 0, "A");
        }
        if (rating.dropoutV() instanceof Datum.Unknown) {
            assumed.add("dropout of " + inner.part().name(), unit, 0, "V");
        }
        double ohm = Math.max(PartResistance.given(rating).orElse(0), STIFF_OHM);
        RegulatorRating rated = new RegulatorRating(
                volts.getAsDouble(),
                ohm,
                efficiency(inner),
                Math.max(0, rating.quiescentA().or(0.0)),
                optional(rating.dropoutV()),
                OptionalDouble.empty());
        return Optional.of(new DcElement.Regulator(nodes[0], nodes[1], nodes[2], nodes[3], rated));
    }

    private OptionalDouble efficiency(Part.Inner inner) {
        if (inner.part().kind().is(PartKind.LINEAR_REGULATOR)) {
            return OptionalDouble.empty();
        }
        double given = inner.part().rating().efficiency().or(0.0);
        if (given > 0 && given <= 1) {
            return OptionalDouble.of(given);
        }
        assumed.add("efficiency", circuit.wiring().directory().name(inner.unit()), EFFICIENCY, "");
        return OptionalDouble.of(EFFICIENCY);
    }

    private static OptionalDouble optional(Datum<Double> datum) {
        return datum.isKnown() ? OptionalDouble.of(Math.max(0, datum.or(0.0))) : OptionalDouble.empty();
    }

    /** {@return an output of which only its rail is told, as a source; if its voltage and its return are known} */
    Optional<DcElement> output(PowerSource source, int minus, int plus) {
        OptionalDouble volts = source.volts().nominal();
        if (volts.isEmpty()) {
            assumed.without("nominal voltage of output", source.name());
            return Optional.empty();
        }
        assumed.add("what feeds the output", source.name(), volts.getAsDouble(), "V at any load");
        return Optional.of(new DcElement.Source(minus, plus, volts.getAsDouble(), STIFF_OHM));
    }

    /** {@return the vertex of the return of a regulator's input: of its input rail, or the one of its output} */
    static int inputZero(Wiring wiring, Part part, Part.Inner inner, int outputZero) {
        if (!inner.part().kind().is(PartKind.ISOLATED_CONVERTER)) {
            return outputZero;
        }
        InnerPart converter = inner.part();
        String zero = wiring.directory().type(inner.unit()).rails().stream()
                .filter(rail -> rail.name().equals(converter.from()))
                .findFirst()
                .map(Rail::zero)
                .flatMap(Datum::known)
                .orElse("0V");
        return wiring.pointVertex(inner.unit(), zero).orElse(part.zero() < 0 ? outputZero : part.zero());
    }

    /** {@return the returns of the inputs of all isolated converters} */
    static List<Integer> inputZeros(Circuit circuit) {
        List<Integer> zeros = new ArrayList<>();
        for (Part part : circuit.wiring().parts()) {
            if (part.origin() instanceof Part.Inner inner && inner.part().kind().is(PartKind.ISOLATED_CONVERTER)) {
                zeros.add(inputZero(circuit.wiring(), part, inner, part.zero()));
            }
        }
        return zeros;
    }

    private String name(Part.Inner inner) {
        return circuit.wiring().directory().name(inner.unit()) + " "
                + inner.part().name();
    }
}
