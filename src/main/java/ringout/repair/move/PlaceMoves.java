package ringout.repair.move;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import ringout.model.Bus;
import ringout.model.Lead;
import ringout.model.LeadKind;
import ringout.model.Message;
import ringout.model.Unit;
import ringout.model.edit.Edit;
import ringout.model.edit.Path;

/**
 * Two like units that change places: all power leads or all bus leads of one with those of the other, at the units or at the far
 * ends, so that other motors share a clamp or a bus; for the power leads also two such exchanges at once.
 */
final class PlaceMoves implements Move {
    /** One lead end: the lead, and whether it is its {@code from}. */
    private record Half(Lead lead, boolean from) {
        String text() {
            return from ? lead.from().text() : lead.to().text();
        }

        Half far() {
            return new Half(lead, !from);
        }

        Optional<Edit> set(String end) {
            return Move.set(Move.lead(lead.id()).then(from ? "from" : "to"), end);
        }
    }

    private record Exchange(Set<String> units, Candidate candidate) {}

    @Override
    public Stream<Candidate> around(Fault fault) {
        List<Unit> pool = pool(fault);
        List<Exchange> power = new ArrayList<>();
        List<Candidate> all = new ArrayList<>();
        for (int i = 0; i < pool.size(); i++) {
            for (int j = i + 1; j < pool.size(); j++) {
                Unit one = pool.get(i);
                Unit other = pool.get(j);
                if (one.type().equals(other.type())) {
                    exchanged(fault, one, other, LeadKind.POWER, true)
                            .ifPresent(candidate -> power.add(new Exchange(Set.of(one.ref(), other.ref()), candidate)));
                    exchanged(fault, one, other, LeadKind.CAN, false).ifPresent(all::add);
                }
            }
        }
        power.forEach(exchange -> all.add(exchange.candidate()));
        for (int i = 0; i < power.size(); i++) {
            for (int j = i + 1; j < power.size(); j++) {
                if (power.get(i).units().stream().noneMatch(power.get(j).units()::contains)) {
                    all.add(power.get(i).candidate().and(power.get(j).candidate()));
                }
            }
        }
        return all.stream();
    }

    /** Units at the ends of the leads of the mistake, and members of a bus it is about. */
    private static List<Unit> pool(Fault fault) {
        Set<String> names = new HashSet<>();
        for (Lead lead : fault.leads()) {
            fault.unitOf(lead.from().text()).ifPresent(unit -> names.add(unit.ref()));
            fault.unitOf(lead.to().text()).ifPresent(unit -> names.add(unit.ref()));
        }
        for (Bus bus : fault.aircraft().buses()) {
            if (fault.mentions("bus " + bus.name())) {
                bus.members().forEach(member -> names.add(unit(member)));
            }
        }
        return fault.aircraft().units().stream()
                .filter(unit -> names.contains(unit.ref()))
                .toList();
    }

    private static Optional<Candidate> exchanged(Fault fault, Unit one, Unit other, LeadKind kind, boolean farEnds) {
        List<Edit> edits = new ArrayList<>();
        for (String plug : plugs(fault, one, kind)) {
            List<Half> here = at(fault, one.ref() + "-" + plug, kind);
            List<Half> there = at(fault, other.ref() + "-" + plug, kind);
            if (here.size() > 1 || there.size() > 1 || here.size() != there.size()) {
                return Optional.empty();
            }
            if (here.size() == 1) {
                Half mine = farEnds ? here.get(0).far() : here.get(0);
                Half yours = farEnds ? there.get(0).far() : there.get(0);
                if (!mine.text().equals(yours.text())) {
                    mine.set(yours.text()).ifPresent(edits::add);
                    yours.set(mine.text()).ifPresent(edits::add);
                }
            }
        }
        if (edits.isEmpty()) {
            return Optional.empty();
        }
        if (kind == LeadKind.CAN) {
            declared(fault, one.ref(), other.ref(), edits);
        }
        return Optional.of(new Candidate(edits, Costs.PLACES));
    }

    private static Set<String> plugs(Fault fault, Unit unit, LeadKind kind) {
        Set<String> plugs = new TreeSet<>();
        for (Lead lead : fault.directory().leads()) {
            if (lead.kind().is(kind)) {
                for (Half half : List.of(new Half(lead, true), new Half(lead, false))) {
                    fault.unitOf(half.text())
                            .filter(found -> found.ref().equals(unit.ref()))
                            .ifPresent(found ->
                                    plugs.add(half.text().substring(unit.ref().length() + 1)));
                }
            }
        }
        return plugs;
    }

    private static List<Half> at(Fault fault, String end, LeadKind kind) {
        List<Half> halves = new ArrayList<>();
        for (Lead lead : fault.directory().leads()) {
            if (lead.kind().is(kind)) {
                Stream.of(new Half(lead, true), new Half(lead, false))
                        .filter(half -> half.text().equals(end))
                        .forEach(halves::add);
            }
        }
        return halves;
    }

    /** The members of the buses, and the buses of what the two send, are declared anew. */
    private static void declared(Fault fault, String one, String other, List<Edit> edits) {
        for (Bus bus : fault.aircraft().buses()) {
            List<String> members = bus.members().stream()
                    .map(member -> unit(member).equals(one)
                            ? other + member.substring(one.length())
                            : unit(member).equals(other) ? one + member.substring(other.length()) : member)
                    .toList();
            if (!Set.copyOf(members).equals(Set.copyOf(bus.members()))) {
                Move.set(Path.of("buses").at(bus.name()).then("members"), String.join(" ", members))
                        .ifPresent(edits::add);
            }
        }
        for (Message message : fault.aircraft().messages()) {
            if (message.sender().is(one) || message.sender().is(other)) {
                String twin = message.sender().is(one) ? other : one;
                fault.aircraft().messages().stream()
                        .filter(sent -> sent.sender().is(twin))
                        .flatMap(sent -> sent.bus().known().stream())
                        .filter(bus -> !message.bus().is(bus))
                        .findFirst()
                        .flatMap(bus ->
                                Move.set(Path.of("messages").at(message.name()).then("bus"), bus))
                        .ifPresent(edits::add);
            }
        }
    }

    private static String unit(String member) {
        int colon = member.indexOf(':');
        return colon < 0 ? member : member.substring(0, colon);
    }
}
