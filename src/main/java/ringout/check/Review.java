package ringout.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gathering;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.CannotTell;
import ringout.finding.Finding;
import ringout.finding.Fingerprint;
import ringout.finding.Headline;
import ringout.finding.Headlines;
import ringout.finding.Report;
import ringout.finding.Severity;
import ringout.finding.Waivers;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.model.Aircraft;

/** Runs checks over every declared state of an aircraft and folds what they say. */
public final class Review {
    /** No day given: no waiver ends by its date. */
    public static final String NO_DAY = "";

    private final Map<String, Finding> findings = new LinkedHashMap<>();
    private final Map<String, CannotTell> cannotTell = new LinkedHashMap<>();
    private int passed;
    private int notApplicable;

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
        review.doubt(checks, circuits);
        review.gather(checks, situations);
        Aircraft aircraft = circuits.get(0).wiring().aircraft();
        Fingerprint prints = new Fingerprint(aircraft);
        List<Headline> headlines = Headlines.of(List.copyOf(review.findings.values())).stream()
                .map(headline -> headline.taken(prints.of(headline.finding())))
                .toList();
        Waivers waivers = new Waivers(headlines, aircraft, today);
        return new Report(
                circuits.stream().map(circuit -> circuit.state().name()).toList(),
                waivers.open(),
                List.copyOf(review.cannotTell.values()),
                waivers.waived(),
                waivers.lapsed(),
                review.passed,
                review.notApplicable);
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

    /** Checks that look at what the others could not decide come after them, once for all states. */
    private void gather(List<Check> checks, List<Situation> situations) {
        List<String> grave = checks.stream()
                .map(check -> check.getClass().getAnnotation(CheckInfo.class))
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
                count(out.hasLooked(), out.cannotTell().isEmpty());
            }
        }
    }

    private void run(Check check, List<Situation> situations) {
        if (check instanceof Gathering) {
            return;
        }
        boolean looked = false;
        boolean clean = true;
        for (Situation situation : situations) {
            Outcomes out = new Outcomes(check.getClass(), situation.state());
            check.look(situation, out);
            looked |= out.hasLooked();
            clean &= out.findings().isEmpty() && out.cannotTell().isEmpty();
            out.findings().forEach(this::add);
            out.cannotTell().forEach(this::add);
        }
        count(looked, clean);
    }

    private void count(boolean looked, boolean clean) {
        if (clean) {
            passed += looked ? 1 : 0;
            notApplicable += looked ? 0 : 1;
        }
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
