package ringout.check;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import ringout.check.form.AfterWaivers;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gathering;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Sound;
import ringout.check.form.Trying;
import ringout.check.form.Weighing;
import ringout.check.open.OpenData;
import ringout.finding.CannotTell;
import ringout.finding.Finding;
import ringout.finding.Fingerprint;
import ringout.finding.Headline;
import ringout.finding.Headlines;
import ringout.finding.NextData;
import ringout.finding.NextDatum;
import ringout.finding.Report;
import ringout.finding.Severity;
import ringout.finding.Trial;
import ringout.finding.Waivers;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.model.Aircraft;
import ringout.model.State;

/** Runs checks over every declared state of an aircraft and folds what they say. */
public final class Review {
    /** No day given: no waiver ends by its date. */
    public static final String NO_DAY = "";

    private final Map<String, Finding> findings = new LinkedHashMap<>();
    private final Map<String, CannotTell> cannotTell = new LinkedHashMap<>();
    private final Set<String> ran = new TreeSet<>();
    private final Set<String> looked = new TreeSet<>();
    private final List<Trial> trials = new ArrayList<>();

    private Review() {}

    /** Reviews an aircraft with the whole catalogue in every declared state, waivers held against no day. */
    public static Report of(Aircraft aircraft) {
        return of(aircraft, NO_DAY);
    }

    /**
     * Reviews an aircraft with the whole catalogue in every declared state.
     *
     * @param today day the waivers are held against, YYYY-MM-DD, or {@link #NO_DAY}
     */
    public static Report of(Aircraft aircraft, String today) {
        return of(Circuit.all(Wiring.of(aircraft)), Catalogue.all(), today);
    }

    /**
     * Reviews circuits, one a state, with the given checks.
     *
     * @param today day the waivers are held against, YYYY-MM-DD, or {@link #NO_DAY}
     */
    public static Report of(List<Circuit> circuits, List<Check> checks, String today) {
        List<Situation> situations = circuits.stream().map(Situation::new).toList();
        Review review = new Review();
        checks.forEach(check -> review.run(check, situations));
        List<Finding> raw = List.copyOf(review.findings.values());
        review.doubt(checks, circuits);
        review.bound(checks, circuits);
        review.tryOut(checks, situations, raw);
        review.gather(checks, situations);
        Aircraft aircraft = circuits.get(0).wiring().aircraft();
        Fingerprint prints = new Fingerprint(aircraft);
        List<Headline> headlines = Headlines.of(List.copyOf(review.findings.values())).stream()
                .map(headline -> headline.taken(prints.of(headline.finding())))
                .toList();
        Waivers waivers = new Waivers(headlines, aircraft, today);
        List<Headline> open = review.lapse(checks, aircraft, waivers, situations);
        return new Report(
                circuits.stream().map(circuit -> circuit.state().name()).toList(),
                open,
                List.copyOf(review.cannotTell.values()),
                next(List.copyOf(review.cannotTell.values()), checks),
                waivers.waived(),
                waivers.lapsed(),
                review.count(true),
                review.count(false),
                List.copyOf(review.trials));
    }

    /** Takes back what rests on a contact of which nobody said what it is, and asks for it instead. */
    private void doubt(List<Check> checks, List<Circuit> circuits) {
        if (findings.isEmpty()) {
            return;
        }
        Suppositions suppositions = Suppositions.of(circuits.get(0));
        Doubts doubts = new Doubts(findings);
        for (List<Circuit> supposed : suppositions.circuits(circuits)) {
            Review other = new Review();
            List<Situation> situations = supposed.stream().map(Situation::new).toList();
            checks.stream().filter(doubts::touches).forEach(check -> other.run(check, situations));
            doubts.suppose(other.findings);
        }
        doubts.withdrawn().forEach(finding -> {
            findings.remove(finding.id());
            add(suppositions.ask(finding));
        });
        doubts.instead().forEach(this::add);
    }

