package ringout.present.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import ringout.solve.meter.BusTable;
import ringout.solve.meter.Fault;

/** Faults in trade words; faults of one kind in one phrase. */
public final class FaultWords {
    private FaultWords() {}

    /** One fault. */
    public static String of(Fault fault) {
        return phrase(fault.kind(), List.of(fault));
    }

    /** Several faults, one phrase a kind. */
    public static List<String> of(List<Fault> faults) {
        Map<Fault.Kind, List<Fault>> byKind = new LinkedHashMap<>();
        faults.forEach(fault ->
                byKind.computeIfAbsent(fault.kind(), kind -> new ArrayList<>()).add(fault));
        List<String> phrases = new ArrayList<>();
        byKind.forEach((kind, same) -> phrases.add(phrase(kind, same)));
        return phrases;
    }

    /** A kind as a name for other programs: lower case, blanks between words. */
    public static String kind(Fault.Kind kind) {
        return kind.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** How the meter is put on at a plug. */
    public static String side(BusTable.Side side) {
        return switch (side) {
            case MATED -> "mated";
            case INTO_LEAD -> "pulled, into the lead";
            case INTO_UNIT -> "pulled, into the unit";
        };
    }

    private static String phrase(Fault.Kind kind, List<Fault> faults) {
        return switch (kind) {
            case OPEN_CONDUCTOR -> "open conductor or contact: " + byObject(faults, "");
            case OPEN_CONTACT -> "open contact: " + byObject(faults, "");
            case OPEN_PAIR -> "open " + each(faults, f -> between(f) + " (" + f.object() + ")");
            case UNSEATED -> "plug not seated: " + each(faults, Fault::object);
            case OPEN_PART -> "open: " + each(faults, Fault::object);
            case CLOSED_SWITCH -> "closed: " + each(faults, Fault::object);
            case STILL_MATED -> "not pulled: " + each(faults, Fault::object);
            case TERMINATOR_MISSING -> "terminator missing: " + each(faults, Fault::object);
            case TERMINATOR_EXTRA -> "terminator also on at " + each(faults, Fault::object);
            case TERMINATOR_MOVED ->
                "terminator on at " + each(faults, f -> f.object() + " instead of " + String.join(", ", f.details()));
            case TERMINATORS_ALL_MISSING -> all(faults);
            case SHORT -> "short: " + byObject(faults, " to ");
            case CROSSED -> "crossed: " + byObject(faults, " with ");
            case SOURCE_OFF -> "off or dead: " + each(faults, Fault::object);
            case WRONG_SOCKET ->
                "wrong socket: "
                        + each(
                                faults,
                                f -> f.object() + " in " + f.details().get(1) + " instead of "
                                        + f.details().get(0));
        };
    }

    private static String between(Fault fault) {
        return String.join("-", fault.details());
    }

    private static String all(List<Fault> faults) {
        return each(
                faults,
                f -> (f.details().size() == 2 ? "both" : "all") + " terminators missing: "
                        + String.join(", ", f.details()));
    }

    private static String each(List<Fault> faults, Function<Fault, String> words) {
        return faults.stream().map(words).distinct().collect(Collectors.joining(", "));
    }

    /** Objects with their details behind them; the details of one fault joined by a word, those of several by "or". */
    private static String byObject(List<Fault> faults, String within) {
        Map<String, Set<String>> details = new LinkedHashMap<>();
        faults.forEach(fault -> details.computeIfAbsent(fault.object(), key -> new LinkedHashSet<>())
                .add(String.join(within, fault.details())));
        return details.entrySet().stream()
                .map(entry -> entry.getKey() + " (" + String.join(" or ", entry.getValue()) + ")")
                .collect(Collectors.joining(", "));
    }
}
