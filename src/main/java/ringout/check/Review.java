package ringout.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringout.check.form.Check;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.CannotTell;
import ringout.finding.Finding;
import ringout.finding.Headlines;
import ringout.finding.Report;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.model.Aircraft;

/** Runs checks over every declared state of an aircraft and folds what they say. */
public final class Review {
    private final Map<String, Finding> findings = new LinkedHashMap<>();
    private final Map<String, CannotTell> cannotTell = new LinkedHashMap<>();
    private int passed;
    private int notApplicable;

    private Review() {}

    /** Reviews an aircraft with the whole catalogue in every declared state. */
    public static Report of(Aircraft aircraft) {
        Wiring wiring = Wiring.of(aircraft);
        return of(Circuit.all(wiring), Catalogue.all());
    }

    /** Reviews circuits, one a state, with the given checks. */
    public static Report of(List<Circuit> circuits, List<Check> checks) {
        List<Situation> situations = circuits.stream().map(Situation::new).toList();
        Review review = new Review();
        checks.forEach(check -> review.run(check, situations));
        return new Report(
                circuits.stream().map(circuit -> circuit.state().name()).toList(),
                Headlines.of(List.copyOf(review.findings.values())),
                List.copyOf(review.cannotTell.values()),
                List.of(),
                review.passed,
                review.notApplicable);
    }

    private void run(Check check, List<Situation> situations) {
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
                worse.causes(),
                worse.explains());
    }

    private void add(CannotTell open) {
        String key = open.code() + ":" + open.objects() + ":" + open.missing();
        cannotTell.merge(
                key,
                open,
                (first, again) -> new CannotTell(
                        first.code(),
                        first.name(),
                        first.objects(),
                        first.missing(),
                        first.how(),
                        first.minutes(),
                        joined(first.states(), again.states())));
    }

    private static List<String> joined(List<String> first, List<String> again) {
        List<String> all = new ArrayList<>(first);
        again.stream().filter(state -> !all.contains(state)).forEach(all::add);
        return List.copyOf(all);
    }
}