    /** Takes back what hangs on a figure nobody gave, and asks for the figure instead. */
    private void bound(List<Check> checks, List<Circuit> circuits) {
        List<Check> weighing =
                checks.stream().filter(Weighing.class::isInstance).toList();
        OpenData open = weighing.isEmpty() ? OpenData.NONE : OpenData.of(circuits);
        if (open.all().isEmpty()) {
            return;
        }
        Map<String, String> names = new TreeMap<>();
        weighing.forEach(check -> names.put(info(check).code(), info(check).name()));
        List<State> states = circuits.stream().map(Circuit::state).toList();
        Bounds bounds = new Bounds(open, said(names.keySet()), aircraft -> {
            Wiring wiring = Wiring.of(aircraft);
            List<Situation> situations = states.stream()
                    .map(state -> new Situation(Circuit.of(wiring, state)))
                    .toList();
            Review other = new Review();
            weighing.forEach(check -> other.run(check, situations));
            return other.said(names.keySet());
        });
        findings.keySet().removeAll(bounds.withdrawn());
        bounds.asked(names, states.stream().map(State::name).toList()).forEach(this::fold);
    }

    /** What checks of some codes say; who asks for something has looked at it. */
    private Bounds.Said said(Set<String> codes) {
        Map<String, Finding> found = new LinkedHashMap<>();
        findings.forEach((id, finding) -> {
            if (codes.contains(finding.code())) {
                found.put(id, finding);
            }
        });
        Set<String> saw = new TreeSet<>(looked);
        cannotTell.values().forEach(open -> saw.add(open.code()));
        return new Bounds.Said(found, saw);
    }

    /** Adds a question, in one line with what the check asks of the same kind already. */
    private void fold(Bounds.Question question) {
        String datum = question.datum() + " of ";
        CannotTell open = question.open();
        CannotTell folded = open;
        for (CannotTell before : List.copyOf(cannotTell.values())) {
            if (before.code().equals(open.code()) && before.missing().startsWith(datum)) {
                cannotTell.values().remove(before);
                folded = together(datum, before, folded);
            }
        }
        add(folded);
    }

    private static CannotTell together(String datum, CannotTell one, CannotTell other) {
        Set<String> of = new TreeSet<>(one.objects());
        of.addAll(other.objects());
        int each = one.minutes() / Math.max(1, one.objects().size());
        return new CannotTell(
                one.code(),
                one.name(),
                List.copyOf(of),
                datum + String.join(", ", of),
                one.how(),
                each * of.size(),
                joined(one.states(), other.states()));
    }

    /** Checks that try changes come after those that look at the list, whatever was taken back of what those said. */
    private void tryOut(List<Check> checks, List<Situation> situations, List<Finding> raw) {
        Sweep.outcomes(checks, situations, raw).forEach((check, out) -> {
            note(check, out.hasLooked());
            out.findings().forEach(this::add);
            out.cannotTell().forEach(this::add);
            trials.addAll(out.trials());
        });
    }

    /** Checks that look at what the others could not decide come after them, once for all states. */
    private void gather(List<Check> checks, List<Situation> situations) {
        List<String> grave = checks.stream()
                .map(Review::info)
                .filter(info -> info.severity().atLeast(Severity.S2))
                .map(CheckInfo::code)
                .toList();
        List<String> states = situations.stream().map(Situation::state).toList();
        for (Check check : checks) {
            if (check instanceof Gathering gathering) {
                Outcomes out = new Outcomes(check.getClass(), states.get(0));
                List<CannotTell> open = cannotTell.values().stream()
                        .filter(one -> grave.contains(one.code()))
                        .toList();
                gathering.gather(open, out);
                out.cannotTell().forEach(one -> add(one.in(states)));
                note(check, out.hasLooked());
            }
        }
    }

    /** Lines of checks that only gather what others lack are no verdicts of their own. */
    private static List<NextDatum> next(List<CannotTell> open, List<Check> checks) {
        if (open.isEmpty()) {
            return List.of();
        }
        Map<String, Severity> severities = new HashMap<>();
        for (Check check : checks) {
            if (!(check instanceof Gathering)) {
                CheckInfo info = check.getClass().getAnnotation(CheckInfo.class);
                severities.put(info.code(), info.severity());
            }
        }
        return NextData.of(
                open.stream().filter(one -> severities.containsKey(one.code())).toList(),
                code -> severities.getOrDefault(code, Severity.S5));
    }

