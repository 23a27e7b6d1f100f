package ringout.trace.candidate;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import ringout.graph.Part;
import ringout.graph.Wiring;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.BusSegment;
import ringout.graph.bus.Buses;
import ringout.model.PartKind;
import ringout.model.PortSetting;
import ringout.model.TerminatorFit;
import ringout.model.UnitKind;
import ringout.solve.meter.Change;

/** What may be wrong with the buses beside their leads: terminators, addresses, rates, front ends. */
final class BusCandidates {
    /** A front end that has burnt through. Judgement, no source. */
    private static final double BURNT_OHM = 1;

    private final Bench bench;
    private final Wiring wiring;
    private final Buses buses;

    private BusCandidates(Bench bench) {
        this.bench = bench;
        this.wiring = bench.wiring();
        this.buses = Buses.of(bench.circuit());
    }

    static void addTo(Bench bench) {
        BusCandidates made = new BusCandidates(bench);
        for (BusSegment segment : made.buses.segments()) {
            if (segment.wired()) {
                made.terminators(segment);
                made.members(segment);
            }
        }
    }

    private void terminators(BusSegment segment) {
        List<Part> on = new ArrayList<>();
        List<Part> off = new ArrayList<>();
        for (Part part : wiring.parts()) {
            boolean here = here(segment, part);
            if (here && bench.live(part.edge())) {
                on.add(part);
            } else if (here && part.origin() instanceof Part.Terminator of && canBeOn(of)) {
                off.add(part);
            }
        }
        on.forEach(part -> terminator(FaultKind.TERMINATOR_MISSING, List.of(part), List.of()));
        off.forEach(part -> terminator(FaultKind.TERMINATOR_EXTRA, List.of(), List.of(part)));
        for (Part from : on) {
            for (Part to : off) {
                if (from.origin() instanceof Part.Terminator of
                        && !of.port().terminator().is(TerminatorFit.FIXED)) {
                    terminator(FaultKind.TERMINATOR_MISPLACED, List.of(from), List.of(to));
                }
            }
        }
        if (on.size() > 1) {
            terminator(FaultKind.TERMINATOR_MISSING, on, List.of());
        }
    }

    private boolean canBeOn(Part.Terminator of) {
        return bench.circuit().aboard(of.unit()) && !of.port().terminator().is(TerminatorFit.NONE);
    }

    private boolean here(BusSegment segment, Part part) {
        boolean terminates = part.origin() instanceof Part.Terminator
                || (part.origin() instanceof Part.Inner inner
                        && inner.part().kind().is(PartKind.RESISTOR));
        if (!terminates) {
            return false;
        }
        for (int hub : segment.hubs()) {
            BusHub at = buses.hubs().get(hub);
            boolean across = (at.high() == part.from() && at.low() == part.to())
                    || (at.low() == part.from() && at.high() == part.to());
            if (across) {
                return true;
            }
        }
        return false;
    }

    private int unit(Part part) {
        return part.origin() instanceof Part.Terminator of ? of.unit() : ((Part.Inner) part.origin()).unit();
    }

    /** The unit, and its port when it has several. */
    private String where(Part part) {
        String unit = bench.unit(unit(part));
        boolean several = part.origin() instanceof Part.Terminator of
                && wiring.directory().type(of.unit()).ports().size() > 1;
        return several ? unit + " " + ((Part.Terminator) part.origin()).port().name() : unit;
    }

    private void terminator(FaultKind kind, List<Part> off, List<Part> on) {
        List<String> names = new ArrayList<>();
        off.forEach(part -> names.add("off at " + where(part)));
        on.forEach(part -> names.add("on at " + where(part)));
        List<Change> changes = new ArrayList<>();
        off.forEach(part -> changes.add(new Change.Opened(part.edge())));
        on.forEach(part -> changes.add(new Change.Closed(part.edge())));
        int unit = unit(off.isEmpty() ? on.get(0) : off.get(0));
        String place = String.join(", ", names);
        bench.add(
                kind,
                place,
                new Defect.Terminated(off, on),
                "terminator " + place,
                List.of(),
                new Repair(
                        Repair.Sort.SETTING,
                        "terminator " + where(off.isEmpty() ? on.get(0) : off.get(0)),
                        "set the terminators as listed: " + listed(off, on),
                        Repair.SET_MINUTES),
                bench.places().atUnit(unit),
                bench.places().ofUnit(unit),
                changes);
    }

