package ringout.draw.ink;

/** Hatchings, told apart without colour. */
public enum Hatch {
    /** Lines both ways: severity 1. */
    CROSS,
    /** Lines one way: severity 2. */
    DIAGONAL,
    /** Dots: severity 3. */
    DOTS,
    /** Thin lines the other way: waived. */
    WAIVED
}
