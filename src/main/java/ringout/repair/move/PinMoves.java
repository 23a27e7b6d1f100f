package ringout.repair.move;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import ringout.model.Lead;
import ringout.model.PinMap;
import ringout.model.PinRole;
import ringout.model.Plug;

/** Contacts of a lead exchanged, taken out, put in, or all made straight. */
final class PinMoves implements Move {
    /** Plugs with more contacts are not searched contact by contact. */
    private static final int WIDEST = 16;

    @Override
    public Stream<Candidate> around(Fault fault) {
        return fault.leads().stream().flatMap(lead -> Stream.concat(straight(lead), changed(fault, lead)));
    }

    private static Stream<Candidate> straight(Lead lead) {
        return lead.pins().isKnown()
                ? Move.clear(Move.lead(lead.id()).then("pins"))
                        .map(edit -> Candidate.of(edit, Costs.CONTACTS + 1))
                        .stream()
                : Stream.empty();
    }

    private static Stream<Candidate> changed(Fault fault, Lead lead) {
        List<PinMap.Pair> pairs = lead.pins().known().map(PinMap::pairs).orElseGet(() -> straightPairs(fault, lead));
        if (pairs.isEmpty() || pairs.size() > WIDEST) {
            return Stream.empty();
        }
        List<Candidate> all = new ArrayList<>();
        exchanged(pairs).forEach(map -> add(all, lead, map, Costs.CONTACTS));
        for (int i = 0; i < pairs.size() && pairs.size() > 1; i++) {
            List<PinMap.Pair> less = new ArrayList<>(pairs);
            less.remove(i);
            if (carries(fault, lead, less)) {
                add(all, lead, less, Costs.CONTACT);
            }
        }
        missing(fault, lead, pairs).forEach(pair -> {
            List<PinMap.Pair> more = new ArrayList<>(pairs);
            more.add(pair);
            add(all, lead, more, Costs.CONTACT + 1);
        });
        return all.stream();
    }

    /** Whether what is left of a lead is more than a return. */
    private static boolean carries(Fault fault, Lead lead, List<PinMap.Pair> pairs) {
        Optional<Plug> from = fault.plug(lead.from());
        return from.isEmpty()
                || from.get().pins().stream()
                        .filter(pin -> pairs.stream()
                                .anyMatch(pair -> pair.from().equals(pin.number())
                                        || pin.name().is(pair.from())))
                        .anyMatch(pin -> !pin.role().is(PinRole.ZERO_V));
    }

    /** Each two wires exchanged at the {@code to} end. */
    private static List<List<PinMap.Pair>> exchanged(List<PinMap.Pair> pairs) {
        List<List<PinMap.Pair>> all = new ArrayList<>();
        for (int i = 0; i < pairs.size(); i++) {
            for (int j = i + 1; j < pairs.size(); j++) {
                List<PinMap.Pair> swapped = new ArrayList<>(pairs);
                swapped.set(i, new PinMap.Pair(pairs.get(i).from(), pairs.get(j).to()));
                swapped.set(j, new PinMap.Pair(pairs.get(j).from(), pairs.get(i).to()));
                all.add(swapped);
            }
        }
        return all;
    }

    private static List<PinMap.Pair> straightPairs(Fault fault, Lead lead) {
        Optional<Plug> from = fault.plug(lead.from());
        Optional<Plug> to = fault.plug(lead.to());
        if (from.isEmpty() || to.isEmpty()) {
            return List.of();
        }
        List<String> there = to.get().pins().stream().map(pin -> pin.number()).toList();
        return from.get().pins().stream()
                .map(pin -> pin.number())
                .filter(there::contains)
                .map(number -> new PinMap.Pair(number, number))
                .toList();
    }

    /** Straight wires between contacts that have none yet. */
    private static List<PinMap.Pair> missing(Fault fault, Lead lead, List<PinMap.Pair> pairs) {
        return straightPairs(fault, lead).stream()
                .filter(pair -> pairs.stream()
                        .noneMatch(used ->
                                used.from().equals(pair.from()) || used.to().equals(pair.to())))
                .toList();
    }

    private static void add(List<Candidate> all, Lead lead, List<PinMap.Pair> map, int cost) {
        List<PinMap.Pair> ordered = Collections.unmodifiableList(map);
        if (IntStream.range(0, ordered.size())
                .allMatch(i -> !ordered.get(i).from().isEmpty())) {
            Move.set(Move.lead(lead.id()).then("pins"), new PinMap(ordered).toString())
                    .ifPresent(edit -> all.add(Candidate.of(edit, cost)));
        }
    }
}
