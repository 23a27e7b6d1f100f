package ringout.graph.power;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ringout.graph.Circuit;
import ringout.graph.Gap;
import ringout.graph.Part;
import ringout.graph.Trail;
import ringout.graph.Wiring;
import ringout.graph.index.Walk;
import ringout.model.PinRole;

/**
 * The supplies of a circuit: which sources work, what they lift, at which voltage every supply point lies at rest, and who
 * takes power where. Built once a circuit in time linear in pins, conductors and parts.
 *
 * <p>Voltages are differences between two points of one island: what working sources join. A pack whose minus is joined to
 * the plus of another adds to it; a board, splice or second socket passes what comes; behind a combiner of diodes lies the
 * higher input.
 */
public final class PowerGraph {
    private final Circuit circuit;
    private final Ties ties;
    private final List<PowerSource> sources;
    private final List<Consumer> consumers;
    private final List<PlacedLoad> loads;
    private final Feeding feeding;
    private final Stacks stacks;
    private final Potentials potentials;
    private final SupplyTree tree;
    private final Demand demand;
    private final int[] zeroPins;
    private final int[] supplyPins;
    private final Map<Integer, List<Diode>> byCathode = new HashMap<>();
    private final Map<Integer, List<Consumer>> byTie = new HashMap<>();
    private final Map<Integer, List<Consumer>> byUnit = new HashMap<>();

    private PowerGraph(Circuit circuit) {
        this.circuit = circuit;
        Wiring wiring = circuit.wiring();
        ties = Ties.of(circuit);
        SupplyFinder found = new SupplyFinder(wiring);
        sources = List.copyOf(found.sources);
        consumers = List.copyOf(found.consumers);
        loads = List.copyOf(found.loads);
        zeroPins = new int[ties.count()];
        supplyPins = new int[ties.count()];
        countPins();
        feeding = new Feeding(circuit, ties, sources);
        stacks = new Stacks(ties, sources, feeding.on);
        potentials = new Potentials(ties, zeroPins, sources, feeding);
        tree = new SupplyTree(circuit, sources, feeding.on, stacks);
        demand = new Demand(wiring.graph().vertexCount(), tree, ties, potentials, aboard());
        feeding.diodes.forEach(diode -> byCathode
                .computeIfAbsent(diode.cathode(), key -> new ArrayList<>())
                .add(diode));
        consumers.forEach(consumer -> byUnit.computeIfAbsent(consumer.unit(), key -> new ArrayList<>())
                .add(consumer));
        aboard().forEach(consumer -> byTie.computeIfAbsent(ties.of(consumer.plus()), key -> new ArrayList<>())
                .add(consumer));
    }

    /** The supplies of a circuit, found once. */
    public static PowerGraph of(Circuit circuit) {
        return circuit.know(PowerGraph.class, PowerGraph::new);
    }

    private void countPins() {
        Wiring wiring = circuit.wiring();
        for (int pin = 0; pin < wiring.pinCount(); pin++) {
            PinRole role = wiring.pin(pin).role().or(PinRole.NONE);
            if (role == PinRole.ZERO_V && circuit.aboard(wiring.unitOf(pin))) {
                zeroPins[ties.of(pin)]++;
            } else if (isSupply(role) && circuit.aboard(wiring.unitOf(pin))) {
                supplyPins[ties.of(pin)]++;
            }
        }
    }

    /** Whether a pin of this role is at a supply and not at 0V. */
    public static boolean isSupply(PinRole role) {
        return role == PinRole.SUPPLY_IN
                || role == PinRole.SUPPLY_OUT
                || role == PinRole.SUPPLY_THROUGH
                || role == PinRole.PACK_PLUS;
    }

    private List<Consumer> aboard() {
        return consumers.stream()
                .filter(consumer -> circuit.aboard(consumer.unit()))
                .toList();
    }

    /** Whether a part is a diode or an ideal diode. */
    public static boolean isDiode(Part part) {
        return Diode.is(part);
    }

    /** Points that lie at one voltage at rest. */
    public Ties ties() {
        return ties;
    }

    /** All sources of the aircraft, working or not. */
    public List<PowerSource> sources() {
        return sources;
    }

    /** Whether a source works in this state: aboard, not declared off, and fed if it needs an input. */
    public boolean works(PowerSource source) {
        return feeding.on.get(source.index());
    }

