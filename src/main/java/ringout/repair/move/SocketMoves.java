package ringout.repair.move;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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
        List<Plug> plugs = fault.directory()
                .type(fault.directory().find(unit.get().ref()).orElseThrow())
                .plugs();
        for (Plug plug : plugs) {
            if (!plug.name().equals(here.get().name())
                    && plug.family().equals(here.get().family())) {
                Move.setting(Move.lead(lead.id()).then(side), unit.get().ref() + "-" + plug.name(), Costs.SOCKET)
                        .forEach(all::add);
            }
        }
    }

    private static void exchanged(Lead one, Lead other, List<Candidate> all) {
        swap(one, "from", one.from(), other, "from", other.from(), all);
        swap(one, "to", one.to(), other, "to", other.to(), all);
        swap(one, "from", one.from(), other, "to", other.to(), all);
        swap(one, "to", one.to(), other, "from", other.from(), all);
    }

    private static void swap(Lead one, String side, End end, Lead other, String at, End there, List<Candidate> all) {
        Optional<Edit> first = Move.set(Move.lead(one.id()).then(side), there.text());
        Optional<Edit> second = Move.set(Move.lead(other.id()).then(at), end.text());
        if (first.isPresent() && second.isPresent() && !end.equals(there)) {
            all.add(new Candidate(List.of(first.get(), second.get()), 2 * Costs.SOCKET - 2));
        }
    }
}
