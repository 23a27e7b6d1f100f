package ringout.trace.campaign;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import ringout.graph.Circuit;
import ringout.graph.SmallAircraft;
import ringout.model.Aircraft;
import ringout.trace.candidate.Candidate;
import ringout.trace.choice.Adviser;
import ringout.trace.diagnosis.Belief;
import ringout.trace.diagnosis.Problem;
import ringout.trace.field.FieldProblem;
import ringout.trace.predict.FaultDictionary;

/**
 * Hidden single faults on one sample. The fleet has other priors than the list says (each times a third to three), every aircraft other
 * resistances (a fifth), the technician misreads 3 to 5 % of all tests, and one fault in twenty is not in the list: neither it nor anything its
 * repair would cure. Latent faults give no call-out and are left out.
 */
public final class Campaign {
    private static final double NOT_LISTED = 0.05;
    /** Aircraft of one fleet: each stands for this many faults in turn. */
    private static final int FAULTS_AN_AIRCRAFT = 25;

    private final Aircraft aircraft;
    private final FieldProblem field;
    private final FaultDictionary dictionary;

    private Campaign(String sample) {
        this.aircraft = SmallAircraft.sample(sample);
        Circuit circuit = SmallAircraft.circuit(aircraft);
        this.field = FieldProblem.of(circuit);
        this.dictionary = FaultDictionary.of(circuit);
    }

    /** Gets a sample ready. */
    public static Campaign on(String sample) {
        return new Campaign(sample);
    }

    /** The list as the technician has it. */
    FieldProblem field() {
        return field;
    }

    /** The dictionary of the aircraft as listed. */
    public FaultDictionary dictionary() {
        return dictionary;
    }

    /** Hides so many faults one after the other and lets each be searched. */
    public Tally run(int count, long seed) {
        Tally tally = new Tally();
        Random random = new Random(seed);
        List<TrueAircraft> fleet = new ArrayList<>();
        double[] factor = Priors.factors(field.candidates().size(), random);
        for (int k = 0; k < count; k++) {
            if (k % FAULTS_AN_AIRCRAFT == 0) {
                fleet.add(TrueAircraft.of(aircraft, random));
                factor = Priors.factors(field.candidates().size(), random);
            }
            TrueAircraft one = fleet.get(fleet.size() - 1);
            Random own = new Random(random.nextLong());
            Run run = search(one, factor, own);
            tally.add(run, run.listed() && sameUnderOtherPriors(run, own));
        }
        return tally;
    }

    private Run search(TrueAircraft one, double[] factor, Random random) {
        while (true) {
            int suspect = drawn(factor, random);
            Optional<Candidate> fault =
                    one.fault(field.candidates().get(suspect).id(), random);
            if (fault.isPresent() && !one.signature(fault.get()).latent()) {
                boolean listed = random.nextDouble() >= NOT_LISTED;
                Problem problem = listed ? field.problem() : without(suspect);
                return new Technician(field, Adviser.of(problem), one, fault.get(), suspect, listed, random).search();
            }
        }
    }

    /** The list without a fault and all that is cured with it. */
    private Problem without(int suspect) {
        Problem all = field.problem();
        String repair = all.suspects().get(suspect).repair();
        return Priors.times(all, s -> all.isCuredBy(s, repair) ? 0 : 1);
    }

    private int drawn(double[] factor, Random random) {
        double sum = 0;
        for (int s = 0; s < factor.length; s++) {
            sum += weight(s, factor);
        }
        double at = random.nextDouble() * sum;
        int last = 0;
        for (int s = 0; s < factor.length; s++) {
            if (weight(s, factor) > 0) {
                last = s;
                at -= weight(s, factor);
                if (at < 0) {
                    return s;
                }
            }
        }
        return last;
    }

    private double weight(int suspect, double[] factor) {
        Candidate one = field.candidates().get(suspect);
        boolean latent = dictionary.entries().get(one).latent();
        return latent ? 0 : one.weight() * factor[suspect];
    }

    /** Whether the first repair action at the stop stays the first with other priors. */
    private boolean sameUnderOtherPriors(Run run, Random random) {
        double[] factor = Priors.factors(field.candidates().size(), random);
        Problem other = Priors.times(field.problem(), s -> factor[s]);
        return first(field.problem(), run).equals(first(other, run));
    }

    private static String first(Problem problem, Run run) {
        return Belief.of(problem, run.seen()).repairs().get(0).action().name();
    }
}
