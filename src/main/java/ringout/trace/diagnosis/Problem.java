package ringout.trace.diagnosis;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReferenceArray;

/**
 * Suspects, tests and the chances between them. Suspects are numbered in order; after the last may come one more, <em>something
 * not in the model</em>, which predicts every outcome equally and has no repair action. Rows are fetched from the table when first needed
 * and kept; everything else is fixed.
 */
public final class Problem {
    /** Share of something not in the model when nothing better is known: a judgement, no source. */
    public static final double USUAL_UNKNOWN = 0.05;

    /** Repair number of a suspect without one. */
    public static final int NO_REPAIR = -1;

    private final List<Suspect> suspects;
    private final List<Question> questions;
    private final Map<String, Double> openings;
    private final double unknown;
    private final OutcomeTable table;
    private final AtomicReferenceArray<Rows> rows;
    private final double[] prior;
    private final List<RepairAction> repairs;
    private final int[] repairOf;

    /**
     * Puts a problem together.
     *
     * @param suspects the faults thought of, at least one with a weight above 0
     * @param questions the tests thought of
     * @param openings what may have to be opened, with minutes; every name used must be here
     * @param unknown share of something not in the model, 0 to below 1; 0 only where the list is known to be complete, as in an
     *     exercise
     * @param table chances of the outcomes
     */
    public Problem(
            List<Suspect> suspects,
            List<Question> questions,
            List<Opening> openings,
            double unknown,
            OutcomeTable table) {
        this.suspects = List.copyOf(suspects);
        this.questions = List.copyOf(questions);
        this.openings = new LinkedHashMap<>();
        openings.forEach(opening -> this.openings.put(opening.name(), opening.minutes()));
        this.unknown = unknown;
        this.table = table;
        if (!(unknown >= 0 && unknown < 1)) {
            throw new IllegalArgumentException("share of the unknown is " + unknown + ", must be from 0 to below 1");
        }
        this.suspects.forEach(suspect -> known(suspect.name(), suspect.openings()));
        this.questions.forEach(question -> known(question.name(), question.openings()));
        this.rows = new AtomicReferenceArray<>(this.questions.size());
        this.prior = normalised();
        this.repairs = RepairAction.of(this.suspects);
        this.repairOf = numbers();
    }

    private void known(String who, List<String> names) {
        for (String name : names) {
            if (!openings.containsKey(name)) {
                throw new IllegalArgumentException(who + " needs " + name + " open, which is not among the openings");
            }
        }
    }

    private double[] normalised() {
        double sum = suspects.stream().mapToDouble(Suspect::weight).sum();
        if (!(sum > 0)) {
            throw new IllegalArgumentException("no suspect has a weight above 0");
        }
        double[] share = new double[size()];
        for (int s = 0; s < suspects.size(); s++) {
            share[s] = suspects.get(s).weight() / sum * (1 - unknown);
        }
        if (hasUnknown()) {
            share[suspects.size()] = unknown;
        }
        return share;
    }

    private int[] numbers() {
        int[] number = new int[size()];
        Arrays.fill(number, NO_REPAIR);
        for (int r = 0; r < repairs.size(); r++) {
            for (int s : repairs.get(r).suspects()) {
                number[s] = r;
            }
        }
        return number;
    }

    /** The suspects thought of, without the unknown one. */
    public List<Suspect> suspects() {
        return suspects;
    }

    /** The tests thought of. */
    public List<Question> questions() {
        return questions;
    }

    /** The repair actions, in the order of their first suspects. */
    public List<RepairAction> repairs() {
        return repairs;
    }

    /** Number of suspects, the unknown one included. */
    public int size() {
        return suspects.size() + (hasUnknown() ? 1 : 0);
    }

    /** Whether something not in the model is kept among the suspects. */
    public boolean hasUnknown() {
        return unknown > 0;
    }

    /** What a suspect is called; the last one may be something not in the model. */
    public String nameOf(int suspect) {
        return suspect < suspects.size() ? suspects.get(suspect).name() : "something not in the model";
    }

    /** Number of the repair action of a suspect, or {@link #NO_REPAIR}. */
    public int repairOf(int suspect) {
        return repairOf[suspect];
    }

    /** Whether a repair action, by its name, cures a suspect. */
    public boolean isCuredBy(int suspect, String action) {
        int repair = repairOf[suspect];
        return repair != NO_REPAIR && repairs.get(repair).name().equals(action);
    }

    /** Share of a suspect before any reading; all sum to 1. */
    public double prior(int suspect) {
        return prior[suspect];
    }

    /** Minutes to open what is not open yet. */
    public double minutesToOpen(List<String> names, Set<String> opened) {
        return names.stream()
                .distinct()
                .filter(name -> !opened.contains(name))
                .mapToDouble(name -> openings.getOrDefault(name, 0.0))
                .sum();
    }

    /** Chances of a question, fetched and checked when first asked for. */
    public Rows rows(int question) {
        Rows kept = rows.get(question);
        if (kept != null) {
            return kept;
        }
        Rows fresh = Rows.checked(questions.get(question), table.rows(question), suspects.size(), hasUnknown());
        return rows.compareAndSet(question, null, fresh) ? fresh : rows.get(question);
    }
}
