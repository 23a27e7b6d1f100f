package ringout.trace.predict;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.graph.power.Consumer;
import ringout.graph.power.PowerGraph;
import ringout.model.UnitKind;
import ringout.solve.meter.Change;
import ringout.trace.candidate.Candidate;
import ringout.trace.candidate.Defect;

/**
 * What the modules of an aircraft do with a fault: who is heard, who is lit. By the ways of the power and the ways of the
 * signals, both walked in the circuit with the fault in it.
 *
 * <p>A unit is heard when a chain of working links and working units leads from it to the flight controller; a unit that
 * only listens is heard when one leads to it. Where several controllers are aboard one suffices.
 */
public final class Behaviour {
    private final Circuit circuit;
    private final Wiring wiring;
    private final List<DataLink> links;
    private final List<List<DataLink>> linksOf = new ArrayList<>();
    private final BusStates buses;
    private final BitSet chiefs = new BitSet();
    private final BitSet couldSpeak;
    private final BitSet couldHear;
    private final BitSet wasLit = new BitSet();
    private final BitSet worked;
    private final PowerReach healthy;
    private final int units;
    private final Map<Plugged, Set<String>> beyond = new ConcurrentHashMap<>();

    /** A plug by number of its unit and in its type. */
    private record Plugged(int unit, int plug) {}

    private Behaviour(Circuit circuit) {
        this.circuit = circuit;
        this.wiring = circuit.wiring();
        this.units = wiring.aircraft().units().size();
        this.links = DataLinks.of(circuit);
        for (int unit = 0; unit < units; unit++) {
            linksOf.add(new ArrayList<>());
        }
        for (DataLink link : links) {
            linksOf.get(link.from()).add(link);
            linksOf.get(link.to()).add(link);
        }
        this.buses = BusStates.of(circuit);
        chiefs();
        Edited none = new Edited(circuit, List.of());
        this.healthy = new PowerReach(none, Set.of());
        this.worked = working(healthy, wasLit);
        EditedNets nets = new EditedNets(none);
        this.couldSpeak = heard(nets, worked, true);
        this.couldHear = heard(nets, worked, false);
    }

    /** The behaviour of a circuit, prepared once. */
    public static Behaviour of(Circuit circuit) {
        return circuit.know(Behaviour.class, Behaviour::new);
    }

    /** The controllers; where none is aboard, the unit with most links. */
    private void chiefs() {
        int most = -1;
        for (int unit = 0; unit < units; unit++) {
            if (circuit.aboard(unit) && wiring.directory().type(unit).kind().is(UnitKind.CONTROLLER)) {
                chiefs.set(unit);
            }
            if (most < 0 || linksOf.get(unit).size() > linksOf.get(most).size()) {
                most = unit;
            }
        }
        if (chiefs.isEmpty() && most >= 0) {
            chiefs.set(most);
        }
    }

    /** Units that answer in the healthy circuit: heard by the controller, or commanded by it. */
    public SortedSet<String> modules() {
        BitSet all = (BitSet) couldSpeak.clone();
        all.or(couldHear);
        return names(all);
    }

    /** Units that are lit in the healthy circuit. */
    public SortedSet<String> lit() {
        return names(wasLit);
    }

    private SortedSet<String> names(BitSet some) {
        SortedSet<String> names = new TreeSet<>();
        some.stream().forEach(unit -> names.add(wiring.directory().name(unit)));
        return names;
    }

    /** Units whose every rail that draws has power; fills in those of which any has. A unit that takes none works. */
    private BitSet working(PowerReach reach, BitSet lit) {
        PowerGraph power = PowerGraph.of(circuit);
        BitSet working = new BitSet();
        for (int unit = 0; unit < units; unit++) {
            if (circuit.aboard(unit)) {
                List<Consumer> all = power.consumersOf(unit);
                List<Consumer> loaded =
                        all.stream().filter(c -> !c.loads().isEmpty()).toList();
                List<Consumer> inputs = all.stream().filter(Consumer::draws).toList();
                boolean any = (loaded.isEmpty() ? inputs : loaded).stream().anyMatch(reach::lit);
                boolean every = loaded.isEmpty()
                        ? inputs.isEmpty() || any
                        : loaded.stream().allMatch(reach::lit);
                lit.set(unit, any);
                working.set(unit, every);
            }
        }
        return working;
    }