    private String listed(List<Part> off, List<Part> on) {
        List<String> words = new ArrayList<>();
        off.forEach(part -> words.add("on at " + where(part)));
        on.forEach(part -> words.add("off at " + where(part)));
        return String.join(", ", words);
    }

    private void members(BusSegment segment) {
        List<BusHub> nodes = buses.nodes(segment);
        Set<Integer> chiefs = new TreeSet<>();
        for (BusHub node : nodes) {
            if (wiring.directory().type(node.unit()).kind().is(UnitKind.CONTROLLER)) {
                chiefs.add(node.unit());
            }
        }
        for (BusHub node : nodes) {
            if (!chiefs.contains(node.unit())) {
                rate(node);
            }
            mute(node);
            holds(node);
            for (BusHub other : nodes) {
                if (node.index() < other.index() && addressed(node) && addressed(other)) {
                    sameAddress(node, other, chiefs);
                }
            }
        }
    }

    private boolean addressed(BusHub node) {
        return buses.setting(node)
                .map(PortSetting::address)
                .map(a -> a.isKnown())
                .orElse(false);
    }

    private void sameAddress(BusHub node, BusHub other, Set<Integer> chiefs) {
        int unit = chiefs.contains(other.unit()) ? node.unit() : other.unit();
        int kept = unit == node.unit() ? other.unit() : node.unit();
        var told = bench.places().ofUnit(unit);
        told.addAll(bench.places().ofUnit(kept));
        bench.add(
                FaultKind.SAME_ADDRESS,
                bench.unit(kept) + " and " + bench.unit(unit),
                new Defect.SameAddress(unit, kept),
                bench.unit(unit) + " and " + bench.unit(kept) + " share an address",
                List.of(),
                set(unit, "address", "give each its listed address, " + bench.unit(unit) + " first"),
                Opening.NONE,
                told,
                List.of());
    }

    private Repair set(int unit, String what, String action) {
        return new Repair(Repair.Sort.SETTING, what + " of " + bench.unit(unit), action, Repair.SET_MINUTES);
    }

    private void rate(BusHub node) {
        String name = bench.unit(node.unit()) + " " + node.typePort();
        bench.add(
                FaultKind.WRONG_RATE,
                name,
                new Defect.WrongSetting(node.unit(), node.typePort(), true),
                name + " at another bit rate",
                List.of(),
                set(node.unit(), "bit rate", "set the bit rate of " + name + " as listed"),
                Opening.NONE,
                bench.places().ofUnit(node.unit()),
                List.of());
    }

    private void mute(BusHub node) {
        String unit = bench.unit(node.unit());
        bench.add(
                FaultKind.DEAD_TRANSCEIVER,
                unit,
                new Defect.Inside(node.unit(), Defect.Inside.How.MUTE),
                unit + " front end dead",
                List.of(),
                Repair.unit(unit),
                bench.places().atUnit(node.unit()),
                bench.places().ofUnit(node.unit()),
                List.of());
    }

    private void holds(BusHub node) {
        if (node.high() < 0 || node.low() < 0) {
            return;
        }
        String unit = bench.unit(node.unit());
        bench.add(
                FaultKind.HOLDS_BUS,
                unit + " " + node.port(),
                new Defect.HoldsBus(node.unit(), node.high(), node.low()),
                unit + " holds " + node.typePort() + " down",
                List.of(),
                Repair.unit(unit),
                bench.places().atUnit(node.unit()),
                bench.places().ofUnit(node.unit()),
                List.of(new Change.Added(node.high(), node.low(), BURNT_OHM)));
    }
}
