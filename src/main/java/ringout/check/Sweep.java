package ringout.check;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Trials;
import ringout.check.form.Trying;
import ringout.finding.Finding;
import ringout.finding.Severity;
import ringout.model.Aircraft;
import ringout.model.State;
import ringout.model.edit.Edit;

/**
 * Tries changes one after the other, each on a copy of its own. The checks of the families T, A, P and S for what is S3 or worse look, in one state, the
 * gravest first; the rest of them is left out as soon as none can say anything worse. What the list is found to have anyway does
 * not count.
 */
final class Sweep implements Trials {
    private static final String FAMILIES = "TAPS";

    /** Conductors in all copies together: 400 copies of an aircraft of 150 conductors. */
    private static final int MOST = 60_000;

    private static final List<Known> ORDERED = Catalogue.all().stream()
            .map(check -> new Known(check, check.getClass().getAnnotation(CheckInfo.class)))
            .filter(known -> FAMILIES.indexOf(known.info().code().charAt(0)) >= 0)
            .filter(known -> known.info().severity().atLeast(Severity.S3))
            .sorted(Comparator.comparing(known -> known.info().severity()))
            .toList();

    /** A check and what identifies it, looked up once. */
    private record Known(Check check, CheckInfo info) {}

    private final Aircraft aircraft;
    private final Set<String> before;
    private final boolean spoilt;
    private final int conductors;
    private final State state;
    private int left = MOST;

    /**
     * Tries changes of an aircraft.
     *
     * @param at the aircraft as it is, in the state that counts
     * @param before what is found of it anyway
     */
    Sweep(Situation at, List<Finding> before) {
        this.aircraft = at.aircraft();
        this.conductors = at.wiring().wires().size();
        this.state = at.circuit().state();
        this.before = before.stream().map(Finding::id).collect(Collectors.toUnmodifiableSet());
        this.spoilt = before.stream().anyMatch(finding -> finding.severity() == Severity.S1);
    }

    /**
     * What the checks that try changes say, in the first state that is flown.
     *
     * @param checks all checks of the review
     * @param situations the aircraft in every state
     * @param raw what the others found, before anything was taken back
     */
    static Map<Check, Outcomes> outcomes(List<Check> checks, List<Situation> situations, List<Finding> raw) {
        Map<Check, Outcomes> said = new LinkedHashMap<>();
        if (checks.stream().noneMatch(Trying.class::isInstance)) {
            return said;
        }
        Situation at = situations.stream()
                .filter(situation -> !situation.bench())
                .findFirst()
                .orElse(situations.get(0));
        boolean all = checks.containsAll(Catalogue.looking());
        Sweep sweep = new Sweep(at, all ? raw : findings(at));
        for (Check check : checks) {
            if (check instanceof Trying trying) {
                Outcomes out = new Outcomes(check.getClass(), at.state());
                trying.tryOut(at, sweep, out);
                said.put(check, out);
            }
        }
        return said;
    }

    /** What its checks find of an aircraft as it is. */
    private static List<Finding> findings(Situation at) {
        return ORDERED.stream()
                .flatMap(known -> Rehearsal.findings(known.check(), at).stream())
                .toList();
    }

    @Override
    public boolean spoilt() {
        return spoilt;
    }

    @Override
    public Optional<Harm> of(List<Edit> edits, boolean currents) {
        left -= conductors;
        return left < 0 ? Optional.empty() : Rehearsal.of(aircraft, edits).map(copy -> harm(copy.in(state), currents));
    }

    private Harm harm(Situation copy, boolean currents) {
        Optional<Finding> worst = Optional.empty();
        for (Known known : ORDERED) {
            CheckInfo info = known.info();
            if (worst.isPresent() && worst.get().severity().atLeast(info.severity())) {
                break;
            }
            if (currents || !info.solves()) {
                for (Finding finding : Rehearsal.findings(known.check(), copy)) {
                    worst = before.contains(finding.id()) ? worst : Optional.of(worse(worst, finding));
                }
            }
        }
        return new Harm(worst);
    }

    private static Finding worse(Optional<Finding> worst, Finding finding) {
        return worst.filter(one -> one.severity().atLeast(finding.severity())).orElse(finding);
    }
}
