package ringout.trace.predict;

import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import ringout.solve.meter.Reading;

/** Readings as outcomes: which of them a hand-held meter, or the eye, tells apart, and how often it is misread. */
final class Classes {
    /** One reading in twenty-five is misread, mistyped or taken at the wrong contact. Judgement: 3 to 5 %, no source. */
    static final double MISREAD = 0.04;

    /** Upper ends of the classes in ohm: what few parallel and series terminators and node inputs make, apart by a third. */
    private static final double[] OHM_ENDS = {5, 25, 35, 50, 80, 160, 1_000, 6_700, 8_600, 12_000, 22_000, 45_000};

    private static final List<String> OHMS = List.of(
            "short",
            "10 to 25",
            "about 30",
            "about 40",
            "about 60",
            "about 120",
            "some hundred",
            "few kilohm",
            "about 7.5 k",
            "about 10 k",
            "about 15 k",
            "about 30 k",
            "above 45 k",
            "open");

    static final List<String> VOLTS = List.of("none", "low", "as it should", "high");
    static final List<String> SIGN = List.of("positive", "negative", "none");
    static final List<String> ANSWERS = List.of("answers", "comes and goes", "silent");
    static final List<String> LIGHT = List.of("lit", "dark");
    static final List<String> CURRENT = List.of("less", "as on the sheet", "more");
    static final List<String> LEG = List.of("0 V", "about 2.2 V", "2.5 V", "about 2.8 V", "rail");
    static final List<String> WIRES =
            List.of("2.5 V on both", "2.5 V on one", "3.3 V on one", "3.3 V on both", "rail", "nothing");
    static final List<String> TO_ZERO = List.of("short", "kilohm and more");
    static final List<String> DROP = List.of("as it should", "too much");
    static final List<String> RECOVER = List.of("rest recovers", "no change");
    static final List<String> RECORD = List.of("as record", "differs");
    static final List<String> LOOK = List.of("seen", "nothing");
    static final List<String> RING = List.of("as listed", "open", "touching", "exchanged");
    static final List<String> SWAP = List.of("works", "as before");

    /** Below this part of the expected voltage there is none; below and above the others it is low or high. Judgement, no source. */
    private static final double NONE = 0.1;

    private static final double LOW = 0.95;
    private static final double HIGH = 1.05;

    /** Standing current that a meter tells from the sheet, A, and as a part of it. Common practice, no source. */
    private static final double TOLD_A = 0.1;

    private static final double TOLD_PART = 0.03;

    /** A contact with more than this drop under load is bad, V. Common practice, no source. */
    private static final double BAD_DROP_V = 0.1;

    private Classes() {}

    static List<String> ohms() {
        return OHMS;
    }

    /** One outcome, but for misreading, which is spread over the others. */
    static Map<String, Double> sure(List<String> outcomes, String one) {
        return likely(outcomes, one, 1 - MISREAD);
    }

    /** One outcome with a probability; the others share the rest. */
    static Map<String, Double> likely(List<String> outcomes, String one, double probability) {
        if (!outcomes.contains(one)) {
            throw new IllegalArgumentException("'" + one + "' is none of " + outcomes);
        }
        Map<String, Double> table = new LinkedHashMap<>();
        double rest = (1 - probability) / (outcomes.size() - 1);
        outcomes.forEach(outcome -> table.put(outcome, outcome.equals(one) ? probability : rest));
        return Collections.unmodifiableMap(table);
    }

    /** A reading in ohm over the classes: its band is spread evenly on a scale of ratios. */
    static Map<String, Double> ohms(Reading reading) {
        if (!(reading instanceof Reading.Ohms band)) {
            return sure(OHMS, "open");
        }
        double[] parts = new double[OHM_ENDS.length + 1];
        double low = Math.log(Math.max(band.least(), 0.1) + 0.1);
        double high = Math.log(Math.max(band.most(), 0.1) + 0.1) + 1e-9;
        double from = Double.NEGATIVE_INFINITY;
        for (int i = 0; i <= OHM_ENDS.length; i++) {
            double to = i < OHM_ENDS.length ? Math.log(OHM_ENDS[i]) : Double.POSITIVE_INFINITY;
            parts[i] = Math.max(0, Math.min(high, to) - Math.max(low, from)) / (high - low);
            from = to;
        }
        Map<String, Double> table = new LinkedHashMap<>();
        double stray = MISREAD / OHMS.size();
        for (int i = 0; i < OHMS.size(); i++) {
            table.put(OHMS.get(i), stray + (i < parts.length ? (1 - MISREAD) * parts[i] : 0));
        }
        return Collections.unmodifiableMap(table);
    }

    /** The class of a resistance at its nominal value. */
    static String ohmClass(double ohm) {
        int at = Arrays.binarySearch(OHM_ENDS, ohm);
        return OHMS.get(at >= 0 ? at : -1 - at);
    }

    /** A voltage against what it should be. */
    static String volts(OptionalDouble found, double right) {
        double part = found.orElse(0) / right;
        if (part < NONE) {
            return "none";
        }
        return part < LOW ? "low" : part > HIGH ? "high" : "as it should";
    }

    /** The outcome of a supply current against the sheet, both in A. */
    static String current(double now, double right) {
        double told = Math.max(TOLD_A, TOLD_PART * right);
        return now < right - told ? "less" : now > right + told ? "more" : "as on the sheet";
    }

    /** The outcome of a drop across a mated contact under load, V. */
    static String drop(double volts) {
        return volts > BAD_DROP_V ? "too much" : "as it should";
    }
}