    /** Checks that look at the waivers come last, once for all states; what they say is folded under what was waived. */
    private List<Headline> lapse(List<Check> checks, Aircraft aircraft, Waivers waivers, List<Situation> situations) {
        List<Headline> open = waivers.open();
        for (Check check : checks) {
            if (check instanceof AfterWaivers after) {
                Outcomes out = new Outcomes(check.getClass(), situations.get(0).state());
                after.waived(aircraft.waivers(), waivers.lapsed(), open, out);
                open = open.stream()
                        .map(headline -> under(headline, out.findings()))
                        .toList();
                out.findings().forEach(this::add);
                note(check, out.hasLooked());
            }
        }
        return open;
    }

    private static Headline under(Headline headline, List<Finding> findings) {
        List<Finding> also = new ArrayList<>(headline.alsoExplains());
        findings.stream()
                .filter(finding -> finding.objects().contains(headline.finding().id()))
                .forEach(also::add);
        return new Headline(headline.finding(), List.copyOf(also), headline.fingerprint());
    }

    private void run(Check check, List<Situation> situations) {
        if (check instanceof Gathering || check instanceof AfterWaivers || check instanceof Trying) {
            return;
        }
        for (Situation situation : situations) {
            Outcomes out = new Outcomes(check.getClass(), situation.state());
            check.look(situation, out);
            note(check, out.hasLooked());
            out.findings().forEach(finding -> add(check instanceof Sound ? consequence(finding) : finding));
            out.cannotTell().forEach(this::add);
        }
    }

    /**
     * A finding that presumes a sound supply, tied to the one that explains why the supply is not. What is left of it is a
     * headline once that one is cleared, and nothing may be powered before.
     */
    private Finding consequence(Finding finding) {
        return findings.values().stream()
                .filter(cause -> cause.explains().contains(Sound.SUPPLY)
                        && cause.explains().contains(finding.code()))
                .filter(cause -> cause.states().stream().anyMatch(finding.states()::contains))
                .min(Comparator.comparing((Finding cause) -> Collections.disjoint(cause.causes(), finding.causes()))
                        .thenComparing(Finding::code)
                        .thenComparing(Finding::id))
                .map(cause -> finding.causedBy(new TreeSet<>(cause.causes()).first()))
                .orElse(finding);
    }

    private void note(Check check, boolean saw) {
        String code = info(check).code();
        ran.add(code);
        if (saw) {
            looked.add(code);
        }
    }

    private static CheckInfo info(Check check) {
        return check.getClass().getAnnotation(CheckInfo.class);
    }

    /** How many checks have nothing to say, of those that had something to look at, or of those that had not. */
    private int count(boolean saw) {
        Set<String> said = new TreeSet<>();
        findings.values().forEach(finding -> said.add(finding.code()));
        cannotTell.values().forEach(open -> said.add(open.code()));
        return (int) ran.stream()
                .filter(code -> looked.contains(code) == saw && !said.contains(code))
                .count();
    }

    private void add(Finding finding) {
        findings.merge(finding.id(), finding, Review::together);
    }

    private static Finding together(Finding first, Finding again) {
        Finding worse = again.severity().compareTo(first.severity()) < 0 ? again : first;
        return new Finding(
                worse.id(),
                worse.code(),
                worse.name(),
                worse.severity(),
                worse.title(),
                worse.objects(),
                joined(first.states(), again.states()),
                worse.at(),
                worse.evidence(),
                worse.why(),
                worse.meter(),
                worse.fix(),
                worse.sketches(),
                worse.causes(),
                worse.explains());
    }

    private void add(CannotTell open) {
        String key = open.code() + ":" + open.objects() + ":" + open.missing();
        cannotTell.merge(key, open, (first, again) -> first.in(joined(first.states(), again.states())));
    }

    private static List<String> joined(List<String> first, List<String> again) {
        List<String> all = new ArrayList<>(first);
        again.stream().filter(state -> !all.contains(state)).forEach(all::add);
        return List.copyOf(all);
    }
}
