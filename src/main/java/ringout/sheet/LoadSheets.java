package ringout.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import ringout.check.form.Situation;
import ringout.check.power.PackEndurance;
import ringout.graph.Circuit;
import ringout.graph.Part;
import ringout.graph.power.Consumer;
import ringout.graph.power.PlacedLoad;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.graph.power.SourceReach;
import ringout.model.Aircraft;
import ringout.model.Datum;
import ringout.model.PartRating;
import ringout.model.Rail;
import ringout.solve.power.LoadCase;
import ringout.solve.power.LoadFigure;
import ringout.solve.power.OperatingPoint;
import ringout.solve.power.PackFigure;
import ringout.solve.power.PowerFlow;
import ringout.solve.power.RegulatorFigure;

/** Fills the sheet of electrical loads from the operating points at average and at peak. */
public final class LoadSheets {
    private final Situation at;
    private final Circuit circuit;
    private final PowerGraph power;
    private final SourceReach reach;
    private final PowerFlow average;
    private final Currents usual;
    private final Currents highest;

    /** Name of the rail of every pack. */
    private final Map<Integer, String> railOf = new HashMap<>();

    /** What every load, regulator and source takes or gives in one case; nothing where there is no operating point. */
    private static final class Currents {
        private final boolean known;
        private final Map<Integer, LoadFigure> loads = new HashMap<>();
        private final Map<Integer, RegulatorFigure> regulators = new HashMap<>();
        private final Map<Integer, Double> out = new HashMap<>();

        Currents(OperatingPoint point) {
            known = point instanceof PowerFlow;
            if (point instanceof PowerFlow flow) {
                flow.loads().forEach(load -> loads.put(load.load().index(), load));
                flow.regulators().forEach(r -> regulators.put(r.source().index(), r));
                flow.regulators().forEach(r -> out.put(r.source().index(), r.outAmps()));
                flow.packs().forEach(pack -> out.put(pack.source().index(), pack.amps()));
            }
        }

        OptionalDouble ifKnown(double amps) {
            return known ? OptionalDouble.of(amps) : OptionalDouble.empty();
        }

        OptionalDouble out(PowerSource source) {
            return ifKnown(out.getOrDefault(source.index(), 0.0));
        }

        double takes(PlacedLoad load) {
            LoadFigure figure = loads.get(load.index());
            return figure == null ? 0 : figure.amps();
        }

        double takes(PowerSource regulator) {
            RegulatorFigure figure = regulators.get(regulator.index());
            return figure == null ? 0 : figure.inAmps();
        }
    }

    private LoadSheets(Situation at, PowerFlow average) {
        this.at = at;
        this.average = average;
        circuit = at.circuit();
        power = PowerGraph.of(circuit);
        reach = SourceReach.of(circuit);
        usual = new Currents(average);
        highest = new Currents(OperatingPoint.of(circuit, LoadCase.PEAK));
    }

    /** {@return the loads of an aircraft in one state} */
    public static LoadSheet of(Circuit circuit) {
        Situation at = new Situation(circuit);
        OperatingPoint point = OperatingPoint.of(circuit, LoadCase.AVERAGE);
        List<String> open = new ArrayList<>(collapsed("average", point));
        open.addAll(collapsed("peak", OperatingPoint.of(circuit, LoadCase.PEAK)));
        point.assumed()
                .forEach(assumption -> open.add("assumed or left out: "
                        + assumption.gap().datum() + " of " + assumption.gap().of()));
        if (point instanceof PowerFlow flow) {
            return new LoadSheets(at, flow).sheet(open);
        }
        return new LoadSheet(
                name(at.aircraft()), at.state(), List.of(), List.of(), List.of(), List.of(), List.of(), open);
    }

    private static List<String> collapsed(String loads, OperatingPoint point) {
        if (point instanceof OperatingPoint.Collapse collapse) {
            return List.of("all loads at their " + loads + " cannot be carried: the voltage collapses at "
                    + collapse.limiting());
        }
        return point instanceof OperatingPoint.Unsettled
                ? List.of("no steady state with all loads at their " + loads)
                : List.of();
    }

    private static String name(Aircraft aircraft) {
        return aircraft.designation()
                .known()
                .map(code -> code + " " + aircraft.name())
                .orElse(aircraft.name());
    }

    private LoadSheet sheet(List<String> open) {
        List<PackEndurance> groups = PackEndurance.all(at, average);
        List<LoadRail> rails = new ArrayList<>();
        groups.forEach(group -> {
            group.packs().forEach(pack -> railOf.put(pack.index(), group.name()));
            rails.add(rail(group.name(), true, group.packs()));
        });
        power.sources().stream()
                .filter(source -> power.works(source) && source.kind() != PowerSource.Kind.PACK)
                .forEach(source -> rails.add(rail(source.name(), false, List.of(source))));
        return new LoadSheet(
                name(at.aircraft()),
                at.state(),
                rails,
                average.packs().stream().map(this::pack).toList(),
                boards(),
                groups.stream()
                        .map(group -> new Lasting(group.name(), group.endurance()))
                        .toList(),
                unfed(),
                open);
    }

