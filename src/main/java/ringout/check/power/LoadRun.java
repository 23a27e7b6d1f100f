package ringout.check.power;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import ringout.check.form.Situation;
import ringout.graph.EdgeKind;
import ringout.graph.Gap;
import ringout.graph.Part;
import ringout.graph.Trail;
import ringout.graph.Wire;
import ringout.graph.power.PlacedLoad;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.graph.power.SupplyTree;
import ringout.graph.returns.ReturnTree;
import ringout.model.Datum;
import ringout.solve.Resistivity;
import ringout.solve.power.PackFigure;
import ringout.solve.power.PowerFlow;

/**
 * The run of a load: from the poles of the pack stack or regulator that feeds it, out over the supply and back over 0V.
 *
 * @param load the load
 * @param source what feeds it
 * @param top vertex of the plus of the source
 * @param bottom vertex of its minus: of the lowest pack of a stack
 */
record LoadRun(PlacedLoad load, PowerSource source, int top, int bottom) {
    private static final double GOOD_PART = 5;

    /** Finds the runs of a circuit. */
    static final class Finder {
        private final PowerGraph power;
        private final SupplyTree tree;
        private final Map<Integer, PowerSource> byPart = new HashMap<>();
        private final Map<Integer, PowerSource> byPlus = new HashMap<>();

        Finder(Situation at) {
            power = PowerGraph.of(at.circuit());
            tree = power.tree();
            for (PowerSource source : power.sources()) {
                if (power.works(source)) {
                    byPart.put(source.part(), source);
                    byPlus.putIfAbsent(source.plus(), source);
                }
            }
            byPart.remove(-1);
        }

        /** The run of a load; nothing when no source reaches it or it has no 0V. */
        Optional<LoadRun> of(PlacedLoad load) {
            int vertex = load.plus();
            while (tree.reaches(vertex)) {
                Optional<PowerSource> lift =
                        tree.partTo(vertex).map(Part::index).map(byPart::get);
                Optional<PowerSource> source =
                        lift.isPresent() || tree.edgeTo(vertex) >= 0 ? lift : Optional.ofNullable(byPlus.get(vertex));
                if (source.isPresent()) {
                    PowerSource feeds = source.get();
                    int bottom = feeds.kind() == PowerSource.Kind.PACK
                            ? power.bottom(feeds).minus()
                            : feeds.minus();
                    return bottom < 0 || load.zero() < 0
                            ? Optional.empty()
                            : Optional.of(new LoadRun(load, source.get(), vertex, bottom));
                }
                if (tree.edgeTo(vertex) < 0) {
                    return Optional.empty();
                }
                vertex = tree.pointBefore(vertex);
            }
            return Optional.empty();
        }
    }

    /** Volts at the poles of the source. */
    OptionalDouble poles(PowerFlow flow) {
        return flow.volts(top, bottom);
    }

    /** Volts at the load. */
    OptionalDouble volts(PowerFlow flow) {
        return flow.volts(load.plus(), load.zero());
    }

    /** Volts lost between the poles and the load, out and back together. */
    OptionalDouble drop(PowerFlow flow) {
        OptionalDouble poles = poles(flow);
        OptionalDouble volts = volts(flow);
        return poles.isPresent() && volts.isPresent()
                ? OptionalDouble.of(poles.getAsDouble() - volts.getAsDouble())
                : OptionalDouble.empty();
    }

    /** The conductors out, from the load towards the source, then those of the widest way back. */
    List<Wire> wires(Situation at) {
        SupplyTree tree = PowerGraph.of(at.circuit()).tree();
        List<Wire> wires = new ArrayList<>();
        for (int v = load.plus(); v != top && tree.edgeTo(v) >= 0; v = tree.pointBefore(v)) {
            int edge = tree.edgeTo(v);
            if (at.wiring().kind(edge) == EdgeKind.CONDUCTOR) {
                wires.add(at.wiring().wires().get(at.wiring().ref(edge)));
            }
        }
        wires.addAll(back(at));
        return wires;
    }

    private List<Wire> back(Situation at) {
        return ReturnTree.of(at.circuit()).wires(load.zero(), bottom);
    }

    /** The way out in the user's rows. */
    Trail trail(Situation at) {
        return PowerGraph.of(at.circuit()).trail(load.plus(), top).orElse(Trail.NONE);
    }

