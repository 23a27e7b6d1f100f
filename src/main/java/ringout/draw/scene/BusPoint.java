package ringout.draw.scene;

/** A place on the trunk of a bus. */
public sealed interface BusPoint permits BusMember, BusTee {
    /** {@return its identifier} */
    String id();
}
