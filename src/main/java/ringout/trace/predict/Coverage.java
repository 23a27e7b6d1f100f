package ringout.trace.predict;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.model.AircraftFunction;
import ringout.solve.meter.Change;
import ringout.solve.meter.Expected;
import ringout.solve.meter.MeterNetwork;
import ringout.solve.meter.Reading;
import ringout.trace.candidate.Candidate;
import ringout.trace.candidate.Candidates;
import ringout.trace.candidate.Defect;

/**
 * A checklist, tested: which single faults pass all its lines unseen, how bad they are, and which lines would catch most of
 * them for the least time.
 *
 * <p>A fault that no line sees is not safe: it is unproved. Faults that come and go, and two at once, are not looked at.
 */
public final class Coverage {
    /** How bad a fault is that passes unseen. */
    public enum Severity {
        /** The row or unit it sits in carries a function that flight depends on. */
        FLIGHT_CRITICAL,
        /** It does not. */
        OTHER
    }

    /**
     * A fault that passes unseen.
     *
     * @param candidate the fault
     * @param severity how bad it is
     */
    public record Unseen(Candidate candidate, Severity severity) {}

    /**
     * A line to add.
     *
     * @param card the test
     * @param catches faults unseen so far that it would show
     */
    public record Addition(TestCard card, List<Candidate> catches) {
        /** Keeps its own copy. */
        public Addition {
            catches = List.copyOf(catches);
        }
    }

    /** Catching a flight-critical fault counts as much as this many others. Judgement, no source. */
    private static final double CRITICAL_COUNTS = 5;

    private final Circuit circuit;
    private final List<PlannedLine> lines;
    private final Map<Candidate, List<String>> seenBy = new LinkedHashMap<>();
    private final Set<String> critical = new TreeSet<>();
    private final Map<String, Severity> byRow = new LinkedHashMap<>();
    private final Map<PlannedLine, Expected> expected = new LinkedHashMap<>();

    private Coverage(Circuit circuit, List<PlannedLine> lines) {
        this.circuit = circuit;
        this.lines = List.copyOf(lines);
        for (AircraftFunction function : circuit.wiring().aircraft().functions()) {
            if (function.flightCritical().is(true)) {
                critical.addAll(function.chain());
            }
        }
        for (PlannedLine line : lines) {
            if (line instanceof PlannedLine.Ohms ohms) {
                expected.put(line, Expected.ohms(circuit, ohms.a(), ohms.b()));
            }
        }
        for (Candidate candidate : Candidates.of(circuit).all()) {
            List<String> names = new ArrayList<>();
            lines.stream().filter(line -> sees(line, candidate)).forEach(line -> names.add(line.name()));
            seenBy.put(candidate, List.copyOf(names));
        }
    }

    /** What a checklist sees of the faults of a circuit. */
    public static Coverage of(Circuit circuit, List<PlannedLine> lines) {
        return new Coverage(circuit, lines);
    }

    /** The lines looked at. */
    public List<PlannedLine> lines() {
        return lines;
    }

    /** Names of the lines that show a fault, in the order of the list; empty when it passes unseen. */
    public List<String> seenBy(Candidate candidate) {
        return seenBy.getOrDefault(candidate, List.of());
    }

    /** The share of all single faults that at least one line shows, 0 to 1. */
    public double share() {
        long seen = seenBy.values().stream().filter(names -> !names.isEmpty()).count();
        return seenBy.isEmpty() ? 1 : (double) seen / seenBy.size();
    }

    /** Faults that pass all lines unseen, the flight-critical ones first, the likeliest first among equals. */
    public List<Unseen> unseen() {
        List<Unseen> found = new ArrayList<>();
        seenBy.forEach((candidate, names) -> {
            if (names.isEmpty()) {
                found.add(new Unseen(candidate, severity(candidate)));
            }
        });
        found.sort((a, b) -> {
            int bySeverity = a.severity().compareTo(b.severity());
            return bySeverity != 0
                    ? bySeverity
                    : Double.compare(b.candidate().weight(), a.candidate().weight());
        });
        return List.copyOf(found);
    }

    private boolean sees(PlannedLine line, Candidate candidate) {
        if (line instanceof PlannedLine.RingOut ring) {
            return rings(ring, candidate.defect());
        }
        if (line instanceof PlannedLine.Ohms ohms) {
            Reading reading = MeterNetwork.of(circuit).reading(ohms.a(), ohms.b(), candidate.changes());
            double shown = reading instanceof Reading.Ohms found ? found.ohm() : Double.POSITIVE_INFINITY;
            Expected right = expected.get(line);
            return right != null && !candidate.changes().isEmpty() && !right.admits(shown);
        }
        if (line instanceof PlannedLine.Volts at) {
            OptionalDouble right = SupplyVolts.atRest(circuit).healthy(at.a(), at.b());
            return right.isPresent()
                    && right.getAsDouble() > 0
                    && !Classes.volts(SupplyVolts.atRest(circuit).with(candidate, at.a(), at.b()), right.getAsDouble())
                            .equals("as it should");
        }
        Signature seen = Predictions.of(circuit).signature(candidate);
        return ((PlannedLine.Works) line)
                .units().stream()
                        .anyMatch(unit -> seen.silent().contains(unit)
                                || seen.erratic().contains(unit)
                                || seen.dark().contains(unit));
    }

