package ringout.repair.move;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import ringout.model.Datum;
import ringout.model.End;
import ringout.model.Lead;
import ringout.model.Plug;
import ringout.model.Unit;
import ringout.model.edit.Edit;

/** A lead put into another socket of the same unit, or two leads exchanged. */
final class SocketMoves implements Move {
    @Override
    public Stream<Candidate> around(Fault fault) {
        List<Candidate> all = new ArrayList<>();
        List<Lead> leads = fault.leads();
        for (Lead lead : leads) {
            moved(fault, lead, "from", lead.from(), all);
            moved(fault, lead, "to", lead.to(), all);
        }
        for (Lead lead : leads) {
            fault.suspects().stream()
                    .filter(other -> !other.id().equals(lead.id()))
                    .forEach(other -> exchanged(lead, other, all));
        }
        return all.stream();
    }

    private static void moved(Fault fault, Lead lead, String side, End end, List<Candidate> all) {
        Optional<Plug> here = fault.plug(end);
        Optional<Unit> unit = fault.unitOf(end.text());
        if (here.isEmpty()
                || unit.isEmpty()
                || !end.text().endsWith("-" + here.get().name())) {
            return;
        }
        for (Plug plug : plugs(fault, unit.get())) {
            if (!plug.name().equals(here.get().name())
                    && plug.family().equals(here.get().family())) {
                Move.setting(Move.lead(lead.id()).then(side), unit.get().ref() + "-" + plug.name(), Costs.SOCKET)
                        .forEach(all::add);
            }
        }
        twins(fault, lead, side, unit.get(), here.get(), all);
    }

    /** The same plug, or one that looks like it, of another unit of the type: the other regulator. */
    private static void twins(Fault fault, Lead lead, String side, Unit unit, Plug here, List<Candidate> all) {
        for (Unit twin : fault.aircraft().units()) {
            if (!twin.type().equals(unit.type()) || twin.ref().equals(unit.ref())) {
                continue;
            }
            for (Plug plug : plugs(fault, twin)) {
                String end = twin.ref() + "-" + plug.name();
                if (plug.family().equals(here.family()) && plug.key().equals(here.key()) && !fault.taken(end)) {
                    Move.setting(Move.lead(lead.id()).then(side), end, Costs.SOCKET + 1)
                            .forEach(all::add);
                }
            }
        }
    }

    private static List<Plug> plugs(Fault fault, Unit unit) {
        return fault.directory()
                .type(fault.directory().find(unit.ref()).orElseThrow())
                .plugs();
    }

    private static void exchanged(Lead one, Lead other, List<Candidate> all) {
        swap(one, "from", one.from(), other, "from", other.from(), all);
        swap(one, "to", one.to(), other, "to", other.to(), all);
        swap(one, "from", one.from(), other, "to", other.to(), all);
        swap(one, "to", one.to(), other, "from", other.from(), all);
    }

    private static void swap(Lead one, String side, End end, Lead other, String at, End there, List<Candidate> all) {
        if (end.equals(there)) {
            return;
        }
        List<Edit> ends = new ArrayList<>();
        Move.set(Move.lead(one.id()).then(side), there.text()).ifPresent(ends::add);
        Move.set(Move.lead(other.id()).then(at), end.text()).ifPresent(ends::add);
        if (ends.size() < 2) {
            return;
        }
        all.add(new Candidate(ends, 2 * Costs.SOCKET - 2));
        List<Edit> halves = new ArrayList<>(ends);
        halves(one, side, other, at, halves);
        halves(other, at, one, side, halves);
        if (halves.size() > ends.size()) {
            all.add(new Candidate(halves, 2 * Costs.SOCKET - 1));
        }
    }

    /** The plug half of one lead as the other has it: leads that changed places have each the half of the other place. */
    private static void halves(Lead one, String side, Lead other, String at, List<Edit> edits) {
        half(one, side + "Family", family(one, side), family(other, at), edits);
        half(one, side + "Key", key(one, side), key(other, at), edits);
    }

    private static void half(Lead lead, String field, Datum<String> now, Datum<String> then, List<Edit> edits) {
        if (now.isKnown() && then.isKnown() && !now.known().equals(then.known())) {
            Move.set(Move.lead(lead.id()).then(field), then.or("")).ifPresent(edits::add);
        }
    }

    private static Datum<String> family(Lead lead, String side) {
        return side.equals("from") ? lead.fromFamily() : lead.toFamily();
    }

    private static Datum<String> key(Lead lead, String side) {
        return side.equals("from") ? lead.fromKey() : lead.toKey();
    }
}
