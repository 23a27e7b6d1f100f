package ringout.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import ringout.graph.Trail;
import ringout.model.Datum;
import ringout.model.Lead;
import ringout.model.Origin;
import ringout.model.Unit;

/** Collects the parts of a finding while a check writes it. */
public final class Draft {
    private final String title;
    private final List<String> objects = new ArrayList<>();
    private final List<Place> at = new ArrayList<>();
    private final Set<String> causes = new TreeSet<>();
    private final Set<String> explains = new TreeSet<>();
    private final List<Sketch> sketches = new ArrayList<>();
    private Severity severity;
    private Trail path = Trail.NONE;
    private String sum = "";
    private OptionalDouble value = OptionalDouble.empty();
    private OptionalDouble limit = OptionalDouble.empty();
    private String unit = "";
    private String source = "common practice, no source";
    private Origin origin = Origin.LIST;
    private boolean onAssumption;
    private String why = "";
    private String meter = "";
    private String fix = "";

    private Draft(Severity severity, String title) {
        this.severity = severity;
        this.title = title;
    }

    /** Starts a finding: lower-case, no full stop, understandable alone. */
    public static Draft of(Severity severity, String title) {
        return new Draft(severity, title);
    }

    /** What it is about, as the user names them; part of the identity. */
    public Draft about(String... names) {
        objects.addAll(List.of(names));
        return this;
    }

    /** What it is about, as the user names them; part of the identity. */
    public Draft about(List<String> names) {
        objects.addAll(names);
        return this;
    }

    /** A row it points to, which is also what is at fault. */
    public Draft at(Lead lead) {
        causes.add(lead.id());
        return seen(lead);
    }

    /** A row it points to that is not itself at fault. */
    public Draft seen(Lead lead) {
        at.add(new Place(lead.at(), lead.id(), lead.id() + ": " + lead.from() + " to " + lead.to()));
        return this;
    }

    /** A unit it points to, and which of its settings is at fault. */
    public Draft at(Unit unit, String setting) {
        causes.add(unit.ref() + "/" + setting);
        return seen(unit);
    }

    /** A unit it points to that is not itself at fault. */
    public Draft seen(Unit unit) {
        at.add(new Place(unit.at(), unit.ref(), unit.ref() + ": " + unit.what().or(unit.type())));
        return this;
    }

    /** Any other place. */
    public Draft at(Place place) {
        at.add(place);
        return this;
    }

    /** Something at fault, to fold findings of one mistake: a row, UNIT/setting, "bus NAME". */
    public Draft cause(String token) {
        causes.add(token);
        return this;
    }

    /** Codes of checks whose findings with a common cause this one explains. */
    public Draft explains(String... codes) {
        explains.addAll(List.of(codes));
        return this;
    }

    /** The way through the user's rows. */
    public Draft path(Trail trail) {
        path = trail;
        return this;
    }

    /** The arithmetic in words. */
    public Draft sum(String words) {
        sum = words;
        return this;
    }

    /** The value judged, the limit and their unit, and where the limit comes from. */
    public Draft judged(double judged, double against, String inUnit, String limitSource) {
        value = OptionalDouble.of(judged);
        limit = OptionalDouble.of(against);
        unit = inUnit;
        source = limitSource;
        return this;
    }

    /** Where the rule comes from when there is no number in it. */
    public Draft source(String words) {
        source = words;
        return this;
    }

    /** An input the verdict rests on; the weakest origin is printed. */
    public Draft input(Datum<?> datum) {
        if (datum.isKnown() && datum.source().compareTo(origin) > 0) {
            origin = datum.source();
        }
        return this;
    }

    /** Says that the verdict turns when an assumed input moves by 20 %. */
    public Draft onAssumption(boolean turns) {
        onAssumption = turns;
        return this;
    }

    /** Why it matters. */
    public Draft why(String words) {
        why = words;
        return this;
    }

    /** What to measure to see it. */
    public Draft meter(String words) {
        meter = words;
        return this;
    }

    /** The smallest change that clears it. */
    public Draft fix(String words) {
        fix = words;
        return this;
    }

    /** What a drawing shows beside the badge: missing, extra or misplaced. */
    public Draft sketch(Sketch sketch) {
        sketches.add(sketch);
        return this;
    }

    /** Another severity than the one it was started with. */
    public Draft severity(Severity other) {
        severity = other;
        return this;
    }

    /** The finding, signed by its check, in one state. */
    public Finding sign(String code, String name, String state) {
        List<String> sorted = objects.stream().distinct().sorted().toList();
        String id =
                code + ":" + String.join("+", sorted).toLowerCase(Locale.ROOT).replace(' ', '_');
        Evidence evidence = new Evidence(path, sum, value, limit, unit, source, origin, onAssumption);
        Set<String> all = causes.isEmpty() ? new TreeSet<>(objects) : causes;
        return new Finding(
                id,
                code,
                name,
                severity,
                title,
                List.copyOf(objects),
                List.of(state),
                at.stream().distinct().toList(),
                evidence,
                why,
                meter,
                fix,
                List.copyOf(sketches),
                Set.copyOf(all),
                Set.copyOf(explains));
    }
}
