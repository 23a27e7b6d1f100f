package ringout.repair.move;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import ringout.model.TerminatorState;
import ringout.model.Unit;

/** Terminators switched: one, or one off and another on. */
final class TerminatorMoves implements Move {
    @Override
    public Stream<Candidate> around(Fault fault) {
        List<Candidate> single =
                fault.units().stream().flatMap(TerminatorMoves::switched).toList();
        List<Candidate> all = new ArrayList<>(single);
        for (int i = 0; i < single.size(); i++) {
            for (int j = i + 1; j < single.size(); j++) {
                all.add(single.get(i).and(single.get(j)));
            }
        }
        return all.stream();
    }

    private static Stream<Candidate> switched(Unit unit) {
        return unit.ports().stream()
                .flatMap(port -> port.terminator().known().stream()
                        .filter(now -> now == TerminatorState.ON || now == TerminatorState.OFF)
                        .flatMap(now -> Move.setting(
                                Move.port(unit.ref(), port.port()).then("terminator"),
                                now == TerminatorState.ON ? "off" : "on",
                                Costs.SETTING)));
    }
}
