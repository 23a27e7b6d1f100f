package ringout.trace.predict;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.AircraftFunction;
import ringout.model.PlannedTest;
import ringout.solve.ProbePoint;

/** One line of the checklist that is planned before flight. */
public sealed interface PlannedLine {
    /** How it is called in the list. */
    String name();

    /**
     * A lead rung out on its own contacts before it is mated: each conductor through, and against its neighbours.
     *
     * @param name how the line is called
     * @param wires its conductors
     */
    record RingOut(String name, List<Wire> wires) implements PlannedLine {
        /** Keeps its own copy. */
        public RingOut {
            wires = List.copyOf(wires);
        }
    }

    /**
     * Ohms between two contacts, everything mated, power off.
     *
     * @param name how the line is called
     * @param a vertex of the one
     * @param b vertex of the other
     */
    record Ohms(String name, int a, int b) implements PlannedLine {}

    /**
     * Volts between two contacts, everything mated, at rest.
     *
     * @param name how the line is called
     * @param a vertex the red lead is put on
     * @param b vertex the black lead is put on
     */
    record Volts(String name, int a, int b) implements PlannedLine {}

    /**
     * A function tried, or the list of units read: none of some units may be silent, unsteady or dark.
     *
     * @param name how the line is called
     * @param units names of the units
     */
    record Works(String name, Set<String> units) implements PlannedLine {
        /** Keeps its own copy. */
        public Works {
            units = java.util.Collections.unmodifiableSet(new java.util.TreeSet<>(units));
        }
    }

    /** The lines the list of an aircraft plans: its tests and the pre-flight steps of its functions. Others are passed over. */
    static List<PlannedLine> of(Circuit circuit) {
        List<PlannedLine> lines = new ArrayList<>();
        for (PlannedTest test : circuit.wiring().aircraft().record().tests()) {
            of(circuit, test).ifPresent(lines::add);
        }
        for (AircraftFunction function : circuit.wiring().aircraft().functions()) {
            if (function.preflight().isKnown() && !function.chain().isEmpty()) {
                List<String> chain = function.chain();
                boolean starts = chief(circuit, chain.get(0));
                String tried = starts ? chain.get(chain.size() - 1) : chain.get(0);
                lines.add(new Works(function.name(), Set.of(tried)));
            }
        }
        return List.copyOf(lines);
    }

    private static boolean chief(Circuit circuit, String unit) {
        return circuit.wiring()
                .directory()
                .find(unit)
                .map(number -> circuit.wiring().directory().type(number).kind().is(ringout.model.UnitKind.CONTROLLER))
                .orElse(false);
    }

    private static Optional<PlannedLine> of(Circuit circuit, PlannedTest test) {
        String kind = test.kind().or("").toLowerCase(Locale.ROOT);
        if (kind.equals("function")) {
            Set<String> units = new LinkedHashSet<>();
            test.pins().forEach(name -> units.add(unit(circuit, name)));
            return Optional.of(new Works(test.id(), units));
        }
        List<Integer> points = new ArrayList<>();
        test.pins().forEach(name -> ProbePoint.find(circuit.wiring(), name).ifPresent(points::add));
        if (points.size() != 2) {
            return Optional.empty();
        }
        return switch (kind) {
            case "ohms", "resistance", "continuity", "ring-out" ->
                Optional.of(new Ohms(test.id(), points.get(0), points.get(1)));
            case "volts" -> Optional.of(new Volts(test.id(), points.get(0), points.get(1)));
            default -> Optional.empty();
        };
    }

    private static String unit(Circuit circuit, String name) {
        Wiring wiring = circuit.wiring();
        return wiring.directory().find(name).isPresent()
                ? name
                : ProbePoint.find(wiring, name)
                        .map(pin -> wiring.directory().name(wiring.unitOf(pin)))
                        .orElse(name);
    }

    /** A line for every lead: rung out before it is mated. */
    static List<PlannedLine> ringOut(Circuit circuit) {
        java.util.Map<String, List<Wire>> byLead = new java.util.LinkedHashMap<>();
        circuit.wiring()
                .wires()
                .forEach(wire -> byLead.computeIfAbsent(wire.lead().id(), key -> new ArrayList<>())
                        .add(wire));
        List<PlannedLine> lines = new ArrayList<>();
        byLead.forEach((id, wires) -> lines.add(new RingOut("ring out " + id, wires)));
        return List.copyOf(lines);
    }
}
