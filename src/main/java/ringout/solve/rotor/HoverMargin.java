package ringout.solve.rotor;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.optim.MaxIter;
import org.hipparchus.optim.PointValuePair;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;

/**
 * How far the rotors that still turn stay from their stops in a hover: the largest s such that thrusts T exist with sum of
 * T = weight, no roll and no pitch moment about the centre of gravity, no yaw moment where yaw must hold, and
 * s &lt;= T &lt;= Tmax - s for every one of them. A linear programme.
 *
 * <p>All rotors are taken to give the same yaw moment for the same thrust. It is static: that a balance exists does not say
 * that the controller finds it.
 */
public final class HoverMargin {
    private static final int MOST_STEPS = 1000;
    /** A margin below this share of the largest thrust is zero but for rounding. */
    private static final double ROUNDING = 1e-9;

    private HoverMargin() {}

    /**
     * {@return the margin in kgf, zero or more, or nothing when no balance exists}
     *
     * @param turning the rotors that still turn
     * @param weight what they carry, and where
     * @param holdYaw whether the yaw moments must balance as well
     */
    public static OptionalDouble of(List<Thruster> turning, Lifted weight, boolean holdYaw) {
        if (turning.isEmpty()) {
            return OptionalDouble.empty();
        }
        double largest = turning.stream().mapToDouble(Thruster::maxKgf).max().orElse(0);
        try {
            PointValuePair best = new SimplexSolver()
                    .optimize(
                            new MaxIter(MOST_STEPS),
                            new LinearObjectiveFunction(margin(turning.size(), 1), 0),
                            new LinearConstraintSet(constraints(turning, weight, holdYaw)),
                            GoalType.MAXIMIZE,
                            new NonNegativeConstraint(false));
            double found = best.getValue();
            double rounding = ROUNDING * largest;
            return found < -rounding ? OptionalDouble.empty() : OptionalDouble.of(found < rounding ? 0 : found);
        } catch (MathIllegalStateException noSolution) {
            return OptionalDouble.empty();
        }
    }

    private static List<LinearConstraint> constraints(List<Thruster> turning, Lifted weight, boolean holdYaw) {
        int count = turning.size();
        double[] sum = new double[count + 1];
        double[] pitch = new double[count + 1];
        double[] roll = new double[count + 1];
        double[] yaw = new double[count + 1];
        List<LinearConstraint> all = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Thruster rotor = turning.get(i);
            sum[i] = 1;
            pitch[i] = rotor.forwardM() - weight.forwardM();
            roll[i] = rotor.rightM() - weight.rightM();
            yaw[i] = rotor.clockwise() ? 1 : -1;
            all.add(new LinearConstraint(row(count, i, -1), Relationship.GEQ, 0));
            all.add(new LinearConstraint(row(count, i, 1), Relationship.LEQ, rotor.maxKgf()));
        }
        all.add(new LinearConstraint(sum, Relationship.EQ, weight.kg()));
        all.add(new LinearConstraint(pitch, Relationship.EQ, 0));
        all.add(new LinearConstraint(roll, Relationship.EQ, 0));
        if (holdYaw) {
            all.add(new LinearConstraint(yaw, Relationship.EQ, 0));
        }
        return all;
    }

    /** The thrust of one rotor, and the margin. */
    private static double[] row(int count, int rotor, double ofMargin) {
        double[] row = margin(count, ofMargin);
        row[rotor] = 1;
        return row;
    }

    private static double[] margin(int count, double of) {
        double[] row = new double[count + 1];
        row[count] = of;
        return row;
    }
}
