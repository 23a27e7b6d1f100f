package ringout.check.installation;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import ringout.model.Datum;
import ringout.model.Project;

/** The colours of a project: red and black unless it has chosen others, and no colours of a bus unless it has. */
final class WireColours {
    private static final String RED = "RD";
    private static final String BLACK = "BK";

    private final Map<Carries, Datum<String>> chosen = new EnumMap<>(Carries.class);
    private final Map<Carries, Set<String>> letters = new EnumMap<>(Carries.class);

    WireColours(Project project) {
        choose(Carries.SUPPLY, project.railColour().orElse(Datum.of(RED)));
        choose(Carries.ZERO, project.zeroColour().orElse(Datum.of(BLACK)));
        choose(Carries.BUS_HIGH, project.canHighColour());
        choose(Carries.BUS_LOW, project.canLowColour());
        choose(Carries.OTHER, Datum.notApplicable());
    }

    private void choose(Carries carries, Datum<String> colours) {
        chosen.put(carries, colours);
        String[] words = colours.or("").toUpperCase(Locale.ROOT).split("[\\s;,/]+", -1);
        letters.put(carries, new HashSet<>(Arrays.asList(words)));
    }

    /** The colours a conductor must have; not known or not asked where nobody has chosen one. */
    Datum<String> of(Carries carries) {
        return chosen.getOrDefault(carries, Datum.notApplicable());
    }

    /** Whether a colour is among those chosen. */
    boolean has(Carries carries, String colour) {
        return letters.getOrDefault(carries, Set.of()).contains(colour);
    }

    /** Whether a colour says the opposite of what the conductor carries: red 0V, or a black supply. */
    boolean opposite(Carries carries, String colour) {
        return switch (carries) {
            case SUPPLY -> !has(carries, colour) && (colour.equals(BLACK) || has(Carries.ZERO, colour));
            case ZERO -> !has(carries, colour) && (colour.equals(RED) || has(Carries.SUPPLY, colour));
            case BUS_HIGH, BUS_LOW, OTHER -> false;
        };
    }

    /** What is marked not known. */
    Set<String> unknown() {
        Set<String> names = new TreeSet<>();
        chosen.forEach((carries, colour) -> {
            if (colour instanceof Datum.Unknown) {
                names.add(carries.words());
            }
        });
        return names;
    }
}
