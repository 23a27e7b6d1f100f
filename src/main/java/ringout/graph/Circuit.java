package ringout.graph;

import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import ringout.graph.index.IndexGraph;
import ringout.model.End;
import ringout.model.PartKind;
import ringout.model.State;
import ringout.model.StateSetting;
import ringout.model.shape.Shape;

/**
 * The typed graph in one declared state: units taken off, plugs pulled and switches opened are out of it. Facts derived
 * from it are computed once and kept: see {@link #know}.
 */
public final class Circuit {
    /** Name of the state of an aircraft that declares none. */
    public static final String AS_FLOWN = "as flown";

    private final Wiring wiring;
    private final State state;
    private final BitSet broken;
    private final BitSet absent = new BitSet();
    private final BitSet pulledPins = new BitSet();
    private final IndexGraph live;
    private final Nets nets;
    private final Map<Class<?>, Object> facts = new HashMap<>();

    private Circuit(Wiring wiring, State state, BitSet broken) {
        this.wiring = wiring;
        this.state = state;
        this.broken = broken;
        state.absent().forEach(name -> wiring.directory().find(name).ifPresent(absent::set));
        state.pulled().forEach(this::pull);
        this.live = wiring.graph().onlyEdges(this::isLive);
        this.nets = new Nets(wiring, live.onlyEdges(edge -> wiring.kind(edge) != EdgeKind.PART));
    }

    /** The graph of one state. */
    public static Circuit of(Wiring wiring, State state) {
        return new Circuit(wiring, state, new BitSet());
    }

    /** The same state with edges that do not conduct: a broken conductor, an open contact, a blown fuse. */
    public Circuit without(int... edges) {
        BitSet more = (BitSet) broken.clone();
        for (int edge : edges) {
            more.set(edge);
        }
        return new Circuit(wiring, state, more);
    }

    /** The graph of every declared state, or of "as flown" when none is declared. */
    public static List<Circuit> all(Wiring wiring) {
        return states(wiring).stream().map(state -> of(wiring, state)).toList();
    }

    /** The declared states, or "as flown" alone. */
    public static List<State> states(Wiring wiring) {
        List<State> declared = wiring.aircraft().states();
        if (!declared.isEmpty()) {
            return declared;
        }
        Shape<State> shape = Shape.of(State.class);
        return List.of(shape.with(shape.empty(), "name", AS_FLOWN));
    }

    private void pull(String plug) {
        Site site = wiring.directory().resolve(new End(plug));
        if (site instanceof Site.OnPlug on) {
            pulledPins.set(wiring.firstPin(on.unit(), on.plug()), wiring.endPin(on.unit(), on.plug()));
        }
    }

    private boolean isLive(int edge) {
        if (broken.get(edge)) {
            return false;
        }
        int ref = wiring.ref(edge);
        return switch (wiring.kind(edge)) {
            case CONDUCTOR -> true;
            case CONTACT -> mated(contactPin(edge));
            case JOIN -> aboard(wiring.unitOf(ref));
            case PART -> closed(wiring.parts().get(ref));
        };
    }

    private int contactPin(int edge) {
        int a = wiring.graph().from(edge);
        return wiring.isPin(a) ? a : wiring.graph().to(edge);
    }

    private boolean closed(Part part) {
        if (part.origin() instanceof Part.Terminator terminator) {
            return aboard(terminator.unit()) && Terminators.state(this, terminator) == Terminators.Seen.ON;
        }
        if (part.origin() instanceof Part.Inner inner) {
            return aboard(inner.unit()) && !(inner.part().kind().is(PartKind.SWITCH) && open(inner));
        }
        return true;
    }

    private boolean open(Part.Inner inner) {
        String unit = wiring.directory().name(inner.unit());
        return state.open().contains(unit)
                || state.open().contains(unit + ":" + inner.part().name());
    }

    /** The graph with every plug made. */
    public Wiring wiring() {
        return wiring;
    }

    /** The declared state. */
    public State state() {
        return state;
    }

    /** Whether a unit or joint is aboard in this state. */
    public boolean aboard(int unit) {
        return !absent.get(unit);
    }

    /** Whether the plug of a pin is mated in this state. */
    public boolean mated(int pin) {
        return aboard(wiring.unitOf(pin)) && !pulledPins.get(pin);
    }

    /** Whether a conductor is mated at both ends in this state. */
    public boolean mated(Wire wire) {
        return mated(wire.fromPin()) && mated(wire.toPin());
    }

    /** The live edges: conductors, mated contacts, joins of units aboard, closed parts. */
    public IndexGraph live() {
        return live;
    }

    /** Nets: what is one point by conductors, contacts and joins. */
    public Nets nets() {
        return nets;
    }

    /** Whether a source is declared off in this state: UNIT, or UNIT:part. */
    public boolean off(int unit) {
        return state.off().contains(wiring.directory().name(unit));
    }

    /** A setting this state changes. */
    public Optional<StateSetting> setting(int unit, String port) {
        String name = wiring.directory().name(unit);
        return state.settings().stream()
                .filter(set -> set.unit().equals(name) && set.port().or(port).equals(port))
                .findFirst();
    }

    /** The way with the fewest steps between two vertices over conductors, contacts and joins; parts are not passed. */
    public Optional<Trail> trail(int from, int to) {
        return know(Trails.class, Trails::new).through(from, to);
    }

    /** The circuit with everything aboard, plugged, closed and on, but with the settings of this state. */
    public Circuit whole() {
        boolean takes = !state.absent().isEmpty()
                || !state.pulled().isEmpty()
                || !state.open().isEmpty()
                || !state.off().isEmpty();
        return takes ? know(Whole.class, Whole::of).circuit() : this;
    }

    /** Keeps the circuit that the state takes nothing away from. */
    private record Whole(Circuit circuit) {
        private static Whole of(Circuit taken) {
            Shape<State> shape = Shape.of(State.class);
            State state = taken.state;
            for (String field : List.of("absent", "pulled", "open", "off")) {
                state = shape.with(state, field, List.of());
            }
            return new Whole(new Circuit(taken.wiring, state, taken.broken));
        }
    }

    /** A fact derived from this circuit, computed at the first question and kept. */
    public <F> F know(Class<F> type, Function<Circuit, F> maker) {
        Object known = facts.get(type);
        if (known == null) {
            known = maker.apply(this);
            facts.put(type, known);
        }
        return type.cast(known);
    }
}
