package ringout.sheet.page;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.graph.loss.BusLoss;
import ringout.graph.loss.Items;
import ringout.graph.loss.LossTable;
import ringout.graph.loss.RotorLoss;
import ringout.graph.loss.SupplyLoss;
import ringout.solve.meter.BusPull;
import ringout.solve.meter.Reading;

/** What every plug of one state takes with it when it is pulled: the loss table, plug by plug. */
final class Pulls {
    private final Circuit circuit;
    private final Wiring wiring;
    private final BusPull readings;
    private final Map<Integer, List<String>> dark = new HashMap<>();
    private final Map<Integer, List<String>> cut = new HashMap<>();
    private final Map<Integer, List<String>> motors = new HashMap<>();
    private final Map<Integer, List<String>> functions = new HashMap<>();

    private Pulls(Circuit circuit) {
        this.circuit = circuit;
        wiring = circuit.wiring();
        readings = BusPull.of(circuit);
        for (int unit = 0; unit < wiring.directory().count(); unit++) {
            String name = wiring.directory().name(unit);
            SupplyLoss.of(circuit).of(unit).ifPresent(items -> items.forEach(item -> note(dark, item, name)));
        }
        BusLoss.of(circuit)
                .byUnit()
                .forEach((unit, items) ->
                        items.forEach(item -> note(cut, item, wiring.directory().name(unit))));
        RotorLoss rotors = RotorLoss.of(circuit);
        rotors.byItem()
                .forEach((item, places) -> places.forEach(place -> note(
                        motors, item, rotors.driven().get(place).drive().motor().ref())));
        LossTable.of(circuit).lines().forEach(line -> functions.put(line.item().index(), line.functionNames()));
    }

    private static void note(Map<Integer, List<String>> by, int item, String lost) {
        by.computeIfAbsent(item, key -> new ArrayList<>()).add(lost);
    }

    static Pulls of(Circuit circuit) {
        return new Pulls(circuit);
    }

    /** By plug, what happens when it is pulled. */
    List<PagePull> all(List<PageBooks.PlugPlace> plugs) {
        return plugs.stream().map(this::pull).toList();
    }

    /** Between H and L at every plug of a bus, everything mated. */
    Map<String, Reading> buses() {
        return readings.mated();
    }

    private PagePull pull(PageBooks.PlugPlace place) {
        if (!mated(place)) {
            return new PagePull(false, List.of(), List.of(), List.of(), List.of(), List.of());
        }
        int item = Items.of(circuit).plug(place.unit(), place.plug());
        return new PagePull(
                true,
                dark.getOrDefault(item, List.of()),
                cut.getOrDefault(item, List.of()),
                motors.getOrDefault(item, List.of()),
                functions.getOrDefault(item, List.of()),
                readings.effects(place.unit(), place.plug()));
    }

    private boolean mated(PageBooks.PlugPlace place) {
        for (int pin = wiring.firstPin(place.unit(), place.plug());
                pin < wiring.endPin(place.unit(), place.plug());
                pin++) {
            for (int w : wiring.wiresAt(pin)) {
                if (circuit.mated(wiring.wires().get(w))) {
                    return true;
                }
            }
        }
        return false;
    }
}
