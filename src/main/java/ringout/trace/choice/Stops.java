package ringout.trace.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import ringout.trace.choice.Advice.GoIn;
import ringout.trace.choice.Advice.Repair;
import ringout.trace.choice.Advice.Why;
import ringout.trace.diagnosis.Belief;
import ringout.trace.diagnosis.Observed;
import ringout.trace.diagnosis.Problem;
import ringout.trace.diagnosis.Reading;
import ringout.trace.diagnosis.RepairAction;
import ringout.trace.diagnosis.RepairShare;

/**
 * The rules that end a search, or move it inside.
 *
 * @param rules the figures
 * @param belief what the readings leave
 * @param shares the repair actions, likeliest first
 * @param useful tests that tell something, best rate first
 */
record Stops(Rules rules, Belief belief, List<RepairShare> shares, List<Option> useful) {
    /** A repair of so many minutes deserves a second reading of what it hangs on: common practice, no source. */
    private static final double LONG_REPAIR = 20;

    /** A repair that covers the share, or that is likely and no dearer than the cheapest useful test. */
    Optional<Advice> repair() {
        RepairShare top = shares.get(0);
        double minutes = minutes(top.action());
        if (top.share() > rules.stopShare()) {
            return Optional.of(new Repair(top, minutes, Why.COVERS, decisive(top, minutes)));
        }
        boolean cheap = !useful.isEmpty() && useful.stream().allMatch(option -> option.minutes() >= minutes);
        if (top.share() > rules.likelyShare() && cheap) {
            return Optional.of(new Repair(top, minutes, Why.NO_DEARER_THAN_A_TEST, OptionalInt.empty()));
        }
        return Optional.empty();
    }

    /**
     * The opening shared by the repairs of all that is likely, when no outside test tells as much a minute as going in: by the best test that
     * needs it, or by doing the likeliest repair and seeing whether it cures, which is a test too.
     */
    Optional<Advice> goIn() {
        List<String> shared = shared();
        if (shared.isEmpty()) {
            return Optional.empty();
        }
        double outside = 0;
        double inside = 0;
        for (Option option : useful) {
            List<String> needs = problem().questions().get(option.question()).openings();
            if (problem().minutesToOpen(needs, opened()) == 0) {
                outside = Math.max(outside, option.rate());
            } else if (shared.containsAll(closed(needs))) {
                inside = Math.max(inside, option.rate());
            }
        }
        RepairShare first = shares.stream()
                .filter(one -> !closed(one.action().openings()).isEmpty())
                .findFirst()
                .orElse(shares.get(0));
        inside = Math.max(inside, trying(first));
        List<RepairShare> bring = shares.stream()
                .filter(one -> one.share() > 0 && one.action().openings().containsAll(shared))
                .toList();
        return outside < inside
                ? Optional.of(new GoIn(shared, problem().minutesToOpen(shared, opened()), bring))
                : Optional.empty();
    }

    /** Bits a minute of doing a repair and seeing whether it cures. */
    private double trying(RepairShare one) {
        double p = Math.min(1, one.share());
        double bits = -(plog(p) + plog(1 - p));
        return new Option(0, bits, minutes(one.action()), 0).rate();
    }

    private static double plog(double p) {
        return p > 0 ? p * Math.log(p) / Math.log(2) : 0;
    }

    /** Openings still closed that the repairs of more than the stopping share need, something not in the model left aside. */
    private List<String> shared() {
        List<String> shared = new ArrayList<>();
        double inModel = shares.stream().mapToDouble(RepairShare::share).sum();
        for (RepairShare any : shares) {
            for (String name : closed(any.action().openings())) {
                double share = shares.stream()
                        .filter(one -> one.action().openings().contains(name))
                        .mapToDouble(RepairShare::share)
                        .sum();
                if (share > rules.stopShare() * inModel && !shared.contains(name)) {
                    shared.add(name);
                }
            }
        }
        return shared;
    }

    private List<String> closed(List<String> names) {
        return names.stream().filter(name -> !opened().contains(name)).toList();
    }

    /** The question, read once, without which a long repair would not be advised, if reading it again takes less than half of it. */
    private OptionalInt decisive(RepairShare top, double minutes) {
        OptionalInt found = OptionalInt.empty();
        double least = rules.stopShare();
        if (minutes < LONG_REPAIR) {
            return found;
        }
        for (Reading reading : belief.observed().readings()) {
            int q = reading.question();
            boolean worth = belief.observed().outcomesOf(q).size() == 1
                    && problem().questions().get(q).minutes() < minutes / 2;
            double without = worth ? shareWithout(reading, top.action()) : 1;
            if (without < least) {
                least = without;
                found = OptionalInt.of(q);
            }
        }
        return found;
    }

    private double shareWithout(Reading reading, RepairAction action) {
        List<Reading> rest = belief.observed().readings().stream()
                .filter(one -> !one.equals(reading))
                .toList();
        return Belief.of(
                        problem(),
                        new Observed(rest, opened(), belief.observed().vain()))
                .repairs()
                .stream()
                .filter(one -> one.action().equals(action))
                .mapToDouble(RepairShare::share)
                .sum();
    }

    private double minutes(RepairAction action) {
        return action.minutes() + problem().minutesToOpen(action.openings(), opened());
    }

    private Problem problem() {
        return belief.problem();
    }

    private Set<String> opened() {
        return belief.observed().opened();
    }
}
