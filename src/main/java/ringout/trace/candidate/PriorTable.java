package ringout.trace.candidate;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The weights that faults have before anything is known, in one table: a base for each kind and a factor for each
 * circumstance that makes a kind likelier. Weights are relative; whoever uses them normalises. All values given here are
 * judgement from practice, no source; an operator with records of his own puts his figures in their stead.
 *
 * @param weights value by key, "kind" for a base and "kind, circumstance" for a factor
 * @param notes where a value comes from, by the same key
 */
public record PriorTable(SortedMap<String, Double> weights, SortedMap<String, String> notes) {
    /** Weight that always stays with what no candidate says: something that is not in the model. Judgement, no source. */
    public static final double NOT_IN_THE_MODEL = 0.05;

    /** Key of the row of that weight. */
    public static final String OUTSIDE = "not in the model";

    private static final String JUDGEMENT = "judgement";

    private static final PriorTable STANDARD = standardTable();

    /** Keeps its own copies. */
    public PriorTable {
        weights = Collections.unmodifiableSortedMap(new TreeMap<>(weights));
        notes = Collections.unmodifiableSortedMap(new TreeMap<>(notes));
    }

    /**
     * A table read from rows.
     *
     * @param table the standard table with the rows put in
     * @param problems rows that could not be used, with the reason
     */
    public record Parsed(PriorTable table, List<String> problems) {}

    /** The standard table. */
    public static PriorTable standard() {
        return STANDARD;
    }

    private static PriorTable standardTable() {
        Map<FaultKind, Map<Circumstance, Double>> factors = new EnumMap<>(FaultKind.class);
        for (FaultKind kind : List.of(FaultKind.OPEN_CONDUCTOR, FaultKind.OPEN_PAIR, FaultKind.RETURN_OPEN)) {
            factors.put(kind, Map.of(Circumstance.FLEX, 5.0, Circumstance.HAND_CRIMP, 3.0, Circumstance.TOUCHED, 3.0));
        }
        factors.put(FaultKind.NOT_SEATED, Map.of(Circumstance.TOUCHED, 5.0));
        for (FaultKind kind : List.of(FaultKind.POOR_CONTACT, FaultKind.RETURN_THIN)) {
            factors.put(kind, Map.of(Circumstance.WET, 3.0, Circumstance.MANY_MATINGS, 3.0));
        }
        for (FaultKind kind : List.of(FaultKind.SHORT_TO_ZERO, FaultKind.SHORT_TO_RAIL, FaultKind.SHORT_TO_NEIGHBOUR)) {
            factors.put(kind, Map.of(Circumstance.CHAFE, 5.0, Circumstance.TOUCHED, 3.0));
        }
        factors.put(FaultKind.SWAPPED_PAIR, Map.of(Circumstance.TOUCHED, 100.0));
        factors.put(FaultKind.SWAPPED_PINS, Map.of(Circumstance.TOUCHED, 100.0));
        factors.put(FaultKind.WRONG_PORT, Map.of(Circumstance.TOUCHED, 80.0));
        factors.put(FaultKind.SAME_ADDRESS, Map.of(Circumstance.TOUCHED, 10.0));
        factors.put(FaultKind.WRONG_RATE, Map.of(Circumstance.UPDATE, 5.0));
        factors.put(FaultKind.WRONG_FUNCTION, Map.of(Circumstance.UPDATE, 5.0));
        for (FaultKind kind : List.of(FaultKind.DEAD_UNIT, FaultKind.DEAD_TRANSCEIVER)) {
            factors.put(kind, Map.of(Circumstance.CRASH, 5.0, Circumstance.WET, 5.0));
        }
        SortedMap<String, Double> weights = new TreeMap<>();
        SortedMap<String, String> notes = new TreeMap<>();
        weights.put(OUTSIDE, NOT_IN_THE_MODEL);
        for (FaultKind kind : FaultKind.values()) {
            weights.put(kind.words(), kind.base());
            factors.getOrDefault(kind, Map.of()).forEach((when, factor) -> weights.put(key(kind, when), factor));
        }
        weights.keySet().forEach(key -> notes.put(key, JUDGEMENT));
        return new PriorTable(weights, notes);
    }

    /** The key of the factor of a circumstance on a kind. */
    public static String key(FaultKind kind, Circumstance when) {
        return kind.words() + ", " + when.words();
    }

    /** The base weight of a kind. */
    public double base(FaultKind kind) {
        return weights.getOrDefault(kind.words(), kind.base());
    }

    /** What a circumstance multiplies the weight of a kind by; 1 when it does nothing to it. */
    public double factor(FaultKind kind, Circumstance when) {
        return weights.getOrDefault(key(kind, when), 1.0);
    }

    /** The part of all weight that stays with what is not in the model, 0 to 1. */
    public double outside() {
        return weights.getOrDefault(OUTSIDE, NOT_IN_THE_MODEL);
    }

    /** The table as rows of key, value and note, ascending by key; {@link #parse} reads them back. */
    public List<List<String>> rows() {
        List<List<String>> rows = new ArrayList<>();
        weights.forEach((key, value) -> rows.add(List.of(key, Double.toString(value), notes.getOrDefault(key, ""))));
        return List.copyOf(rows);
    }

    /**
     * The standard table with some rows put in.
     *
     * @param rows key, value and, if wanted, a note of where the value comes from; other columns are passed over
     */
    public static Parsed parse(List<List<String>> rows) {
        SortedMap<String, Double> weights = new TreeMap<>(STANDARD.weights);
        SortedMap<String, String> notes = new TreeMap<>(STANDARD.notes);
        List<String> problems = new ArrayList<>();
        for (List<String> row : rows) {
            String key = row.isEmpty() ? "" : row.get(0).strip();
            Optional<Double> value = row.size() < 2 ? Optional.empty() : number(row.get(1));
            if (!known(key)) {
                problems.add("no kind of fault or circumstance is called '" + key + "'");
            } else if (value.isEmpty() || value.get() < 0 || (key.equals(OUTSIDE) && value.get() >= 1)) {
                problems.add("'" + key + "' needs a number of 0 or more" + (key.equals(OUTSIDE) ? " and below 1" : ""));
            } else {
                weights.put(key, value.get());
                notes.put(key, row.size() > 2 ? row.get(2).strip() : "");
            }
        }
        return new Parsed(new PriorTable(weights, notes), List.copyOf(problems));
    }

    private static Optional<Double> number(String text) {
        try {
            double value = Double.parseDouble(text.strip().replace(',', '.'));
            return Double.isFinite(value) ? Optional.of(value) : Optional.empty();
        } catch (NumberFormatException notANumber) {
            return Optional.empty();
        }
    }

    private static boolean known(String key) {
        if (key.equals(OUTSIDE)) {
            return true;
        }
        for (FaultKind kind : FaultKind.values()) {
            if (key.equals(kind.words())) {
                return true;
            }
            for (Circumstance when : Circumstance.values()) {
                if (key.equals(key(kind, when))) {
                    return true;
                }
            }
        }
        return false;
    }
}
