package ringout.trace.predict;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import ringout.graph.Circuit;

/**
 * What a technician types for a reading, as an outcome of the test: an outcome in words, or what the meter shows: {@code 118}, {@code 118,2},
 * {@code 1.2k}, {@code OL}, {@code 230 mV}; two values for two wires.
 */
public final class TypedReading {
    private static final Pattern NUMBER = Pattern.compile(
            "([+-]?\\d+(?:[.,]\\d+)?|[+-]?[.,]\\d+)\\s*(k|M|m)?\\s*(?:ohm|V|A|Ω|R)?", Pattern.CASE_INSENSITIVE);
    private static final double KILO = 1000;
    /** A busy bus with less than this between H and L, V, has no traffic a meter could see. Judgement, no source. */
    private static final double SIGN_V = 0.2;

    /** A leg of a bus with less than this to 0V, ohm, is shorted; transceivers without power read kilohms. Judgement, no source. */
    private static final double SHORT_OHM = 200;

    /** Ends of the classes of a bus leg, V: between 0, 2.2, 2.5, 2.8 and a rail. */
    private static final double[] LEG_ENDS = {1, 2.42, 2.58, 3.6};

    private final Circuit circuit;

    private TypedReading(Circuit circuit) {
        this.circuit = circuit;
    }

    /** The outcome of a test that a text means; empty when it means none. */
    public static Optional<String> outcome(Circuit circuit, TestCard card, String text) {
        String plain = text.strip();
        Optional<String> word = card.outcomes().stream()
                .filter(outcome -> outcome.equalsIgnoreCase(plain))
                .findFirst();
        return word.isPresent() ? word : new TypedReading(circuit).measured(card, plain);
    }

    /** The outcome of a test that a number means which stands in the base unit of the meter; empty when it means none. */
    static Optional<String> number(Circuit circuit, TestCard card, double value) {
        return new TypedReading(circuit).one(card.test(), value, false);
    }

    /** Every number of a text in its base unit; empty when anything else is in it. */
    static List<Double> numbers(String text) {
        List<Double> found = new ArrayList<>();
        String rest = text.strip();
        while (!rest.isEmpty()) {
            Matcher matcher = NUMBER.matcher(rest);
            if (!matcher.lookingAt()) {
                return List.of();
            }
            double factor = factor(matcher.group(2));
            found.add(Double.parseDouble(matcher.group(1).replace(',', '.')) * factor);
            rest = rest.substring(matcher.end()).replaceFirst("^[\\s;/]+", "");
        }
        return found;
    }

    private static double factor(@Nullable String prefix) {
        return switch (Objects.requireNonNullElse(prefix, "")) {
            case "" -> 1;
            case "k", "K" -> KILO;
            case "M" -> KILO * KILO;
            default -> 1 / KILO;
        };
    }

    private Optional<String> measured(TestCard card, String text) {
        FieldTest test = card.test();
        String upper = text.toUpperCase(Locale.ROOT);
        boolean over = upper.equals("OL") || upper.equals("O.L") || upper.equals("OPEN") || upper.equals("INF");
        if (over && (test instanceof FieldTest.BusOhms || test instanceof FieldTest.LegToZero)) {
            return Optional.of(test instanceof FieldTest.BusOhms ? "open" : "kilohm and more");
        }
        List<Double> values = numbers(text);
        if (test instanceof FieldTest.WireVolts) {
            return wires(values);
        }
        return values.size() == 1 ? one(test, values.get(0), upper.endsWith("MV")) : Optional.empty();
    }

    private Optional<String> one(FieldTest test, double value, boolean millivolts) {
        if (test instanceof FieldTest.BusOhms) {
            return value < 0 ? Optional.empty() : Optional.of(Classes.ohmClass(value));
        }
        if (test instanceof FieldTest.LegToZero) {
            return Optional.of(value < SHORT_OHM ? "short" : "kilohm and more");
        }
        if (test instanceof FieldTest.Volts at) {
            return volts(value, at.plus(), at.zero());
        }
        if (test instanceof FieldTest.LoadedVolts at) {
            return volts(value, at.plus(), at.zero());
        }
        if (test instanceof FieldTest.LegVolts) {
            return Optional.of(leg(value));
        }
        if (test instanceof FieldTest.LegSign) {
            return Optional.of(value > SIGN_V ? "positive" : value < -SIGN_V ? "negative" : "none");
        }
        if (test instanceof FieldTest.Drop) {
            // A bare number above 2 can only be millivolts: the card says "meter in millivolts".
            double volts = millivolts || value < 2 ? value : value / KILO;
            return Optional.of(Classes.drop(volts));
        }
        return test instanceof FieldTest.SupplyCurrent ? current(value) : Optional.empty();
    }

    private Optional<String> volts(double value, int plus, int zero) {
        OptionalDouble right = SupplyVolts.atRest(circuit).healthy(plus, zero);
        return right.isEmpty() || right.getAsDouble() <= 0
                ? Optional.empty()
                : Optional.of(Classes.volts(OptionalDouble.of(value), right.getAsDouble()));
    }

    private static String leg(double value) {
        int at = 0;
        while (at < LEG_ENDS.length && value >= LEG_ENDS[at]) {
            at++;
        }
        return Classes.LEG.get(at);
    }

    private Optional<String> current(double value) {
        OptionalDouble right = SupplyVolts.atRest(circuit).packAmps();
        return right.isEmpty() ? Optional.empty() : Optional.of(Classes.current(value, right.getAsDouble()));
    }

    /** Two wires of a pulled lead: each near 2.5 V is a bus, near 3.3 V a serial output, below 1 V nothing. */
    private static Optional<String> wires(List<Double> values) {
        if (values.isEmpty() || values.stream().anyMatch(v -> v < 0)) {
            return Optional.empty();
        }
        long rail = values.stream().filter(v -> v > 4).count();
        long serial = values.stream().filter(v -> v > 3 && v <= 4).count();
        long bus = values.stream().filter(v -> v >= 1.5 && v <= 3).count();
        if (rail > 0) {
            return Optional.of("rail");
        }
        if (bus > 0) {
            return Optional.of(bus > 1 ? "2.5 V on both" : "2.5 V on one");
        }
        return Optional.of(serial == 0 ? "nothing" : serial > 1 ? "3.3 V on both" : "3.3 V on one");
    }
}
