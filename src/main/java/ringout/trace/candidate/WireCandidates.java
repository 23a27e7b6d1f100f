package ringout.trace.candidate;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import ringout.graph.Wire;
import ringout.graph.bus.BusLink;
import ringout.graph.bus.Buses;
import ringout.graph.wire.PowerBeside;
import ringout.solve.meter.Change;

/** What may be wrong along conductors: broken, or with a bad contact; and leads that are disturbed. */
final class WireCandidates {
    /** Middle of 0.5 to 50 ohm on a scale of ratios. Judgement, no source. */
    private static final double SIGNAL_OHM = 5;

    /** Middle of 2 to 50 milliohm on a scale of ratios. Judgement, no source. */
    private static final double POWER_OHM = 0.010;

    /** In the supply of a small unit: with 2 ohm a load of 0.45 A gets 4.4 V instead of 5.3. Judgement, no source. */
    private static final double SUPPLY_OHM = 2;

    /** Conductors of this size and more carry main currents, mm2. Judgement, no source. */
    private static final double MAIN_MM2 = 1;

    /** To clean a contact or crimp it again. Judgement, no source. */
    private static final double CLEAN_MINUTES = 6;
    /** To lay a lead away from a power pair. Judgement, no source. */
    private static final double LAY_MINUTES = 20;

    /** A signal beside a power pair for more than this is disturbed by it. Judgement, no source. */
    private static final double BESIDE_MM = 100;

    private static final double BESIDE_A = 10;

    private final Bench bench;

    private WireCandidates(Bench bench) {
        this.bench = bench;
    }

    static void addTo(Bench bench) {
        WireCandidates made = new WireCandidates(bench);
        bench.wiring().wires().stream().filter(bench::whole).forEach(made::conductor);
        Buses.of(bench.circuit()).links().stream().filter(BusLink::pair).forEach(made::pair);
        bench.leads().forEach((row, wires) -> made.disturbed(row, wires.get(0)));
    }

    private void conductor(Wire wire) {
        boolean back = bench.isReturn(wire);
        FaultKind kind = back ? FaultKind.RETURN_OPEN : FaultKind.OPEN_CONDUCTOR;
        String lead = wire.lead().id();
        String place = lead + " " + bench.pin(wire.fromPin()) + " to " + bench.pin(wire.toPin());
        bench.add(
                kind,
                place,
                new Defect.Open(List.of(wire)),
                lead + (back ? " return open at " : " open at ") + bench.pin(wire.fromPin()),
                List.of(lead),
                Repair.lead(lead),
                bench.places().atLead(List.of(wire)),
                bench.places().ofWire(wire),
                List.of(new Change.Opened(bench.wiring().conductorEdge(wire))));
        contact(wire, wire.fromPin(), back);
        contact(wire, wire.toPin(), back);
    }

    private void contact(Wire wire, int pin, boolean back) {
        int unit = bench.wiring().unitOf(pin);
        if (bench.wiring().directory().isJoint(unit)) {
            return;
        }
        int plug = bench.wiring().plugIndex(pin);
        String name = bench.wiring().plugName(unit, plug);
        double ohm = extraOhm(wire, pin);
        SortedSet<Circumstance> told = bench.places().ofPlug(unit, plug);
        int contact = bench.contact(wire, pin);
        int end = wire.endAt(pin);
        bench.add(
                back ? FaultKind.RETURN_THIN : FaultKind.POOR_CONTACT,
                wire.lead().id() + " " + bench.pin(pin),
                new Defect.PoorContact(wire, pin, ohm),
                bench.pin(pin) + (back ? " return contact high-resistance" : " contact high-resistance"),
                List.of(wire.lead().id()),
                new Repair(
                        Repair.Sort.PLUG,
                        name,
                        "clean or renew the contacts of " + name + ", seat it and tug it",
                        CLEAN_MINUTES),
                bench.places().atPlug(unit, plug),
                told,
                poor(contact, end, pin, ohm));
    }

    /** The contact is taken out of the circuit and a larger resistance put in its stead. */
    private static List<Change> poor(int contact, int end, int pin, double ohm) {
        return List.of(new Change.Opened(contact), new Change.Added(pin, end, ohm));
    }

    /** What a bad contact has too much, in ohm: by what it carries. */
    private double extraOhm(Wire wire, int pin) {
        boolean power = bench.supply(pin) || bench.zero(pin);
        if (!power) {
            return SIGNAL_OHM;
        }
        return wire.areaMm2().or(0.0) >= MAIN_MM2 ? POWER_OHM : SUPPLY_OHM;
    }

    private void pair(BusLink link) {
        Set<String> ids = new LinkedHashSet<>(Bench.rows(link.wires()));
        String lead = link.lead().id();
        List<Change> changes = link.wires().stream()
                .<Change>map(wire -> new Change.Opened(bench.wiring().conductorEdge(wire)))
                .toList();
        bench.add(
                FaultKind.OPEN_PAIR,
                String.join("+", ids) + " " + bench.pin(link.wires().get(0).fromPin()),
                new Defect.Open(link.wires()),
                lead + " pair open",
                List.copyOf(ids),
                Repair.lead(lead),
                bench.places().atLead(link.wires()),
                bench.places().ofWire(link.wires().get(0)),
                changes);
    }

    private void disturbed(int row, Wire wire) {
        if (bench.supply(wire.fromPin()) && bench.supply(wire.toPin())) {
            return;
        }
        PowerBeside.of(bench.circuit()).of(wire.lead(), BESIDE_MM, BESIDE_A).keySet().stream()
                .findFirst()
                .ifPresent(by -> bench.add(
                        FaultKind.INTERFERENCE,
                        wire.lead().id() + " by " + by,
                        new Defect.Disturbed(row, by),
                        wire.lead().id() + " disturbed by the current in " + by,
                        List.of(wire.lead().id(), by),
                        new Repair(
                                Repair.Sort.ROUTE,
                                wire.lead().id(),
                                "lay " + wire.lead().id() + " away from " + by + ", or cross it at a right angle",
                                LAY_MINUTES),
                        bench.places().atLead(List.of(wire)),
                        bench.places().ofWire(wire),
                        List.of()));
    }
}
