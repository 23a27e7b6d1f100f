package ringout.graph;

/** What an end of a lead points to. */
public sealed interface Site {
    /**
     * A plug of a unit.
     *
     * @param unit number of the unit
     * @param plug number of the plug in its type
     */
    record OnPlug(int unit, int plug) implements Site {}

    /**
     * A pin of a unit.
     *
     * @param unit number of the unit
     * @param plug number of the plug in its type
     * @param pin number of the pin in its type
     */
    record OnPin(int unit, int plug, int pin) implements Site {}

    /**
     * Nothing aboard.
     *
     * @param why what does not exist
     * @param hint nearest match or what there is; may be empty
     */
    record Loose(String why, String hint) implements Site {}
}
