package ringout.draw.scene;

/** Whether a thing is there, and whether it ought to be. */
public enum Presence {
    /** It is there and belongs there. */
    FITTED,
    /** It ought to be there and is not: drawn as a ghost, in dashed outline. */
    MISSING,
    /** It is there and ought not to be: crossed out. */
    EXTRA
}
