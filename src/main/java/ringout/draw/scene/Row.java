package ringout.draw.scene;

/** One line of a plug: a pin, or a thing fitted inside the plug or behind it. */
public sealed interface Row permits Pin, Fitting {
    /** {@return the identifier by which wires and marks name it, such as {@code FC-CAN1-2}} */
    String id();

    /** {@return whether it is there} */
    Presence presence();
}
