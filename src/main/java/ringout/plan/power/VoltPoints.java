package ringout.plan.power;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import ringout.graph.Circuit;
import ringout.graph.Site;
import ringout.graph.Wiring;
import ringout.graph.order.Covers;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.model.End;
import ringout.model.PinRole;
import ringout.model.PlannedTest;
import ringout.solve.power.PowerFlow;

/** Where volts are read in a stage: at the planned tests, else at a plug in reach of each supply that is new in it. */
final class VoltPoints {
    /** What a bench supply and a hand meter may be off by. Judgement. */
    private static final double SETTING = 0.01;

    private final PowerFlow flow;
    private final Circuit circuit;
    private final Wiring wiring;
    private final PowerGraph power;
    private final BitSet hidden = new BitSet();
    private final Told told;
    private final boolean last;
    private final List<Expected> found = new ArrayList<>();

    /** What earlier stages read: numbers of sources, and ids of planned tests. */
    static final class Told {
        private final Set<Integer> sources = new HashSet<>();
        private final Set<PlannedTest> tests = new HashSet<>();
    }

    private VoltPoints(PowerFlow flow, Told told, boolean last) {
        this.flow = flow;
        this.told = told;
        this.last = last;
        circuit = flow.circuit();
        wiring = circuit.wiring();
        power = PowerGraph.of(circuit);
        Covers covers = Covers.of(circuit);
        for (int cover = 0; cover < covers.all().size(); cover++) {
            hidden.or(covers.pins(cover));
        }
    }

    /**
     * {@return the readings of a stage}
     *
     * @param told what earlier stages read; what this one reads is added
     * @param last no later stage plugs anything in: what cannot be read now never can
     */
    static List<Expected> of(PowerFlow flow, Told told, boolean last) {
        return new VoltPoints(flow, told, last).find();
    }

    /** {@return the reading of the packs alone} */
    static List<Expected> ofPacks(PowerFlow flow) {
        Told rails = new Told();
        rails.tests.addAll(flow.circuit().wiring().aircraft().record().tests());
        PowerGraph.of(flow.circuit()).sources().stream()
                .filter(source -> source.kind() != PowerSource.Kind.PACK)
                .forEach(source -> rails.sources.add(source.index()));
        return of(flow, rails, true);
    }

    private List<Expected> find() {
        Set<Integer> now = new HashSet<>();
        for (PlannedTest test : wiring.aircraft().record().tests()) {
            if (!told.tests.contains(test)) {
                planned(test, now);
            }
        }
        for (PowerSource source : power.sources()) {
            if (fresh(source) && !now.contains(source.index()) && !joined(source, now) && reading(source)) {
                now.add(source.index());
            }
        }
        told.sources.addAll(now);
        return List.copyOf(found);
    }

    private boolean fresh(PowerSource source) {
        boolean top = source.kind() != PowerSource.Kind.PACK || isTop(source);
        return power.works(source) && top && !told.sources.contains(source.index()) && !flow.floats(source.plus());
    }

    /** A pack no other pack stands on. */
    private boolean isTop(PowerSource source) {
        return power.sources().stream()
                .noneMatch(other -> power.works(other)
                        && other.minus() >= 0
                        && !other.equals(source)
                        && power.ties().of(other.minus()) == power.ties().of(source.plus()));
    }

    /** Another source on the same net was read in this stage. */
    private boolean joined(PowerSource source, Set<Integer> now) {
        return power.sources().stream()
                .anyMatch(other -> now.contains(other.index())
                        && power.ties().of(other.plus()) == power.ties().of(source.plus()));
    }

    private void planned(PlannedTest test, Set<Integer> now) {
        boolean volts = test.kind().or("").strip().toLowerCase(Locale.ROOT).startsWith("volt");
        if (!volts || test.pins().size() != 2) {
            return;
        }
        Optional<Integer> plus = pin(test.pins().get(0));
        Optional<Integer> minus = pin(test.pins().get(1));
        if (plus.isEmpty() || minus.isEmpty()) {
            return;
        }
        Optional<PowerSource> source = lifting(plus.get());
        boolean live =
                circuit.mated(plus.get()) && flow.volts(plus.get(), minus.get()).isPresent();
        if (source.isPresent() && live) {
            tell(source.get(), plus.get(), minus.get());
            now.add(source.get().index());
            told.tests.add(test);
        }
    }

    private Optional<Integer> pin(String name) {
        return wiring.directory().resolve(new End(name)) instanceof Site.OnPin on
                ? Optional.of(wiring.pinVertex(on.unit(), on.pin()))
                : Optional.empty();
    }

    private Optional<PowerSource> lifting(int vertex) {
        return power.feeding(vertex).stream().findFirst();
    }

    /** A plug that shows supply and 0V side by side, else a supply contact with the 0V of its unit. */
    private boolean reading(PowerSource source) {
        boolean shown = reading(source, true) || reading(source, false);
        if (!shown && last) {
            found.add(new Expected.CannotTell(
                    source.name(), "a plug in reach that shows its supply and its 0V; bring a test point outside"));
        }
        return shown;
    }

    private boolean reading(PowerSource source, boolean onePlug) {
        for (int plus = 0; plus < wiring.pinCount(); plus++) {
            Optional<Integer> minus = inReach(source, plus) ? zero(plus, onePlug) : Optional.empty();
            if (minus.isPresent() && flow.volts(plus, minus.get()).isPresent()) {
                tell(source, plus, minus.get());
                return true;
            }
        }
        return false;
    }

    private boolean inReach(PowerSource source, int pin) {
        return !hidden.get(pin)
                && circuit.mated(pin)
                && wiring.unitOf(pin) != source.unit()
                && wiring.wiresAt(pin).length > 0
                && PowerGraph.isSupply(wiring.pin(pin).role().or(PinRole.NONE))
                && power.feeding(pin).contains(source);
    }

    /** A 0V contact of the same plug, or of another plug of the same unit. */
    private Optional<Integer> zero(int plus, boolean onePlug) {
        int unit = wiring.unitOf(plus);
        for (int pin = wiring.firstPin(unit); pin < wiring.endPin(unit); pin++) {
            boolean clear = wiring.is(pin, PinRole.ZERO_V) && circuit.mated(pin) && !hidden.get(pin);
            if (clear && (!onePlug || wiring.plugIndex(pin) == wiring.plugIndex(plus))) {
                return Optional.of(pin);
            }
        }
        return Optional.empty();
    }

    private void tell(PowerSource source, int plus, int minus) {
        String at = wiring.name(plus) + " against " + wiring.name(minus);
        OptionalDouble volts = flow.volts(plus, minus);
        if (volts.isEmpty()) {
            found.add(new Expected.CannotTell(at, "power at both contacts"));
            return;
        }
        double value = volts.getAsDouble();
        if (source.kind() == PowerSource.Kind.PACK) {
            double off = SETTING * value;
            found.add(new Expected.Reading(at, value, value - off, value + off, "V", "1 % for setting and meter"));
            return;
        }
        OptionalDouble nominal = source.volts().nominal();
        if (!source.missing().isEmpty() || nominal.isEmpty() || !source.volts().isBounded()) {
            String needs = source.missing().isEmpty()
                    ? "tolerance of " + source.name()
                    : source.missing().get(0).datum() + " of "
                            + source.missing().get(0).of();
            found.add(new Expected.CannotTell(at, needs));
            return;
        }
        found.add(new Expected.Reading(
                at,
                value,
                value - (nominal.getAsDouble() - source.volts().low()),
                value + (source.volts().high() - nominal.getAsDouble()),
                "V",
                "tolerance of " + source.name()));
    }
}
