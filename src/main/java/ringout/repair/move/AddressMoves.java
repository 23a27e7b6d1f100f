package ringout.repair.move;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import ringout.model.PortSetting;
import ringout.model.Unit;

/** Addresses and indexes set to what the row of like units leaves open, else to the next free one. */
final class AddressMoves implements Move {
    /** Highest node address offered: the smallest range in common use (DroneCAN specification, from memory: 126 and 127 are for tools). */
    private static final int HIGHEST = 125;

    @Override
    public Stream<Candidate> around(Fault fault) {
        return fault.units().stream().flatMap(unit -> {
            List<Candidate> indexes = indexes(fault, unit);
            List<Candidate> addresses = addresses(fault, unit);
            List<Candidate> all = new ArrayList<>(indexes);
            all.addAll(addresses);
            for (Candidate index : indexes) {
                addresses.forEach(address -> all.add(index.and(address)));
            }
            return all.stream();
        });
    }

    private static List<Candidate> addresses(Fault fault, Unit unit) {
        List<Candidate> all = new ArrayList<>();
        for (PortSetting port : unit.ports()) {
            port.address().known().ifPresent(now -> {
                Set<Integer> used = used(fault);
                List<Integer> likely = row(fault, unit, port)
                        .filter(a -> !a.equals(now))
                        .distinct()
                        .toList();
                likely.forEach(value -> add(all, unit, port, value, Costs.SETTING));
                IntStream.rangeClosed(1, HIGHEST)
                        .filter(value -> !used.contains(value) && value > now)
                        .limit(1)
                        .forEach(value -> add(all, unit, port, value, Costs.GUESSED));
            });
        }
        return all;
    }

    private static void add(List<Candidate> all, Unit unit, PortSetting port, int value, int cost) {
        Move.setting(Move.port(unit.ref(), port.port()).then("address"), String.valueOf(value), cost)
                .forEach(all::add);
    }

    private static Set<Integer> used(Fault fault) {
        Set<Integer> used = new HashSet<>();
        fault.aircraft()
                .units()
                .forEach(unit ->
                        unit.ports().forEach(port -> port.address().known().ifPresent(used::add)));
        return used;
    }

    /** Address of a unit in the row its siblings of one type form: address less motor number is the same for all. */
    private static Stream<Integer> row(Fault fault, Unit unit, PortSetting port) {
        return siblings(fault, unit)
                .flatMap(other -> other.ports().stream()
                        .filter(same -> same.port().equals(port.port()))
                        .flatMap(same -> same.address().known().stream())
                        .map(address -> address - place(other)))
                .map(base -> base + place(unit))
                .filter(address -> address > 0 && address <= HIGHEST);
    }

    private static List<Candidate> indexes(Fault fault, Unit unit) {
        if (unit.index().known().isEmpty()) {
            return List.of();
        }
        return siblings(fault, unit)
                .flatMap(other -> other.index().known().stream().map(index -> index - place(other)))
                .map(base -> base + place(unit))
                .filter(index -> index >= 0 && !unit.index().is(index))
                .distinct()
                .flatMap(index ->
                        Move.setting(Move.unit(unit.ref()).then("index"), String.valueOf(index), Costs.SETTING))
                .toList();
    }

    private static Stream<Unit> siblings(Fault fault, Unit unit) {
        return fault.aircraft().units().stream()
                .filter(other ->
                        other.type().equals(unit.type()) && !other.ref().equals(unit.ref()))
                .filter(other -> place(other) > 0 && place(unit) > 0);
    }

    /** Number at the end of a reference: ESC5 is the fifth of its row; 0 where there is none. */
    private static int place(Unit unit) {
        String digits = unit.ref().replaceAll("^.*?(\\d{1,6})$", "$1");
        return digits.matches("\\d+") ? Integer.parseInt(digits) : 0;
    }
}
