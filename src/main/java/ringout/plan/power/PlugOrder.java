package ringout.plan.power;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * How the plugs of the packs are made: plain contacts first, the one with pre-charge of each stack last; a stack that joins
 * a live one after its voltage was compared.
 *
 * @param making what is done, in order
 * @param cannotTell what is missing to tell the order
 * @param disagrees where the declared order does otherwise
 */
public record PlugOrder(List<Act> making, List<String> cannotTell, List<String> disagrees) {
    /** One thing to do. */
    public sealed interface Act {
        /** {@return what is done, in words} */
        String words();
    }

    /**
     * A contact is made.
     *
     * @param plug UNIT-PLUG
     * @param suppressed it has the pre-charge: one decided push, never hovering
     * @param closes it closes the circuit of its stack
     */
    public record Make(String plug, boolean suppressed, boolean closes) implements Act {
        @Override
        public String words() {
            if (suppressed) {
                return "make " + plug + ", the contact with pre-charge: last, in one decided push, never hovering";
            }
            return "make " + plug + (closes ? ", which closes the circuit: expect a spark" : ", a plain contact");
        }
    }

    /**
     * Voltages are compared.
     *
     * @param packs the packs whose poles are measured
     * @param words what is measured and the limit
     */
    public record Compare(List<String> packs, String words) implements Act {}

    /** {@return the contacts in the order they are made} */
    public List<String> made() {
        return making.stream()
                .filter(Make.class::isInstance)
                .map(act -> ((Make) act).plug())
                .toList();
    }

    /** {@return the contacts in the order they are broken: the other way round, what has pre-charge first} */
    public List<String> broken() {
        List<String> back = new ArrayList<>(made());
        Collections.reverse(back);
        return back;
    }
}
