package ringout.synthetic;

import java.util.List;

/**
 * What a lead of a synthetic aircraft is for, so that a test can spoil it on purpose.
 *
 * @param id its identity
 * @param tag what it is for, such as "chain" or "phases"
 * @param from unit at the from end
 * @param fromPlug plug there
 * @param to unit at the to end
 * @param toPlug plug there
 * @param wires its conductors
 */
record Made(String id, String tag, Box from, String fromPlug, Box to, String toPlug, List<Wired> wires) {
    /**
     * One conductor.
     *
     * @param function what it carries at the from end
     * @param fromPin number of its contact there
     * @param toPin number of its contact at the to end
     */
    record Wired(String function, String fromPin, String toPin) {}

    /** The pin map in the words of the list. */
    String pins() {
        return String.join(
                " ",
                wires.stream().map(wire -> wire.fromPin() + ">" + wire.toPin()).toList());
    }
}
