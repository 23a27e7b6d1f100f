package ringout.trace.session;

import java.util.List;
import java.util.Optional;
import ringout.trace.predict.TestCard;

/** What to do next, in the objects of the aircraft. */
public sealed interface NextStep {
    /**
     * Make a test.
     *
     * @param card what is done, its minutes, lids, traps and safety lines
     * @param minutes of it, with the lids that are still on and what must be proved again
     * @param bits what it is expected to tell of the repair action
     * @param toTheEnd expected minutes to the end of the search; empty where it was not reckoned
     * @param again whether it repeats a reading, to rule out a misreading
     * @param sound what it would show were nothing wrong
     * @param branches what each outcome would mean
     */
    record Test(
            TestCard card,
            double minutes,
            double bits,
            Optional<Double> toTheEnd,
            boolean again,
            String sound,
            List<Branch> branches)
            implements NextStep {
        /** Keeps its own copy. */
        public Test {
            branches = List.copyOf(branches);
        }
    }

    /**
     * What an outcome would mean.
     *
     * @param outcome one of the card
     * @param chance of it now
     * @param with faults that show it, likeliest first, with what they show
     * @param leading the repair that would then lead
     * @param share chance that it would then be the right one
     */
    record Branch(String outcome, double chance, List<Shown> with, Job leading, double share) {
        /** Keeps its own copy. */
        public Branch {
            with = List.copyOf(with);
        }
    }

    /**
     * What a test shows with a fault.
     *
     * @param fault title of the fault
     * @param value as computed: 118 ohm
     */
    record Shown(String fault, String value) {}

    /**
     * A repair action.
     *
     * @param id identity shared by all faults it cures
     * @param action what is done, as an order, for the likeliest of them
     * @param minutes hands-on
     * @param lids what must come off
     * @param share chance that it is the right one
     */
    record Job(String id, String action, double minutes, List<String> lids, double share) {
        /** Keeps its own copy. */
        public Job {
            lids = List.copyOf(lids);
        }
    }

    /**
     * Do a repair, then observe again.
     *
     * @param job the repair
     * @param minutes of it, with the lids that are still on
     * @param covers whether it covers the share that ends the search; else it is likely and no dearer than the cheapest useful test
     * @param repeatFirst a test on whose single reading the advice hangs
     */
    record Do(Job job, double minutes, boolean covers, Optional<TestCard> repeatFirst) implements NextStep {}

    /**
     * Further outside tests will not separate these: go in.
     *
     * @param lids what to open
     * @param minutes to open it
     * @param bring the repairs to be ready for, likeliest first
     * @param lookFirst tests that can be made once it is open, best first
     */
    record GoIn(List<String> lids, double minutes, List<Job> bring, List<TestCard> lookFirst) implements NextStep {
        /** Keeps its own copies. */
        public GoIn {
            lids = List.copyOf(lids);
            bring = List.copyOf(bring);
            lookFirst = List.copyOf(lookFirst);
        }
    }

    /**
     * No test tells these apart: do them in turn.
     *
     * @param inTurn most share for its minutes first
     */
    record InTurn(List<Job> inTurn) implements NextStep {
        /** Keeps its own copy. */
        public InTurn {
            inTurn = List.copyOf(inTurn);
        }
    }

    /**
     * The readings fit nothing that is thought of.
     *
     * @param unknown share of something not in the model
     * @param nearest faults that come nearest, with the readings each fails to explain
     */
    record NothingFits(double unknown, List<Ranked> nearest) implements NextStep {
        /** Keeps its own copy. */
        public NothingFits {
            nearest = List.copyOf(nearest);
        }
    }
}
