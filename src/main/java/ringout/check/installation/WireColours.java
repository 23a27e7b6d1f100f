package ringout.check.installation;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import ringout.model.Datum;
import ringout.model.Project;

/**
 * The colours of a project: red and black unless it has chosen others, and no colours of a bus unless it has.
 *
 * @param supply colours of supply conductors
 * @param zero colours of 0V conductors
 * @param high colours of bus H; empty when the project has none
 * @param low colours of bus L; empty when the project has none
 */
record WireColours(Datum<String> supply, Datum<String> zero, Datum<String> high, Datum<String> low) {
    private static final String RED = "RD";
    private static final String BLACK = "BK";

    static WireColours of(Project project) {
        return new WireColours(
                project.railColour().orElse(Datum.of(RED)),
                project.zeroColour().orElse(Datum.of(BLACK)),
                project.canHighColour(),
                project.canLowColour());
    }

    /** The colour a conductor must have; not known or not asked where nobody has chosen one. */
    Datum<String> of(Carries carries) {
        return switch (carries) {
            case SUPPLY -> supply;
            case ZERO -> zero;
            case BUS_HIGH -> high;
            case BUS_LOW -> low;
            case OTHER -> Datum.notApplicable();
        };
    }

    /** Whether a colour is among those written. */
    static boolean among(Datum<String> wanted, String colour) {
        return List.of(wanted.or("").toUpperCase(Locale.ROOT).split("[\\s;,/]+", -1))
                .contains(colour);
    }

    /** Whether a colour says the opposite of what the conductor carries: red 0V, or a black supply. */
    boolean opposite(Carries carries, String colour) {
        return switch (carries) {
            case SUPPLY -> !among(supply, colour) && (colour.equals(BLACK) || among(zero, colour));
            case ZERO -> !among(zero, colour) && (colour.equals(RED) || among(supply, colour));
            case BUS_HIGH, BUS_LOW, OTHER -> false;
        };
    }

    /** Names of the choices that are marked not known. */
    Set<String> unknown() {
        Set<String> names = new java.util.TreeSet<>();
        add(names, supply, "supply");
        add(names, zero, "0V");
        add(names, high, "bus H");
        add(names, low, "bus L");
        return names;
    }

    private static void add(Set<String> names, Datum<String> colour, String name) {
        if (colour instanceof Datum.Unknown) {
            names.add(name);
        }
    }
}
