package ringout.check.installation;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ringout.check.form.Assumed;
import ringout.check.form.Figures;
import ringout.check.form.Situation;
import ringout.check.form.Threshold;
import ringout.check.form.Thresholds;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.model.Datum;
import ringout.model.Origin;
import ringout.model.Unit;
import ringout.solve.field.Field;
import ringout.solve.field.HeadingError;

/** Adds up what all pairs near one compass do to it, and words it. */
final class CompassDraft {
    private final Situation at;
    private final Unit compass;
    private final List<ChangingPair> pairs;
    private final Threshold note;
    private final Threshold warn;
    private final Threshold field;

    CompassDraft(Situation at, Unit compass, List<ChangingPair> pairs) {
        this.at = at;
        this.compass = compass;
        this.pairs = pairs;
        this.note = at.limit(Thresholds.COMPASS_NOTE);
        this.warn = at.limit(Thresholds.COMPASS_WARN);
        this.field = at.limit(Thresholds.COMPASS_FIELD);
    }

    /** The most the level field changes, microtesla: fields that are known add up with their direction, bounds without. */
    double level() {
        Field known = pairs.stream().flatMap(pair -> pair.exact().stream()).reduce(Field.NONE, Field::plus);
        return known.horizontal()
                + pairs.stream()
                        .filter(pair -> pair.exact().isEmpty())
                        .mapToDouble(ChangingPair::boundUt)
                        .sum();
    }

    Draft draft() {
        double level = level();
        Threshold limit = level > field.value() ? field : level > warn.value() ? warn : note;
        String names = pairs.stream().map(pair -> pair.loop().name()).collect(Collectors.joining(", "));
        Draft draft = Draft.of(
                        severity(level),
                        "compass near changing current: " + compass.ref() + " sees up to " + Figures.of(level)
                                + " uT of " + names + heading(level))
                .about(compass.ref())
                .about(pairs.stream().map(pair -> pair.loop().name()).toList())
                .at(compass, "position")
                .sum(pairs.stream().map(ChangingPair::words).collect(Collectors.joining("; ")) + throttle(level))
                .judged(level, limit.value(), "uT", limit.source())
                .onAssumption(pairs.stream().anyMatch(pair -> turns(pair, level)))
                .why("the heading error grows with throttle: the aircraft circles, and may fly away in a climb")
                .meter("compass readings at idle and at full throttle on the stand, tied down: the level part must not"
                        + " change by more than " + Figures.of(warn.value()) + " uT")
                .fix(fix(level));
        pairs.forEach(pair -> {
            pair.leads().forEach(draft::seen);
            draft.input(pair.amps()).input(pair.spacing()).input(pair.distance());
        });
        return draft;
    }

    private Severity severity(double level) {
        return level > field.value() ? Severity.S2 : level > warn.value() ? Severity.S3 : Severity.S5;
    }

    /** Whether the severity moves when what is assumed of a pair moves by 20 %. */
    private boolean turns(ChangingPair pair, double level) {
        Datum<Double> twist = pair.twisted() ? new Datum.Known<>(pair.boundUt(), Origin.ASSUMED, "") : Datum.notAsked();
        double rest = level - pair.boundUt();
        return Stream.of(note, warn, field)
                .mapToDouble(Threshold::value)
                .anyMatch(limit -> Stream.of(twist, pair.amps(), pair.spacing())
                                .anyMatch(input ->
                                        Assumed.turns(input, factor -> rest + (pair.boundUt() * factor) - limit))
                        || Assumed.turns(
                                pair.distance(), factor -> rest + (pair.boundUt() / (factor * factor)) - limit));
    }

    private String heading(double level) {
        return at.aircraft()
                .airframe()
                .earthFieldUt()
                .known()
                .map(earth -> ", heading off by up to " + degrees(level, earth))
                .orElse("");
    }

    private String throttle(double level) {
        return at.aircraft()
                .airframe()
                .earthFieldUt()
                .known()
                .map(earth -> String.format(
                        Locale.ROOT,
                        "; heading off by asin of it over %s uT: up to %s at a quarter of the change, %s at half, %s at full",
                        Figures.of(earth),
                        degrees(level / 4, earth),
                        degrees(level / 2, earth),
                        degrees(level, earth)))
                .orElse("; level field of the Earth here not given, so no degrees");
    }

    private static String degrees(double level, double earth) {
        return Math.round(HeadingError.degrees(level, earth)) + " deg";
    }

    /** What clears it: the pair closer together, the compass further away, or some of both. */
    private String fix(double level) {
        if (level <= warn.value()) {
            return "keep it so: the pair close together and the compass high are what holds the heading";
        }
        ChangingPair worst = pairs.stream()
                .max((a, b) -> Double.compare(a.boundUt(), b.boundUt()))
                .orElseThrow();
        String leads = worst.leads().isEmpty()
                ? worst.loop().name()
                : worst.leads().stream().map(lead -> lead.id()).collect(Collectors.joining(", "));
        if (worst.exact().isPresent()) {
            return "lay or twist " + leads + " together all the way, or raise " + compass.ref();
        }
        double less = warn.value() / level;
        double spacing = worst.spacing().or(0.0);
        double away = worst.distance().or(0.0);
        return String.format(
                Locale.ROOT,
                "lay %s no more than %s mm apart, or raise %s to %s mm above them, or do both: %s mm and %s mm",
                leads,
                Figures.of(Math.floor(spacing * less * 10) / 10),
                compass.ref(),
                Figures.of(Math.ceil(away / Math.sqrt(less))),
                Figures.of(Math.floor(spacing * Math.sqrt(less) * 10) / 10),
                Figures.of(Math.ceil(away / Math.sqrt(Math.sqrt(less)))));
    }
}
