package ringout.solve.meter;

import java.util.ArrayList;
import java.util.List;
import ringout.graph.Part;
import ringout.model.TerminatorFit;
import ringout.solve.MeterElement;

/** What may be wrong with the terminators that the meter's current can reach. */
final class TerminatorFaults {
    private final Probed probed;
    private final List<Part> on = new ArrayList<>();
    private final List<Part> off = new ArrayList<>();

    private TerminatorFaults(Probed probed) {
        this.probed = probed;
        for (Part part : probed.wiring().parts()) {
            if (part.origin() instanceof Part.Terminator terminator
                    && probed.circuit().aboard(terminator.unit())) {
                sort(part, probed.element(part.edge()));
            }
        }
    }

    private void sort(Part part, MeterElement element) {
        if (element.live() && probed.loaded(part.edge())) {
            on.add(part);
        } else if (!element.live() && probed.joinMatters(element.a(), element.b())) {
            off.add(part);
        }
    }

    static List<Fault> of(Probed probed) {
        TerminatorFaults found = new TerminatorFaults(probed);
        List<Fault> faults = new ArrayList<>();
        found.on.forEach(part -> faults.add(found.missing(part)));
        found.off.forEach(part -> faults.add(found.extra(part)));
        for (Part from : found.on) {
            found.off.stream().filter(to -> movable(from)).forEach(to -> faults.add(found.moved(from, to)));
        }
        if (found.on.size() > 1) {
            faults.add(found.allMissing());
        }
        return faults;
    }

    private static boolean movable(Part part) {
        return part.origin() instanceof Part.Terminator terminator
                && !terminator.port().terminator().is(TerminatorFit.FIXED);
    }

    private String unit(Part part) {
        Part.Terminator terminator = (Part.Terminator) part.origin();
        return probed.wiring().directory().name(terminator.unit());
    }

    private Fault missing(Part part) {
        return new Fault(
                Fault.Kind.TERMINATOR_MISSING,
                unit(part),
                List.of(),
                List.of(),
                List.of(new Change.Opened(part.edge())));
    }

    private Fault extra(Part part) {
        return new Fault(
                Fault.Kind.TERMINATOR_EXTRA, unit(part), List.of(), List.of(), List.of(new Change.Closed(part.edge())));
    }

    private Fault moved(Part from, Part to) {
        List<Change> changes = List.of(new Change.Opened(from.edge()), new Change.Closed(to.edge()));
        return new Fault(Fault.Kind.TERMINATOR_MOVED, unit(to), List.of(unit(from)), List.of(), changes);
    }

    private Fault allMissing() {
        List<String> units = on.stream().map(this::unit).toList();
        List<Change> changes =
                on.stream().<Change>map(part -> new Change.Opened(part.edge())).toList();
        return new Fault(Fault.Kind.TERMINATORS_ALL_MISSING, units.get(0), units, List.of(), changes);
    }
}
