package ringout.plan;

import java.util.List;
import ringout.plan.order.Side;
import ringout.plan.task.HoldPoint;

/**
 * A stage of the build: what is done until a hold point is signed, in the order that saves walking and turning.
 *
 * @param number from 1
 * @param name what it is called
 * @param hold the hold point it ends with
 * @param tasks numbers of its tasks in their order, the signature and the lid it allows last
 * @param lies how the aircraft lies when it begins
 * @param minutes walking and turning in this order
 * @param plainMinutes walking and turning in the order of the list
 */
public record Stage(
        int number, String name, HoldPoint hold, List<Integer> tasks, Side lies, double minutes, double plainMinutes) {}