    private BitSet heard(EditedNets nets, BitSet working, boolean towardsChief) {
        BitSet reached = new BitSet();
        ArrayDeque<Integer> open = new ArrayDeque<>();
        chiefs.stream().filter(working::get).forEach(chief -> {
            reached.set(chief);
            open.add(chief);
        });
        while (!open.isEmpty()) {
            int unit = open.remove();
            for (DataLink link : linksOf.get(unit)) {
                int far = link.from() == unit ? link.to() : link.from();
                boolean right = link.form().bothWays() || (towardsChief ? link.to() == unit : link.from() == unit);
                if (right && !reached.get(far) && working.get(far) && buses.holds(link, nets)) {
                    reached.set(far);
                    open.add(far);
                }
            }
        }
        return reached;
    }

    /** What a candidate makes one see. */
    public Signature signature(Candidate candidate) {
        Defect defect = candidate.defect();
        Set<Integer> off =
                defect instanceof Defect.SourceDown down ? Set.of(down.source().index()) : Set.<Integer>of();
        return signature(candidate, defect, candidate.changes(), off);
    }

    /** What one sees with a candidate and a plug pulled besides. */
    Signature unplugged(Candidate candidate, int unit, int plug) {
        List<Change> changes =
                BusMeter.with(candidate.changes(), BusMeter.of(circuit).pulled(unit, plug));
        Defect defect = candidate.defect();
        Set<Integer> off =
                defect instanceof Defect.SourceDown down ? Set.of(down.source().index()) : Set.<Integer>of();
        EditedNets nets = new EditedNets(new Edited(circuit, changes));
        BitSet lit = new BitSet();
        PowerReach reach = new PowerReach(new Edited(circuit, changes), off);
        BitSet working = working(reach, lit);
        working.and(worked);
        return seen(cutOff(defect, nets), nets, lit, working, new BitSet(), new TreeSet<>(reach.opened()));
    }

    /** A unit that is off its bus disturbs nobody there: what is wrong inside it then concerns it alone. */
    private Defect cutOff(Defect defect, EditedNets nets) {
        if (defect instanceof Defect.SameAddress same && !buses.together(same.unit(), same.other(), nets)) {
            return Healthy.CIRCUIT.defect();
        }
        boolean alone =
                defect instanceof Defect.WrongSetting wrong && wrong.bus() && !buses.together(wrong.unit(), -1, nets);
        return alone ? new Defect.Inside(((Defect.WrongSetting) defect).unit(), Defect.Inside.How.MUTE) : defect;
    }

    /** What one sees when some edges are open and nothing else is wrong. */
    Signature without(List<Change> opened) {
        Edited edited = new Edited(circuit, opened);
        BitSet lit = new BitSet();
        BitSet working = working(new PowerReach(edited, Set.of()), lit);
        working.and(worked);
        return seen(Healthy.CIRCUIT.defect(), new EditedNets(edited), lit, working, new BitSet(), new TreeSet<>());
    }

    /** Units that are silent or dark because a plug is pulled, nothing else being wrong; found once. */
    Set<String> beyond(int unit, int plug) {
        return beyond.computeIfAbsent(new Plugged(unit, plug), key -> found(unit, plug));
    }

    private Set<String> found(int unit, int plug) {
        EditedNets nets =
                new EditedNets(new Edited(circuit, BusMeter.of(circuit).pulled(unit, plug)));
        BitSet lit = new BitSet();
        Edited edited = new Edited(circuit, BusMeter.of(circuit).pulled(unit, plug));
        BitSet working = working(new PowerReach(edited, Set.of()), lit);
        working.and(worked);
        Signature alone =
                seen(new Defect.Inside(-1, Defect.Inside.How.MUTE), nets, lit, working, new BitSet(), new TreeSet<>());
        Set<String> gone = new TreeSet<>(alone.silent());
        gone.addAll(alone.dark());
        return gone;
    }

    private Signature signature(Candidate candidate, Defect defect, List<Change> changes, Set<Integer> off) {
        Edited edited = new Edited(circuit, changes);
        EditedNets nets = new EditedNets(edited);
        BitSet lit = wasLit;
        BitSet working = (BitSet) worked.clone();
        SortedSet<String> opened = new TreeSet<>();
        BitSet restarting = new BitSet();
        if (!off.isEmpty() || edited.touched().stream().anyMatch(this::carriesPower)) {
            lit = new BitSet();
            PowerReach reach = new PowerReach(edited, off);
            working = working(reach, lit);
            working.and(worked);
            opened.addAll(reach.opened());
            if (lowers(defect)) {
                sags(candidate, restarting, lit, working);
            }
        } else if (defect instanceof Defect.SourceSags) {
            lit = (BitSet) wasLit.clone();
            sags(candidate, restarting, lit, working);
        }
        return seen(defect, nets, lit, working, restarting, opened);
    }