    /** What was assumed of this run: data missing of its leads and of the units it passes. */
    List<Gap> assumed(Situation at, PowerFlow flow) {
        if (flow.assumed().isEmpty()) {
            return List.of();
        }
        Set<String> names = new TreeSet<>();
        names.add(at.directory().name(load.unit()));
        names.add(source.name());
        names.add(at.directory().name(source.unit()));
        for (Wire wire : wires(at)) {
            names.add(wire.lead().id());
            names.add(at.directory().name(at.wiring().unitOf(wire.fromPin())));
            names.add(at.directory().name(at.wiring().unitOf(wire.toPin())));
        }
        return flow.assumed().stream()
                .map(assumption -> assumption.gap())
                .filter(gap -> names.contains(gap.of()))
                .map(gap -> new Gap(gap.datum().replaceFirst("(?<=current) on .*", ""), gap.of()))
                .distinct()
                .toList();
    }

    /** The peak of the load when it is marked "?"; where its average is missing too, that is asked for instead. */
    Optional<Gap> peakMissing(Situation at) {
        boolean average =
                load.load().averageA().isKnown() || load.load().averageW().isKnown();
        return average && load.load().peakA() instanceof Datum.Unknown
                ? Optional.of(new Gap(PowerData.PEAK, at.directory().name(load.unit())))
                : Optional.empty();
    }

    /** What was assumed of the leads at the packs: all loads hang on them. */
    static List<Gap> assumedOfPacks(Situation at, PowerFlow flow) {
        if (flow.assumed().isEmpty()) {
            return List.of();
        }
        Set<String> leads = new TreeSet<>();
        for (PackFigure pack : flow.packs()) {
            int unit = pack.source().unit();
            for (int pin = at.wiring().firstPin(unit); pin < at.wiring().endPin(unit); pin++) {
                for (int wire : at.wiring().wiresAt(pin)) {
                    leads.add(at.wiring().wires().get(wire).lead().id());
                }
            }
        }
        return flow.assumed().stream()
                .map(assumption -> assumption.gap())
                .filter(gap -> leads.contains(gap.of()))
                .distinct()
                .toList();
    }

    /**
     * Contacts of this run whose resistance nobody gave.
     *
     * @param volts what the figure taken for them loses together
     * @param plugs the plugs they sit in
     */
    record OpenContacts(double volts, Set<String> plugs) {
        /** The data to ask for. */
        List<Gap> gaps() {
            return plugs.stream().map(plug -> new Gap(PowerData.CONTACT, plug)).toList();
        }
    }

    /** Contacts whose resistance was taken for what is usual. */
    OpenContacts openContacts(Situation at, PowerFlow flow) {
        double volts = 0;
        Set<String> plugs = new TreeSet<>();
        for (Wire wire : wires(at)) {
            for (int pin : new int[] {wire.fromPin(), wire.toPin()}) {
                if (!Resistivity.contactKnown(at.wiring(), pin)) {
                    volts += Math.abs(flow.amps(wire)) * Resistivity.contactOhm(at.wiring(), pin);
                    plugs.add(at.wiring()
                            .plugName(at.wiring().unitOf(pin), at.wiring().plugIndex(pin)));
                }
            }
        }
        return new OpenContacts(volts, plugs);
    }

    /** Volts lost in a conductor, contacts apart. */
    static double lost(PowerFlow flow, Wire wire) {
        double amps = Math.abs(flow.amps(wire));
        return amps == 0 ? 0 : flow.heat(wire) / amps;
    }

    /** The lead in which most is lost. */
    Optional<Wire> worst(Situation at, PowerFlow flow) {
        Optional<Wire> worst = Optional.empty();
        for (Wire wire : wires(at)) {
            if (worst.isEmpty() || lost(flow, wire) > lost(flow, worst.get())) {
                worst = Optional.of(wire);
            }
        }
        return worst;
    }

    /** The leads that lose a good part of what the run loses, and those back in which mostly others' current flows. */
    List<String> losing(Situation at, PowerFlow flow) {
        double part = drop(flow).orElse(0) / GOOD_PART;
        double own = flow.loads().stream()
                .filter(figure -> figure.load().index() == load.index())
                .mapToDouble(figure -> figure.amps())
                .sum();
        List<Wire> back = back(at);
        return Stream.concat(
                        wires(at).stream().filter(wire -> lost(flow, wire) > part),
                        back.stream().filter(wire -> Math.abs(flow.amps(wire)) > GOOD_PART * own))
                .map(wire -> wire.lead().id())
                .distinct()
                .toList();
    }

    /** The unit, with the rail where it has several. */
    String name(Situation at) {
        String unit = at.directory().name(load.unit());
        boolean several = PowerGraph.of(at.circuit()).loads().stream()
                .anyMatch(other -> other.unit() == load.unit() && !other.rail().equals(load.rail()));
        return several ? unit + " rail " + load.rail() : unit;
    }
}
