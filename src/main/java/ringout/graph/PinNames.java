package ringout.graph;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ringout.model.Pin;

/**
 * Finds the contacts of one plug by number, by name, and by the leg of a bus they are, in this order. A contact written
 * exactly so comes first; else upper and lower case are one. (Round plugs have a contact A and a contact a.)
 */
final class PinNames {
    private final Map<String, Integer> exact = new HashMap<>();
    private final NameTable anyCase = new NameTable();

    PinNames(List<Pin> pins, int first) {
        for (int i = 0; i < pins.size(); i++) {
            add(pins.get(i).number(), first + i);
        }
        for (int i = 0; i < pins.size(); i++) {
            int pin = first + i;
            pins.get(i).name().known().ifPresent(name -> add(name, pin));
        }
        for (int i = 0; i < pins.size(); i++) {
            int pin = first + i;
            pins.get(i).role().known().flatMap(TypeLayout::leg).ifPresent(leg -> add(leg, pin));
        }
    }

    private void add(String name, int pin) {
        exact.putIfAbsent(name, pin);
        anyCase.add(name, pin);
    }

    /** The contact of a name, or -1. */
    int find(String name) {
        Integer pin = exact.get(name);
        return pin == null ? anyCase.find(name) : pin;
    }
}
