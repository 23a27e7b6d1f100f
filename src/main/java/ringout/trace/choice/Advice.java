package ringout.trace.choice;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import ringout.trace.diagnosis.Explanation;
import ringout.trace.diagnosis.RepairShare;

/** What to do next. */
public sealed interface Advice {
    /**
     * Make a test.
     *
     * @param question number of the question
     * @param bits expected reduction of uncertainty about the repair action
     * @param minutes of the test, with what has yet to be opened
     * @param toTheEnd expected minutes from now to the end of the search, with the repairs done in vain; empty for a repeat
     * @param again whether the point has been read before: a repeat, to rule out a misreading
     * @param branches what would follow from each outcome that is possible
     */
    record Ask(
            int question, double bits, double minutes, Optional<Double> toTheEnd, boolean again, List<Branch> branches)
            implements Advice {
        /** Keeps its own copy. */
        public Ask {
            branches = List.copyOf(branches);
        }
    }

    /**
     * What would follow from an outcome.
     *
     * @param outcome number of the outcome
     * @param chance of it now
     * @param leading the repair action that would then lead
     */
    record Branch(int outcome, double chance, RepairShare leading) {}

    /**
     * Do a repair, then observe again.
     *
     * @param right the action and the chance that it is the right one
     * @param minutes of it, with what has yet to be opened
     * @param why the rule that ends the search
     * @param repeatFirst number of a question on whose single reading the advice hangs; worth reading again before a long repair
     */
    record Repair(RepairShare right, double minutes, Why why, OptionalInt repeatFirst) implements Advice {}

    /** Why a repair is advised. */
    enum Why {
        /** The action covers more than the share that ends the search. */
        COVERS,
        /** The action is likely and takes no longer than the cheapest useful test. */
        NO_DEARER_THAN_A_TEST
    }

    /**
     * Further outside tests will not separate these, they share an opening: go in.
     *
     * @param openings what to open
     * @param minutes to open it
     * @param bring the repair actions to be ready for, likeliest first
     */
    record GoIn(List<String> openings, double minutes, List<RepairShare> bring) implements Advice {
        /** Keeps its own copies. */
        public GoIn {
            openings = List.copyOf(openings);
            bring = List.copyOf(bring);
        }
    }

    /**
     * No test left tells these apart: do them in turn and observe after each.
     *
     * @param inTurn the repair actions, most share for its minutes first
     */
    record NothingSeparates(List<RepairShare> inTurn) implements Advice {
        /** Keeps its own copy. */
        public NothingSeparates {
            inTurn = List.copyOf(inTurn);
        }
    }

    /**
     * The readings speak for something not in the model: two faults, a wrong list, or something not thought of.
     *
     * @param unknown share of something not in the model, 1 when the readings are impossible under all others
     * @param nearest the suspects that come nearest, with the readings each fails to explain
     */
    record NothingFits(double unknown, List<Explanation> nearest) implements Advice {
        /** Keeps its own copy. */
        public NothingFits {
            nearest = List.copyOf(nearest);
        }
    }
}
