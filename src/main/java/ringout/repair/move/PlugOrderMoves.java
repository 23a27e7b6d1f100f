package ringout.repair.move;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import ringout.model.edit.Path;

/** Battery plugs mated in another order: one taken out of the row and put elsewhere. */
final class PlugOrderMoves implements Move {
    @Override
    public Stream<Candidate> around(Fault fault) {
        List<String> order = fault.aircraft().airframe().plugOrder();
        if (order.stream().noneMatch(plug -> mentions(fault, plug))) {
            return Stream.empty();
        }
        List<Candidate> all = new ArrayList<>();
        for (int i = 0; i < order.size(); i++) {
            for (int j = i + 1; j < order.size(); j++) {
                List<String> swapped = new ArrayList<>(order);
                Collections.swap(swapped, i, j);
                Move.setting(Path.of("airframe").then("plugOrder"), String.join(" ", swapped), Costs.SETTING)
                        .forEach(all::add);
            }
        }
        return all.stream();
    }

    private static boolean mentions(Fault fault, String plug) {
        return fault.headline().finding().objects().contains(plug)
                || fault.unitOf(plug).filter(fault.units()::contains).isPresent();
    }
}
