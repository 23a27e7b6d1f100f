package ringout.trace.campaign;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import ringout.trace.candidate.Candidate;
import ringout.trace.choice.Advice;
import ringout.trace.choice.Adviser;
import ringout.trace.diagnosis.Belief;
import ringout.trace.diagnosis.Observed;
import ringout.trace.diagnosis.Problem;
import ringout.trace.diagnosis.Reading;
import ringout.trace.diagnosis.RepairAction;
import ringout.trace.diagnosis.RepairShare;
import ringout.trace.field.FieldProblem;
import ringout.trace.predict.FieldTest;
import ringout.trace.predict.TestCard;

/** Follows the advice to the letter on an aircraft with one hidden fault, and misreads now and then. */
final class Technician {
    /** Minutes of the first look: who is silent, who comes and goes, who is dark. Common practice, no source. */
    private static final double FIRST_LOOK = 2;

    /** Of what the modules show without a tool one in a hundred is written down wrong; supposed. */
    private static final double WRITTEN_WRONG = 0.01;

    private static final double MISREAD_LEAST = 0.03;
    private static final double MISREAD_MORE = 0.02;
    private static final int MOST_STEPS = 80;

    private final FieldProblem field;
    private final Adviser adviser;
    private final TrueAircraft aircraft;
    private final Candidate fault;
    private final int suspect;
    private final boolean listed;
    private final Random random;
    private final double misread;
    private final Map<Integer, Integer> shown = new HashMap<>();

    private Observed seen = Observed.NOTHING;
    private double minutes = FIRST_LOOK;
    private int readings;
    private int vain;
    private boolean tried;
    private boolean firstRight;
    private Optional<Run> stopped = Optional.empty();

    /**
     * A technician before a search.
     *
     * @param field the list as the technician has it
     * @param adviser made for the problem of the list, or of one from which suspects are missing
     * @param aircraft the aircraft as it is
     * @param fault what is wrong with it
     * @param suspect its number in the list
     * @param listed whether the adviser knows of it
     */
    Technician(
            FieldProblem field,
            Adviser adviser,
            TrueAircraft aircraft,
            Candidate fault,
            int suspect,
            boolean listed,
            Random random) {
        this.field = field;
        this.adviser = adviser;
        this.aircraft = aircraft;
        this.fault = fault;
        this.suspect = suspect;
        this.listed = listed;
        this.random = random;
        this.misread = MISREAD_LEAST + MISREAD_MORE * random.nextDouble();
    }

    private Problem problem() {
        return adviser.problem();
    }

    /** From the call-out to the cure, or to giving up. */
    Run search() {
        look();
        for (int step = 0; step < MOST_STEPS; step++) {
            Advice advice = adviser.next(seen);
            if (advice instanceof Advice.Ask ask) {
                minutes += ask.minutes();
                read(ask.question());
            } else if (advice instanceof Advice.GoIn in) {
                minutes += in.minutes();
                seen = seen.open(in.openings());
            } else if (advice instanceof Advice.NothingFits) {
                stop(Run.Stop.NOTHING_FITS, Optional.empty(), false);
                return end(false);
            } else if (repaired(advice)) {
                return end(true);
            }
        }
        stop(Run.Stop.ENDLESS, Optional.empty(), false);
        return end(false);
    }

    private Run end(boolean cured) {
        Run run = stopped.orElseThrow();
        return new Run(
                run.fault(),
                run.listed(),
                run.stop(),
                run.claimed(),
                run.right(),
                firstRight,
                run.rank(),
                run.repairRank(),
                minutes,
                run.toStop(),
                cured,
                vain,
                readings,
                run.seen());
    }

    /** Who answers and who is lit, of all. */
    private void look() {
        List<Reading> all = new ArrayList<>();
        for (int q = 0; q < field.cards().size(); q++) {
            TestCard card = field.cards().get(q);
            if (card.test() instanceof FieldTest.Answers || card.test() instanceof FieldTest.Light) {
                all.add(new Reading(q, reading(q, WRITTEN_WRONG)));
            }
        }
        seen = new Observed(all, seen.opened());
    }

    private void read(int question) {
        readings++;
        seen = seen.with(problem(), new Reading(question, reading(question, misread)));
    }

    private int reading(int question, double error) {
        TestCard card = field.cards().get(question);
        int right = shown.computeIfAbsent(question, q -> aircraft.shown(fault, card, random));
        if (random.nextDouble() >= error) {
            return right;
        }
        int other = random.nextInt(card.outcomes().size() - 1);
        return other < right ? other : other + 1;
    }

    /** Does what is advised, with a second reading before it where the advice asks for one; whether it cured. */
    private boolean repaired(Advice advice) {
        if (advice instanceof Advice.Repair repair) {
            if (repair.repeatFirst().isPresent()) {
                int again = repair.repeatFirst().getAsInt();
                minutes += problem().questions().get(again).minutes();
                read(again);
                return false;
            }
            boolean covers = repair.why() == Advice.Why.COVERS;
            return done(repair.right(), repair.minutes(), covers ? Run.Stop.COVERS : Run.Stop.TRIED);
        }
        RepairShare first = ((Advice.NothingSeparates) advice).inTurn().get(0);
        RepairAction action = first.action();
        double opening = problem().minutesToOpen(action.openings(), seen.opened());
        return done(first, action.minutes() + opening, Run.Stop.IN_TURN);
    }

    private boolean done(RepairShare advised, double takes, Run.Stop why) {
        boolean cures = problem().isCuredBy(suspect, advised.action().name());
        firstRight = tried ? firstRight : cures;
        tried = true;
        if (why != Run.Stop.TRIED || cures) {
            stop(why, Optional.of(advised), cures);
        }
        minutes += takes;
        if (!cures) {
            vain++;
            seen = seen.inVain(advised.action());
        }
        return cures;
    }

    private void stop(Run.Stop why, Optional<RepairShare> advised, boolean right) {
        if (stopped.isPresent()) {
            return;
        }
        Belief belief = Belief.of(problem(), seen);
        int rank = belief.ranked().indexOf(suspect) + 1;
        List<String> actions =
                belief.repairs().stream().map(one -> one.action().name()).toList();
        String mine = problem().suspects().get(suspect).repair();
        stopped = Optional.of(new Run(
                fault.title(),
                listed,
                why,
                advised.map(RepairShare::share).orElse(0.0),
                right,
                firstRight,
                listed ? rank : 0,
                listed ? actions.indexOf(mine) + 1 : 0,
                minutes,
                minutes,
                false,
                vain,
                readings,
                seen));
    }
}