    private LoadRail rail(String name, boolean packs, List<PowerSource> sources) {
        List<Taker> takers = new ArrayList<>();
        for (PlacedLoad load : power.loads()) {
            List<PowerSource> feeding = circuit.aboard(load.unit()) ? reach.feeding(load.plus()) : List.of();
            if (feeding.stream().anyMatch(sources::contains)) {
                takers.add(new Taker(
                        name(load),
                        false,
                        !sources.containsAll(feeding),
                        usual.loads.containsKey(load.index())
                                ? usual.loads.get(load.index()).volts()
                                : 0,
                        usual.takes(load),
                        highest.ifKnown(highest.takes(load))));
            }
        }
        for (RegulatorFigure regulator : average.regulators()) {
            List<PowerSource> feeding = feeding(regulator.source());
            if (feeding.stream().anyMatch(sources::contains)) {
                takers.add(new Taker(
                        regulator.source().name(),
                        true,
                        !sources.containsAll(feeding),
                        regulator.inVolts(),
                        regulator.inAmps(),
                        highest.ifKnown(highest.takes(regulator.source()))));
            }
        }
        List<String> fedBy = sources.stream()
                .flatMap(source -> feeding(source).stream())
                .map(source -> railOf.getOrDefault(source.index(), source.name()))
                .distinct()
                .toList();
        return new LoadRail(
                name, packs, fedBy, sources.stream().map(this::output).toList(), takers);
    }

    private List<PowerSource> feeding(PowerSource regulator) {
        return regulator.inputs().stream()
                .flatMap(input -> reach.feeding(input).stream())
                .distinct()
                .toList();
    }

    private Output output(PowerSource source) {
        double derating = at.directory().unit(source.unit()).derating().or(1.0);
        boolean pack = source.kind() == PowerSource.Kind.PACK;
        OptionalDouble volts =
                source.minus() < 0 ? OptionalDouble.empty() : average.volts(source.plus(), source.minus());
        return new Output(
                source.name(),
                volts.orElse(0),
                usual.out(source).orElse(0),
                highest.out(source),
                pack
                        ? cells(source)
                        : known(source.rail().map(Rail::continuousA).orElse(Datum.notAsked()), derating),
                pack ? cells(source) : known(source.rail().map(Rail::peakA).orElse(Datum.notAsked()), derating));
    }

    private OptionalDouble cells(PowerSource source) {
        if (source.part() < 0 || !(circuit.wiring().parts().get(source.part()).origin() instanceof Part.Inner inner)) {
            return OptionalDouble.empty();
        }
        PartRating rating = inner.part().rating();
        return rating.capacityAh().isKnown()
                ? known(rating.cRate(), rating.capacityAh().or(0.0))
                : OptionalDouble.empty();
    }

    private static OptionalDouble known(Datum<Double> datum, double times) {
        return datum.isKnown() ? OptionalDouble.of(datum.or(0.0) * times) : OptionalDouble.empty();
    }

    private PackLine pack(PackFigure pack) {
        return new PackLine(at.directory().name(pack.source().unit()), pack.amps(), pack.openVolts(), pack.volts());
    }

    /** Boards and inputs of regulators that packs feed directly. */
    private List<BoardLine> boards() {
        List<BoardLine> boards = new ArrayList<>();
        for (Consumer consumer : power.consumers()) {
            boolean through =
                    circuit.aboard(consumer.unit()) && consumer.loads().isEmpty() && consumer.zero() >= 0;
            List<PowerSource> feeding = through ? reach.feeding(consumer.plus()) : List.of();
            boolean packs = feeding.stream()
                    .anyMatch(source -> source.kind() == PowerSource.Kind.PACK && source.unit() != consumer.unit());
            OptionalDouble volts = packs ? average.volts(consumer.plus(), consumer.zero()) : OptionalDouble.empty();
            volts.ifPresent(v -> boards.add(new BoardLine(name(consumer), v)));
        }
        return boards;
    }

    private String name(Consumer consumer) {
        String unit = at.directory().name(consumer.unit());
        return power.consumersOf(consumer.unit()).size() > 1 ? unit + " rail " + consumer.rail() : unit;
    }

    private String name(PlacedLoad load) {
        String unit = at.directory().name(load.unit());
        long rails = power.loads().stream()
                .filter(other -> other.unit() == load.unit() && !other.rail().equals(load.rail()))
                .count();
        return rails > 0 ? unit + " rail " + load.rail() : unit;
    }

    private List<String> unfed() {
        return power.loads().stream()
                .filter(load -> circuit.aboard(load.unit()))
                .filter(load -> !usual.loads.containsKey(load.index())
                        || !usual.loads.get(load.index()).fed())
                .map(this::name)
                .toList();
    }
}
