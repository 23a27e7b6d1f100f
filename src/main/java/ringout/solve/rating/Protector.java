package ringout.solve.rating;

/** What opens a wire before it gets too hot. */
public enum Protector {
    /** Fuse. */
    FUSE,
    /** Breaker. */
    BREAKER
}