    /** What a meter on the lead's own contacts finds: breaks, exchanges and touches inside the lead. */
    private static boolean rings(PlannedLine.RingOut ring, Defect defect) {
        if (defect instanceof Defect.Open open) {
            return open.wires().stream().anyMatch(ring.wires()::contains);
        }
        if (defect instanceof Defect.Crossed crossed) {
            return ring.wires().contains(crossed.one());
        }
        return defect instanceof Defect.Shorted shorted
                && ring.wires().stream().anyMatch(wire -> end(wire, shorted.a()))
                && ring.wires().stream().anyMatch(wire -> end(wire, shorted.b()));
    }

    private static boolean end(Wire wire, int vertex) {
        return wire.fromEnd() == vertex || wire.toEnd() == vertex;
    }

    /** A row is as bad as what the loss of all of it does. */
    private Severity severity(Candidate candidate) {
        if (touches(Predictions.of(circuit).signature(candidate)) || inCritical(candidate.defect())) {
            return Severity.FLIGHT_CRITICAL;
        }
        boolean row = candidate.rows().stream()
                .anyMatch(id -> byRow.computeIfAbsent(id, this::ofRow) == Severity.FLIGHT_CRITICAL);
        return row ? Severity.FLIGHT_CRITICAL : Severity.OTHER;
    }

    private boolean inCritical(Defect defect) {
        return defect instanceof Defect.Inside in
                && in.unit() >= 0
                && critical.contains(circuit.wiring().directory().name(in.unit()));
    }

    private Severity ofRow(String id) {
        List<Change> opened = new ArrayList<>();
        for (Wire wire : circuit.wiring().wires()) {
            if (wire.lead().id().equals(id)) {
                opened.add(new Change.Opened(circuit.wiring().conductorEdge(wire)));
            }
        }
        return touches(Behaviour.of(circuit).without(opened)) ? Severity.FLIGHT_CRITICAL : Severity.OTHER;
    }

    private boolean touches(Signature seen) {
        Set<String> hurt = new TreeSet<>(seen.silent());
        hurt.addAll(seen.erratic());
        hurt.addAll(seen.dark());
        hurt.retainAll(critical);
        return !hurt.isEmpty();
    }

    /**
     * Lines that would catch what passes unseen, by what they catch for their time, flight-critical faults counting more.
     *
     * @param most how many lines at most
     */
    public List<Addition> additions(int most) {
        Map<Candidate, Double> left = new LinkedHashMap<>();
        unseen().forEach(one ->
                left.put(one.candidate(), one.severity() == Severity.FLIGHT_CRITICAL ? CRITICAL_COUNTS : 1));
        Map<TestCard, List<Candidate>> catching = new LinkedHashMap<>();
        TestDeck.of(circuit).stream()
                .filter(card -> belongs(card.test()))
                .forEach(card -> catching.put(card, catches(card, left.keySet())));
        List<Addition> chosen = new ArrayList<>();
        Set<Candidate> caught = new HashSet<>();
        while (chosen.size() < most) {
            double best = 0;
            List<Addition> next = new ArrayList<>();
            for (Map.Entry<TestCard, List<Candidate>> entry : catching.entrySet()) {
                List<Candidate> more = entry.getValue().stream()
                        .filter(candidate -> !caught.contains(candidate))
                        .toList();
                double gain = more.stream()
                                .mapToDouble(candidate -> left.getOrDefault(candidate, 0.0))
                                .sum()
                        / entry.getKey().allMinutes();
                if (gain > best) {
                    best = gain;
                    next.clear();
                    next.add(new Addition(entry.getKey(), more));
                }
            }
            if (next.isEmpty()) {
                break;
            }
            chosen.addAll(next);
            caught.addAll(next.get(0).catches());
        }
        return List.copyOf(chosen);
    }

    /** A checklist looks and measures; it does not take apart what is not suspected. */
    private static boolean belongs(FieldTest test) {
        boolean tries = test instanceof FieldTest.SwapLead
                || test instanceof FieldTest.RingLead
                || test instanceof FieldTest.SwapUnit
                || test instanceof FieldTest.BenchUnit
                || test instanceof FieldTest.Unplug
                || test instanceof FieldTest.WireVolts
                || test instanceof FieldTest.LoadedVolts;
        return !tries;
    }

    private List<Candidate> catches(TestCard card, Set<Candidate> of) {
        Predictions predictions = Predictions.of(circuit);
        String right = predictions.of(Healthy.CIRCUIT, card.test()).likeliest();
        return of.stream()
                .filter(candidate ->
                        !predictions.of(candidate, card.test()).likeliest().equals(right))
                .toList();
    }
}
