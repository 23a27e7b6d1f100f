package ringout.graph.bus;

import java.util.List;

/**
 * One connected piece of bus: hubs joined by whole pairs.
 *
 * @param index number among the segments
 * @param name declared name of the bus most members are on, or empty
 * @param hubs numbers of its hubs, by name of unit and port
 * @param links numbers of its pair links, by id of their rows
 * @param terminators terminators at its hubs that are on or not known
 */
public record BusSegment(
        int index, String name, List<Integer> hubs, List<Integer> links, List<TerminatorAt> terminators) {
    /** Terminators known to be in the circuit. */
    public List<TerminatorAt> on() {
        return terminators.stream().filter(TerminatorAt::on).toList();
    }

    /** Terminators of which it is not known. */
    public List<TerminatorAt> unknown() {
        return terminators.stream().filter(TerminatorAt::unknown).toList();
    }

    /** Whether it joins anything at all. */
    public boolean wired() {
        return !links.isEmpty();
    }

    /** Number of independent rings: links minus hubs plus one. */
    public int rings() {
        return links.size() - hubs.size() + 1;
    }
}
