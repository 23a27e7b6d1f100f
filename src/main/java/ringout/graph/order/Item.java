package ringout.graph.order;

/** What a step, a test or a record names. */
public sealed interface Item {
    /**
     * A unit or joint.
     *
     * @param unit its number
     */
    record OfUnit(int unit) implements Item {}

    /**
     * A plug of a unit.
     *
     * @param unit number of the unit
     * @param plug number of the plug in its type
     */
    record OfPlug(int unit, int plug) implements Item {}

    /**
     * A pin of a unit.
     *
     * @param unit number of the unit
     * @param plug number of the plug in its type
     * @param vertex vertex of the pin
     */
    record OfPin(int unit, int plug, int vertex) implements Item {}

    /**
     * A lead.
     *
     * @param id its identity as the list has it
     */
    record OfLead(String id) implements Item {}

    /**
     * A name of nothing aboard: a hold point, a lead that is not in the list.
     *
     * @param name the name
     */
    record Strange(String name) implements Item {}
}
