package ringout.compare.fleet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import ringout.finding.Severity;
import ringout.graph.Directory;
import ringout.graph.Site;
import ringout.graph.Wiring;
import ringout.model.Aircraft;
import ringout.model.Datum;
import ringout.model.End;
import ringout.model.PinRole;
import ringout.model.Reading;

/** Finds the readings on record that were taken more than once and have a limit, and runs a line through each. */
public final class Trends {
    /** The last step so many times steeper than the line: the line no longer tells the truth. */
    private static final double BEND = 1.5;

    private final Wiring wiring;

    private Trends(Wiring wiring) {
        this.wiring = wiring;
    }

    /** The trends of an aircraft, what is over its limit first. */
    public static List<Trend> of(Wiring wiring) {
        return new Trends(wiring).all();
    }

    private List<Trend> all() {
        Map<String, List<Reading>> places = new LinkedHashMap<>();
        for (Reading reading : wiring.aircraft().record().readings()) {
            boolean dated = reading.value().isKnown() && reading.flightHours().isKnown();
            if (dated && reading.quantity().isKnown()) {
                String key = (reading.where().strip() + "\n"
                                + reading.quantity().or("") + "\n"
                                + reading.state().or("") + "\n" + reading.pulled())
                        .toLowerCase(Locale.ROOT);
                places.computeIfAbsent(key, any -> new ArrayList<>()).add(reading);
            }
        }
        List<Trend> trends = new ArrayList<>();
        places.values().forEach(readings -> trend(readings).ifPresent(trends::add));
        trends.sort(Comparator.comparing(Trend::severity));
        return trends;
    }

    private Optional<Trend> trend(List<Reading> readings) {
        List<Reading> sorted = new ArrayList<>(readings);
        sorted.sort(Comparator.comparingDouble(reading -> reading.flightHours().or(0.0)));
        List<Trend.Point> points = sorted.stream()
                .map(reading -> new Trend.Point(
                        reading.flightHours().or(0.0), reading.value().or(0.0)))
                .toList();
        boolean several =
                points.stream().mapToDouble(Trend.Point::hours).distinct().count() > 1;
        return several ? trend(sorted.get(sorted.size() - 1), points) : Optional.empty();
    }

    private Optional<Trend> trend(Reading latest, List<Trend.Point> points) {
        Line line = Line.of(points);
        boolean upper = latest.expectedHigh().isKnown()
                && (line.slope() >= 0 || !latest.expectedLow().isKnown());
        Datum<Double> bound = upper ? latest.expectedHigh() : latest.expectedLow();
        if (!bound.isKnown()) {
            return Optional.empty();
        }
        double limit = bound.or(0.0);
        boolean towards = upper ? line.slope() > 0 : line.slope() < 0;
        OptionalDouble crossing = towards ? line.reaches(limit) : OptionalDouble.empty();
        OptionalDouble error = crossing.isPresent() ? line.error(crossing.getAsDouble()) : OptionalDouble.empty();
        double last = points.get(points.size() - 1).value();
        boolean over = upper ? last > limit : last < limit;
        return Optional.of(new Trend(
                latest.at(),
                latest.where(),
                latest.quantity().or(""),
                points,
                limit,
                upper,
                line.slope(),
                line.scatter(),
                crossing,
                error,
                bends(points, line),
                latest.atA().known().map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                over ? gravity(latest.where()) : towards ? Severity.S4 : Severity.S5));
    }

    private static boolean bends(List<Trend.Point> points, Line line) {
        if (points.size() <= 2) {
            return false;
        }
        Trend.Point last = points.get(points.size() - 1);
        Trend.Point before = points.get(points.size() - 2);
        double hours = last.hours() - before.hours();
        double step = hours > 0 ? (last.value() - before.value()) / hours : 0;
        return step * line.slope() > 0 && Math.abs(step) > BEND * Math.abs(line.slope());
    }

    /** Over its limit at a pack or at a unit flight depends on: do not fly. */
    private Severity gravity(String where) {
        for (String word : where.strip().split("[\\s,;]+")) {
            Optional<Integer> unit = unit(word);
            if (unit.isPresent() && grave(unit.get())) {
                return Severity.S2;
            }
        }
        return Severity.S3;
    }

    private Optional<Integer> unit(String name) {
        String text = name.contains("@") ? name.substring(name.indexOf('@') + 1) : name;
        Directory directory = wiring.directory();
        Site site = directory.resolve(new End(text));
        if (site instanceof Site.OnPlug on) {
            return Optional.of(on.unit());
        }
        return site instanceof Site.OnPin on ? Optional.of(on.unit()) : directory.find(text);
    }

    private boolean grave(int unit) {
        Aircraft aircraft = wiring.aircraft();
        String name = wiring.directory().name(unit);
        boolean needed = aircraft.functions().stream()
                .filter(function -> function.flightCritical().is(true))
                .anyMatch(function -> function.chain().contains(name));
        return needed || pack(unit);
    }

    private boolean pack(int unit) {
        for (int pin = wiring.firstPin(unit); pin < wiring.endPin(unit); pin++) {
            if (wiring.is(pin, PinRole.PACK_PLUS) || wiring.is(pin, PinRole.PACK_MINUS)) {
                return true;
            }
        }
        return false;
    }
}
