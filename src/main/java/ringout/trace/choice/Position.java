package ringout.trace.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import ringout.trace.diagnosis.Rows;

/**
 * Where one may stand while looking ahead: the suspects left with their shares, what has been asked and opened. A suspect whose
 * share falls below what the board cares for is dropped.
 */
final class Position {
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

    /** Tests that tell something of the repair action; when none does alone, those that tell something of the suspect. */
    List<Option> useful() {
        List<Option> useful = new ArrayList<>();
        for (int q = 0; q < board.rows.length; q++) {
            if (!asked.get(q)) {
                keep(q, Gauge.groupBits(board.rows[q], member, mass, board.group, board.action.length), useful);
            }
        }
        if (useful.isEmpty() && severalGroups()) {
            for (int q = 0; q < board.rows.length; q++) {
                if (!asked.get(q)) {
                    keep(q, Gauge.suspectBits(board.rows[q], member, mass), useful);
                }
            }
        }
        useful.sort(Option.BY_RATE);
        return useful;
    }

    private void keep(int q, double bits, List<Option> useful) {
        if (bits > board.rules.usefulBits()) {
            useful.add(new Option(q, bits, board.minutes(q, opened), board.question[q].disturbance()));
        }
    }

    private boolean severalGroups() {
        for (int i = 1; i < member.length; i++) {
            if (board.group[member[i]] != board.group[member[0]]) {
                return true;
            }
        }
        return false;
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
