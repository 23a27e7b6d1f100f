package ringout.trace.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import ringout.trace.candidate.Candidate;
import ringout.trace.choice.Advice;
import ringout.trace.diagnosis.Belief;
import ringout.trace.diagnosis.Problem;
import ringout.trace.diagnosis.RepairShare;
import ringout.trace.predict.Prediction;
import ringout.trace.predict.Signature;
import ringout.trace.predict.TestCard;

/** Puts advice in the objects of the aircraft. */
final class Steps {
    /** Outcomes less likely than this are not told. */
    private static final double RARE = 0.02;

    /** Faults below this share are not named for an outcome. */
    private static final double NAMED = 0.0002;

    /** The part of a repair's share that a fault must have for its way of repair to be named. */
    private static final double MATTERS = 0.15;

    private static final int MOST_LOOKS = 3;

    private final Diagnosis search;
    private final Belief belief;

    Steps(Diagnosis search) {
        this.search = search;
        this.belief = search.belief();
    }

    NextStep of(Advice advice) {
        if (advice instanceof Advice.Ask ask) {
            return test(ask);
        }
        if (advice instanceof Advice.Repair repair) {
            Optional<TestCard> again = repair.repeatFirst().isPresent()
                    ? Optional.of(search.tests().get(repair.repeatFirst().getAsInt()))
                    : Optional.empty();
            return new NextStep.Do(job(repair.right()), repair.minutes(), repair.why() == Advice.Why.COVERS, again);
        }
        if (advice instanceof Advice.GoIn in) {
            return new NextStep.GoIn(in.openings(), in.minutes(), jobs(in.bring()), looks(in.openings()));
        }
        if (advice instanceof Advice.NothingSeparates same) {
            return new NextStep.InTurn(jobs(same.inTurn()));
        }
        Advice.NothingFits none = (Advice.NothingFits) advice;
        return new NextStep.NothingFits(
                none.unknown(),
                none.nearest().stream().map(one -> ranked(one.suspect())).toList());
    }

    private NextStep test(Advice.Ask ask) {
        TestCard card = search.tests().get(ask.question());
        List<NextStep.Branch> branches = new ArrayList<>();
        for (Advice.Branch branch : ask.branches()) {
            if (branch.chance() >= RARE) {
                branches.add(new NextStep.Branch(
                        card.outcomes().get(branch.outcome()),
                        branch.chance(),
                        shown(ask.question(), branch.outcome()),
                        job(branch.leading()),
                        branch.leading().share()));
            }
        }
        branches.sort(Comparator.comparingDouble((NextStep.Branch one) -> -one.chance()));
        return new NextStep.Test(
                card,
                ask.minutes(),
                ask.bits(),
                ask.toTheEnd().filter(minutes -> !minutes.isNaN()),
                ask.again(),
                search.sound(ask.question()).shows(),
                branches);
    }

    private List<NextStep.Shown> shown(int question, int outcome) {
        String wanted = search.tests().get(question).outcomes().get(outcome);
        List<NextStep.Shown> found = new ArrayList<>();
        for (int s : belief.ranked()) {
            if (s < search.suspects().size() && belief.share(s) >= NAMED) {
                Prediction shows = search.shows(question, s);
                if (shows.likeliest().equals(wanted)) {
                    found.add(new NextStep.Shown(search.problem().nameOf(s), shows.shows()));
                }
            }
        }
        return found;
    }

    /** Tests behind some lids that tell most a minute once these are off. */
    private List<TestCard> looks(List<String> lids) {
        Diagnosis inside = search.open(lids);
        return inside.ranking().stream()
                .map(option -> inside.tests().get(option.question()))
                .filter(card -> lids.containsAll(card.opening().covers())
                        && !card.opening().free())
                .limit(MOST_LOOKS)
                .toList();
    }

    private List<NextStep.Job> jobs(List<RepairShare> shares) {
        return shares.stream().map(this::job).toList();
    }

    NextStep.Job job(RepairShare one) {
        return new NextStep.Job(
                one.action().name(),
                actions(one),
                one.action().minutes(),
                one.action().openings(),
                one.share());
    }

    /** What is done for the faults of a repair that matter, likeliest first. */
    private String actions(RepairShare one) {
        double now = one.action().suspects().stream().mapToDouble(belief::share).sum();
        return one.action().suspects().stream()
                .filter(s -> belief.share(s) >= MATTERS * now)
                .sorted(Comparator.comparingDouble((Integer s) -> -belief.share(s)))
                .map(s -> search.suspects().get(s).repair().action())
                .distinct()
                .collect(Collectors.joining("; or "));
    }

    /** The likeliest fault that a repair cures. */
    Candidate likeliest(RepairShare one) {
        int suspect = one.action().suspects().stream()
                .max(Comparator.comparingDouble(belief::share))
                .orElseThrow();
        return search.suspects().get(suspect);
    }

    Ranked ranked(int suspect) {
        Signature seen = ringout.trace.predict.Predictions.of(search.circuit())
                .signature(search.suspects().get(suspect));
        return new Ranked(
                search.suspects().get(suspect),
                belief.share(suspect),
                Names.without(seen.silent(), search.scene().silent(), search.alive()),
                Names.without(seen.erratic(), search.scene().silent(), search.alive()),
                search.explanation(suspect).unexplained().stream()
                        .map(misfit -> reading(misfit.reading().question()))
                        .toList());
    }

    /** The last reading of a question. */
    private TestReading reading(int question) {
        String id = search.tests().get(question).id();
        return search.readings().stream()
                .filter(one -> one.test().equals(id))
                .reduce((first, second) -> second)
                .orElseThrow();
    }

    /** Suspects by falling share, something not in the model left out, down to a share. */
    List<Ranked> ranking(double least) {
        Problem problem = search.problem();
        return belief.ranked().stream()
                .filter(s -> s < problem.suspects().size() && belief.share(s) >= least)
                .map(this::ranked)
                .toList();
    }
}
