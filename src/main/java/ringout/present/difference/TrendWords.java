package ringout.present.difference;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import ringout.compare.fleet.Trend;
import ringout.model.shape.Scalars;

/** A trend in words: the readings, what resistance they stand for, where the line meets the limit and how well that is known. */
final class TrendWords {
    private TrendWords() {}

    /** The readings: {@code 61, 74, 118, 229 mV at 38 A (1.6 -> 6.0 milliohm) at 5, 15, 25, 35 h}. */
    static String readings(Trend trend) {
        String values = trend.points().stream()
                .map(point -> Scalars.number(point.value()))
                .collect(Collectors.joining(", "));
        String hours = trend.points().stream()
                .map(point -> Scalars.number(point.hours()))
                .collect(Collectors.joining(", "));
        String amps =
                trend.amps().isPresent() ? " at " + Scalars.number(trend.amps().getAsDouble()) + " A" : "";
        return values + " " + trend.quantity() + amps + ohms(trend) + " at " + hours + " flight hours";
    }

    private static String ohms(Trend trend) {
        OptionalDouble first = trend.milliohm(trend.points().get(0));
        OptionalDouble last = trend.milliohm(trend.last());
        boolean drop = trend.quantity().strip().equalsIgnoreCase("mV");
        return drop && first.isPresent() && last.isPresent()
                ? String.format(Locale.ROOT, " (%.1f -> %.1f milliohm)", first.getAsDouble(), last.getAsDouble())
                : "";
    }

    /** The limit and when it is met. */
    static String limit(Trend trend) {
        String limit = (trend.upper() ? "limit " : "least ") + Scalars.number(trend.limit()) + " " + trend.quantity();
        String over = trend.overSince().isPresent()
                ? "; outside since the reading at "
                        + Scalars.number(trend.overSince().getAsDouble()) + " h" + crossed(trend)
                : "";
        return limit + over + crossing(trend);
    }

    private static String crossed(Trend trend) {
        return trend.crossed().isPresent()
                ? String.format(
                        Locale.ROOT,
                        ", between the readings at about %.0f h",
                        trend.crossed().getAsDouble())
                : "";
    }

    private static String crossing(Trend trend) {
        if (trend.crossing().isEmpty()) {
            return "; does not run towards it";
        }
        String at = String.format(
                Locale.ROOT,
                "; the line of least squares meets it at %.0f h",
                trend.crossing().getAsDouble());
        return at + error(trend);
    }

    private static String error(Trend trend) {
        if (trend.error().isEmpty() || trend.scatter().isEmpty()) {
            return ", from two readings: how sure cannot be told";
        }
        String sure = String.format(
                Locale.ROOT,
                " +/- %.0f h (%d readings, scatter %.1f %s about the line)",
                trend.error().getAsDouble(),
                trend.points().size(),
                trend.scatter().getAsDouble(),
                trend.quantity());
        return trend.bends() ? sure + "; the last step is far steeper than the line: go by the reading" : sure;
    }
}
