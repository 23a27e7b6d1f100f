package ringout.plan.order;

/** How the aircraft must lie for a task. */
public enum Side {
    /** On its legs, reached from above. */
    UPRIGHT,
    /** Turned over, reached from below. */
    BELLY_UP,
    /** Reached either way. */
    EITHER;

    /** {@return how it lies when a task of this side is begun while it lies so} */
    Side from(Side now) {
        return this == EITHER ? now : this;
    }
}
