package ringout.repair.move;

import java.util.List;
import java.util.stream.Stream;
import ringout.model.Plug;
import ringout.model.Unit;
import ringout.model.UnitType;

/** A unit replaced by one of another type with the same plugs. */
final class TypeMoves implements Move {
    @Override
    public Stream<Candidate> around(Fault fault) {
        List<UnitType> types = fault.aircraft().types();
        return fault.units().stream()
                .flatMap(unit -> types.stream()
                        .filter(type -> type.name().equals(unit.type()))
                        .flatMap(now -> types.stream()
                                .filter(other -> !other.name().equals(now.name())
                                        && faces(other).equals(faces(now))))
                        .flatMap(other -> Move.setting(
                                Move.unit(unit.ref()).then("type"), other.name(), cost(fault, unit, other))));
    }

    /** The type of a sibling, FLWR beside FLWL, is the likelier one. */
    private static int cost(Fault fault, Unit unit, UnitType type) {
        boolean sibling = fault.aircraft().units().stream()
                .anyMatch(other -> other.type().equals(type.name())
                        && alike(other.ref(), unit.ref())
                                >= Math.max(2, unit.ref().length() - 1));
        return sibling ? Costs.TYPE - 1 : Costs.TYPE;
    }

    private static int alike(String one, String other) {
        int i = 0;
        while (i < Math.min(one.length(), other.length()) && one.charAt(i) == other.charAt(i)) {
            i++;
        }
        return i;
    }

    /** What a lead sees of a type: plug names, families and roles of the contacts. */
    private static List<String> faces(UnitType type) {
        return type.plugs().stream()
                .map((Plug plug) -> plug.name() + " "
                        + plug.family().or("") + " "
                        + plug.pins().stream()
                                .map(pin -> pin.number() + pin.role().known())
                                .toList())
                .toList();
    }
}