    /** Where a way of the power is left, but a worse one: the volts decide. */
    private static boolean lowers(Defect defect) {
        return defect instanceof Defect.PoorContact || defect instanceof Defect.Open;
    }

    private void sags(Candidate candidate, BitSet restarting, BitSet lit, BitSet working) {
        BitSet off = new BitSet();
        new Sags(circuit).find(candidate, restarting, off);
        working.andNot(off);
        lit.andNot(off);
        restarting.andNot(off);
    }

    private boolean carriesPower(int vertex) {
        return healthy.fed(vertex) || healthy.returned(vertex);
    }

    private Signature seen(
            Defect defect,
            EditedNets nets,
            BitSet litNow,
            BitSet working,
            BitSet restarting,
            SortedSet<String> opened) {
        BitSet lit = (BitSet) litNow.clone();
        BitSet erratic = buses.unsteady(nets, working);
        erratic.or(restarting);
        links.stream()
                .filter(link -> BusStates.turned(link, nets))
                .forEach(link -> erratic.set(chiefs.get(link.to()) ? link.from() : hears(link)));
        BitSet mute = new BitSet();
        inside(defect, lit, working, mute, erratic);
        BitSet alive = (BitSet) working.clone();
        alive.andNot(mute);
        BitSet silent = (BitSet) couldSpeak.clone();
        silent.andNot(heard(nets, alive, true));
        BitSet deaf = (BitSet) couldHear.clone();
        deaf.andNot(couldSpeak);
        deaf.andNot(heard(nets, alive, false));
        silent.or(deaf);
        BitSet dark = (BitSet) wasLit.clone();
        dark.andNot(lit);
        erratic.andNot(silent);
        return new Signature(names(silent), names(erratic), names(dark), opened);
    }

    /** The motor of a link of phases: the one that no signal drives. */
    private int hears(DataLink link) {
        boolean driven = linksOf.get(link.from()).stream()
                .anyMatch(other -> other.form() != DataLink.Form.PHASES && other.to() == link.from());
        return driven ? link.to() : link.from();
    }

    /** What a defect does that is not in the wires. */
    private void inside(Defect defect, BitSet lit, BitSet working, BitSet mute, BitSet erratic) {
        if (defect instanceof Defect.Inside of) {
            switch (of.how()) {
                case DEAD -> {
                    lit.clear(of.unit());
                    working.clear(of.unit());
                }
                case MUTE -> mute.set(Math.max(of.unit(), 0), of.unit() + 1);
                case RESTARTS -> erratic.set(of.unit());
            }
        } else if (defect instanceof Defect.SameAddress of) {
            erratic.set(of.unit());
            erratic.set(of.other());
        } else if (defect instanceof Defect.WrongSetting of && of.bus()) {
            mute.set(of.unit());
            erratic.or(buses.others(of.unit(), of.port()));
        } else if (defect instanceof Defect.WrongSetting of) {
            devices(of).ifPresent(mute::or);
        } else if (defect instanceof Defect.Terminated of) {
            erratic.or(buses.withoutAny(of));
        } else if (defect instanceof Defect.Disturbed of) {
            disturbed(of, erratic);
        }
    }

    /** Units that hang on one serial port alone. */
    private Optional<BitSet> devices(Defect.WrongSetting of) {
        BitSet found = new BitSet();
        for (DataLink link : linksOf.get(of.unit())) {
            int near = link.from() == of.unit()
                    ? link.lines().get(0).a()
                    : link.lines().get(0).b();
            boolean here = link.form() == DataLink.Form.WIRE
                    && wiring.isPin(near)
                    && wiring.plug(near).name().equals(of.port());
            if (here) {
                found.set(link.from() == of.unit() ? link.to() : link.from());
            }
        }
        return found.isEmpty() ? Optional.empty() : Optional.of(found);
    }

    private void disturbed(Defect.Disturbed of, BitSet erratic) {
        for (var wire : wiring.wires()) {
            if (wire.leadIndex() == of.victim()) {
                erratic.set(far(wiring.unitOf(wire.fromPin()), wiring.unitOf(wire.toPin())));
            }
        }
    }

    private int far(int a, int b) {
        boolean second = chiefs.get(a) || (b < units && a >= units);
        return second ? b : a;
    }
}
