package ringout.repair.move;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import ringout.finding.Sketch;
import ringout.model.Datum;
import ringout.model.End;
import ringout.model.Lead;
import ringout.model.Plug;
import ringout.model.Unit;
import ringout.model.edit.Edit;
import ringout.model.edit.Path;
import ringout.model.shape.Shape;
import ringout.text.Span;

/** A lead left out, or a lead made as a unit of the same type has it: same plug, same kind, same wire, length to be measured. */
final class LeadMoves implements Move {
    private static final Shape<Lead> LEAD = Shape.of(Lead.class);

    @Override
    public Stream<Candidate> around(Fault fault) {
        Stream<Candidate> out = fault.leads().stream()
                .map(lead -> Candidate.of(new Edit.Remove(Span.NONE, Move.lead(lead.id())), Costs.LEAD_OUT));
        return Stream.of(out, made(fault), asked(fault), between(fault)).flatMap(all -> all);
    }

    /** A lead between two open plugs of one family at different units, each contact to its like. */
    private static Stream<Candidate> between(Fault fault) {
        List<String> open = new ArrayList<>();
        for (Unit unit : fault.units()) {
            fault.directory().type(fault.directory().find(unit.ref()).orElseThrow()).plugs().stream()
                    .map(plug -> unit.ref() + "-" + plug.name())
                    .filter(end -> fault.mentions(end) && !fault.taken(end))
                    .forEach(open::add);
        }
        List<Candidate> all = new ArrayList<>();
        for (int i = 0; i < open.size(); i++) {
            for (int j = i + 1; j < open.size(); j++) {
                if (fits(fault, open.get(i), open.get(j))) {
                    all.add(made(fault, LEAD.empty(), open.get(i), open.get(j)));
                }
            }
        }
        return all.stream();
    }

    private static boolean fits(Fault fault, String one, String other) {
        return !fault.unitOf(one).equals(fault.unitOf(other))
                && fault.plug(new End(one))
                        .map(Plug::family)
                        .filter(family -> family.isKnown())
                        .equals(fault.plug(new End(other)).map(Plug::family));
    }

    /** The lead the finding itself says is missing: its ends are known, the rest is to be chosen. */
    private static Stream<Candidate> asked(Fault fault) {
        return fault.headline().finding().sketches().stream()
                .filter(Sketch.Missing.class::isInstance)
                .map(Sketch.Missing.class::cast)
                .filter(missing ->
                        missing.what() == Sketch.What.WIRE && !missing.from().equals(missing.to()))
                .map(missing -> made(fault, LEAD.empty(), missing.from(), missing.to()));
    }

    private static Stream<Candidate> made(Fault fault) {
        List<Candidate> all = new ArrayList<>();
        for (Unit unit : fault.units()) {
            Optional<Integer> number = fault.directory().find(unit.ref());
            for (Plug plug : fault.directory().type(number.orElseThrow()).plugs()) {
                String end = unit.ref() + "-" + plug.name();
                if (!fault.taken(end)) {
                    like(fault, unit, plug, all);
                }
            }
        }
        return all.stream();
    }

    /** Leads of the siblings' plug, with their far end on every plug of the far unit that looks the same. */
    private static void like(Fault fault, Unit unit, Plug plug, List<Candidate> all) {
        Set<String> tried = new HashSet<>();
        for (Lead model : fault.directory().leads()) {
            boolean from = sibling(fault, model.from(), unit, plug);
            if (from || sibling(fault, model.to(), unit, plug)) {
                String near = unit.ref() + "-" + plug.name();
                for (String far : alike(fault, from ? model.to() : model.from())) {
                    if (tried.add(far)) {
                        all.add(made(fault, model, from ? near : far, from ? far : near));
                    }
                }
            }
        }
    }

    private static boolean sibling(Fault fault, End end, Unit unit, Plug plug) {
        return fault.unitOf(end.text())
                .filter(other ->
                        other.type().equals(unit.type()) && !other.ref().equals(unit.ref()))
                .flatMap(other -> fault.plug(end))
                .filter(other -> other.name().equals(plug.name()))
                .isPresent();
    }

    private static List<String> alike(Fault fault, End end) {
        Optional<Unit> unit = fault.unitOf(end.text());
        Optional<Plug> plug = fault.plug(end);
        if (unit.isEmpty() || plug.isEmpty()) {
            return List.of(end.text());
        }
        return fault.directory().type(fault.directory().find(unit.get().ref()).orElseThrow()).plugs().stream()
                .filter(other -> other.family().equals(plug.get().family())
                        && roles(other).equals(roles(plug.get())))
                .map(other -> unit.get().ref() + "-" + other.name())
                .toList();
    }

    private static List<?> roles(Plug plug) {
        return plug.pins().stream().map(pin -> pin.role()).toList();
    }

    private static Candidate made(Fault fault, Lead model, String from, String to) {
        String id = freeId(fault);
        Lead lead = LEAD.with(model, "at", Span.NONE);
        lead = LEAD.with(lead, "id", id);
        lead = LEAD.with(lead, "from", new End(from));
        lead = LEAD.with(lead, "to", new End(to));
        for (String measured : List.of("lengthMm", "routeMm", "zone")) {
            lead = LEAD.with(lead, measured, Datum.unknown());
        }
        lead = LEAD.with(lead, "fromLabel", Datum.of(id));
        lead = LEAD.with(lead, "toLabel", Datum.of(id));
        return Candidate.of(new Edit.Add(Span.NONE, Path.of("leads"), lead), Costs.LEAD_NEW);
    }

    /** The first free number of a new lead. */
    private static String freeId(Fault fault) {
        Set<String> ids = new HashSet<>();
        fault.aircraft().leads().forEach(lead -> ids.add(lead.id()));
        int number = 1;
        while (ids.contains("NEW" + number)) {
            number++;
        }
        return "NEW" + number;
    }
}