    /** All consumers of the aircraft, aboard or not; number i has index i. */
    public List<Consumer> consumers() {
        return consumers;
    }

    /** What every unit of the aircraft, aboard or not, draws at which points; number i has index i. */
    public List<PlacedLoad> loads() {
        return loads;
    }

    /** The consumers aboard whose supply point lies on a tie. */
    public List<Consumer> consumersOn(int tie) {
        return byTie.getOrDefault(tie, List.of());
    }

    /** The consumers of a unit. */
    public List<Consumer> consumersOf(int unit) {
        return byUnit.getOrDefault(unit, List.of());
    }

    /** Number of 0V pins aboard on a tie. */
    public int zeroPins(int tie) {
        return zeroPins[tie];
    }

    /** Number of supply pins aboard on a tie. */
    public int supplyPins(int tie) {
        return supplyPins[tie];
    }

    /** Whether a working source, or a diode behind one, touches the tie of a point. */
    public boolean fed(int vertex) {
        return feeding.live.get(ties.of(vertex));
    }

    /** The working sources that lift a tie directly. */
    public List<PowerSource> lifting(int tie) {
        return stacks.lifting(tie);
    }

    /** The working sources that feed a tie through diodes that lead to it. */
    public List<PowerSource> throughDiodes(int tie) {
        Set<PowerSource> found = new LinkedHashSet<>();
        BitSet seen = new BitSet();
        seen.set(tie);
        throughDiodes(tie, seen, found);
        return List.copyOf(found);
    }

    private void throughDiodes(int tie, BitSet seen, Set<PowerSource> found) {
        for (Diode diode : byCathode.getOrDefault(tie, List.of())) {
            if (!seen.get(diode.anode())) {
                seen.set(diode.anode());
                found.addAll(lifting(diode.anode()));
                throughDiodes(diode.anode(), seen, found);
            }
        }
    }

    /** All working sources that feed the tie of a point: directly, then through diodes. */
    public List<PowerSource> feeding(int vertex) {
        int tie = ties.of(vertex);
        Set<PowerSource> found = new LinkedHashSet<>(lifting(tie));
        found.addAll(throughDiodes(tie));
        return List.copyOf(found);
    }

    /** The lowest source of the stack a source is on: what it feeds returns to the minus of that one. */
    public PowerSource bottom(PowerSource source) {
        return stacks.bottom(source);
    }

    /** What a source lifts its plus above the minus of the lowest source it stands on. */
    public Volts height(PowerSource source) {
        PowerSource below = bottom(source);
        return source.minus() < 0 || below.equals(source)
                ? source.volts()
                : between(source.plus(), below.minus()).orElse(source.volts());
    }

    /** The voltage at rest of a point against the reference of its island, if it is in one. */
    public Optional<Volts> volts(int vertex) {
        return potentials.of(ties.of(vertex));
    }

    /** The voltage at rest of a point against another, if working sources join them. */
    public Optional<Volts> between(int plus, int minus) {
        return plus < 0 || minus < 0 ? Optional.empty() : potentials.between(ties.of(plus), ties.of(minus));
    }

    /** The tie that is the reference of a point's island, or -1 when it is in none. */
    public int reference(int vertex) {
        return potentials.reference(ties.of(vertex));
    }

    /** Data without which the range of a point's voltage is not known. */
    public List<Gap> missing(int vertex) {
        Set<Gap> missing = new LinkedHashSet<>();
        for (int tie = ties.of(vertex); tie >= 0; tie = potentials.before(tie)) {
            lifting(tie).forEach(source -> missing.addAll(source.missing()));
            for (Diode diode : byCathode.getOrDefault(tie, List.of())) {
                if (!diode.dropKnown()) {
                    missing.add(new Gap("forward voltage", diode.name()));
                }
            }
        }
        return List.copyOf(missing);
    }

    /** The way with the fewest steps between two points of one tie. */
    public Optional<Trail> trail(int from, int to) {
        return walk(from, to).map(walk -> Trail.of(circuit.wiring(), walk));
    }

    /** The same way as edges of the typed graph. */
    public Optional<Walk> walk(int from, int to) {
        return circuit.know(TieWays.class, TieWays::new).through(from, to);
    }

    /** How power comes from the packs to every supply point. */
    public SupplyTree tree() {
        return tree;
    }

    /** What flows to every supply point, as a first estimate. */
    public Demand demand() {
        return demand;
    }
}
