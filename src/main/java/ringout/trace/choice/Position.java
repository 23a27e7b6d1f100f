package ringout.trace.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import ringout.trace.diagnosis.Rows;

/**
 * Where one may stand while looking ahead: the suspects left with their shares, what has been asked and opened. A suspect whose
 * share falls below what the board cares for is dropped.
 */
final class Position {
    private static final int MOST_TO_BUILD_ON = 200;

    final Board board;
    final int[] member;
    final double[] mass;
    final BitSet asked;
    final BitSet opened;

    Position(Board board, int[] member, double[] mass, BitSet asked, BitSet opened) {
        this.board = board;
        this.member = member;
        this.mass = mass;
        this.asked = asked;
        this.opened = opened;
    }

    /** Chance of an outcome of a question of the board. */
    double chance(int q, int outcome) {
        Rows rows = board.rows[q];
        double sum = 0;
        for (int i = 0; i < member.length; i++) {
            sum += mass[i] * rows.chance(member[i], outcome);
        }
        return sum;
    }

    /** After an outcome that is possible. */
    Position after(int q, int outcome) {
        Rows rows = board.rows[q];
        int[] left = new int[member.length];
        double[] share = new double[member.length];
        double sum = 0;
        for (int i = 0; i < member.length; i++) {
            sum += mass[i] * rows.likelihood(member[i], outcome);
        }
        int n = 0;
        double kept = 0;
        for (int i = 0; i < member.length; i++) {
            double one = mass[i] * rows.likelihood(member[i], outcome) / sum;
            if (one > board.gone) {
                left[n] = member[i];
                share[n++] = one;
                kept += one;
            }
        }
        for (int i = 0; i < n; i++) {
            share[i] /= kept;
        }
        BitSet now = (BitSet) asked.clone();
        now.set(q);
        return new Position(board, Arrays.copyOf(left, n), Arrays.copyOf(share, n), now, board.openedBy(q, opened));
    }

    /** Shares of the groups of the board. */
    double[] groupMass() {
        double[] sum = new double[board.groups];
        for (int i = 0; i < member.length; i++) {
            sum[board.group[member[i]]] += mass[i];
        }
        return sum;
    }

    /** The likeliest repair action, or -1 when no suspect left has one. */
    int likeliest(double[] groupMass) {
        int best = -1;
        for (int g = 0; g < board.action.length; g++) {
            best = best < 0 || groupMass[g] > groupMass[best] ? g : best;
        }
        return best;
    }

    /** The useful tests by rate, none when the search is over because one action covers the share. */
    List<Option> options() {
        double[] groupMass = groupMass();
        int top = likeliest(groupMass);
        if (top >= 0 && groupMass[top] > board.rules.stopShare()) {
            return List.of();
        }
        return useful();
    }

    /** Tests that tell something of the repair action, best rate first. */
    List<Option> useful() {
        return telling(q -> Gauge.groupBits(board.rows[q], member, mass, board.group, board.action.length));
    }

    /**
     * Tests that help although none tells of the repair action by itself. One action is all that is left in the model: what confirms it against
     * something not in the model. Several are: what tells of the suspect, if another test can build on it. Slow, for where one stands.
     */
    List<Option> helping() {
        double[] groupMass = groupMass();
        int top = likeliest(groupMass);
        double inModel = Arrays.stream(groupMass).limit(board.action.length).sum();
        if (top >= 0 && groupMass[top] > board.rules.stopShare() * inModel) {
            return confirming();
        }
        return member.length > MOST_TO_BUILD_ON
                ? List.of()
                : telling(q -> Gauge.suspectBits(board.rows[q], member, mass)).stream()
                        .filter(option -> isBuiltOn(option.question()))
                        .toList();
    }

    /** Tests that tell of the repair action or of something not in the model, best rate first. */
    List<Option> confirming() {
        return telling(q -> Gauge.groupBits(board.rows[q], member, mass, board.group, board.groups));
    }

    /** Whether after some outcome of a question another test tells of the repair action. */
    private boolean isBuiltOn(int q) {
        for (int o = 0; o < board.rows[q].outcomes(); o++) {
            if (chance(q, o) > 0 && !after(q, o).useful().isEmpty()) {
                return true;
            }
        }
        return false;
    }

    private List<Option> telling(IntToDoubleFunction measure) {
        List<Option> telling = new ArrayList<>();
        for (int q = 0; q < board.rows.length; q++) {
            double bits = asked.get(q) ? 0 : measure.applyAsDouble(q);
            if (bits > board.rules.usefulBits()) {
                telling.add(new Option(q, bits, board.minutes(q, opened), board.question[q].disturbance()));
            }
        }
        telling.sort(Option.BY_RATE);
        return telling;
    }

    /** Expected minutes of repairs done in vain when the actions are done in turn, likeliest for its time first. */
    double waste() {
        double[] groupMass = groupMass();
        List<Integer> order = new ArrayList<>();
        for (int g = 0; g < board.action.length; g++) {
            if (groupMass[g] > 0) {
                order.add(g);
            }
        }
        order.sort(Comparator.comparingDouble((Integer g) -> board.action[g].minutes() / groupMass[g]));
        double left = 1;
        double waste = 0;
        for (int g : order) {
            left = Math.max(0, left - groupMass[g]);
            waste += board.action[g].minutes() * left;
        }
        return waste;
    }

    /** Uncertainty left about the repair action, in bits. */
    double bitsLeft() {
        double bits = 0;
        for (double p : groupMass()) {
            bits -= p > 0 ? p * Math.log(p) : 0;
        }
        return bits / Math.log(2);
    }
}
