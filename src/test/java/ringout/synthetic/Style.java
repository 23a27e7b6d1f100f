package ringout.synthetic;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What one aircraft does its own way: how units, plugs, pins and leads are named, how pins are numbered, which voltage its
 * packs have and how its motors are driven.
 */
final class Style {
    private static final Map<String, List<String>> STEMS = Map.ofEntries(
            Map.entry("pack", List.of("CELLS", "PK", "ENERGY", "Akku")),
            Map.entry("board", List.of("BAR", "SPREAD", "Verteiler", "DIST")),
            Map.entry("monitor", List.of("WATCH", "METER", "PSU")),
            Map.entry("controller", List.of("BRAIN", "PILOT", "FCU", "Kopf")),
            Map.entry("drive", List.of("INV", "DRV", "Regler", "CHOP")),
            Map.entry("motor", List.of("ROTOR", "MTR", "Prop")),
            Map.entry("bus", List.of("NODE", "SENS", "Knoten", "BUSDEV")),
            Map.entry("serial", List.of("LINKED", "SDEV", "Geber")),
            Map.entry("payload", List.of("LOAD", "PAY", "Nutz")),
            Map.entry("splice", List.of("TEE", "JUNC", "Weiche")));

    private final Dice dice;
    private final Map<String, String> stems = new HashMap<>();
    private final Map<String, String> pinNames = new HashMap<>();
    private final String separator;
    private final String plugPrefix;
    private final String leadPrefix;
    private final int cells;
    private final int inSeries;
    private final int strings;
    private final int rotors;
    private final boolean coaxial;
    private final boolean busDriven;
    private final boolean shunt;
    private int units;
    private int leads;

    Style(Dice dice, boolean small) {
        this.dice = dice;
        boolean opaque = dice.chance(0.2);
        STEMS.keySet().stream()
                .sorted()
                .forEach(kind -> stems.put(kind, opaque ? "UNIT" : dice.pick(STEMS.getOrDefault(kind, List.of()))));
        this.separator = dice.pick(List.of("", "", "_", "-", " ", "."));
        this.plugPrefix = dice.pick(List.of("J", "X", "P", "CN"));
        this.leadPrefix = dice.pick(List.of("W", "L", "K-", "c"));
        this.inSeries = small ? 1 : dice.between(1, 2);
        this.cells = dice.pick(inSeries == 1 ? List.of(6, 12, 14) : List.of(4, 6, 7));
        this.strings = small ? 1 : dice.between(1, 2);
        this.rotors = small ? 4 : dice.pick(List.of(4, 6, 8));
        this.coaxial = dice.chance(0.3);
        this.busDriven = dice.chance(0.3);
        this.shunt = dice.chance(0.3);
    }

    /** A name for the next unit of a kind; it ends in a number, and no plug name does so alone. */
    String unit(String kind) {
        return stems.getOrDefault(kind, "UNIT") + separator + ++units;
    }

    String lead() {
        return leadPrefix + ++leads;
    }

    String plug(int number) {
        return plugPrefix + number;
    }

    /** The name this aircraft's makers print at a contact of a function. */
    String pinName(String function, List<String> choices) {
        return pinNames.computeIfAbsent(function, key -> dice.pick(choices));
    }

    Dice dice() {
        return dice;
    }

    /** Cells in series in one pack. */
    int cells() {
        return cells;
    }

    /** Packs in series. */
    int inSeries() {
        return inSeries;
    }

    /** Strings of packs side by side. */
    int strings() {
        return strings;
    }

    /** Rotors a zone drives. */
    int rotors() {
        return rotors;
    }

    /** Whether rotors sit in pairs on one arm. */
    boolean coaxial() {
        return coaxial;
    }

    /** Whether the speed controllers hear a bus and not a pulse. */
    boolean busDriven() {
        return busDriven;
    }

    /** Whether the return of the packs goes through a sensor. */
    boolean shunt() {
        return shunt;
    }

    double fullV() {
        return 4.2 * cells * inSeries;
    }

    double nominalV() {
        return 3.7 * cells * inSeries;
    }

    double emptyV() {
        return 3.3 * cells * inSeries;
    }
}
