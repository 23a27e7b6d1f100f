package ringout.draw.scene;

/** Whether a thing is there, and whether it ought to be. */
public enum Presence {
    /** It is there and belongs there. */
    FITTED(""),
    /** It ought to be there and is not: drawn as a ghost, in dashed outline. */
    MISSING(", missing"),
    /** It is there and ought not to be: crossed out. */
    EXTRA(", one too many"),
    /** In a difference drawing: it is as it was before, drawn faint. */
    AS_BEFORE(", unchanged"),
    /** In a difference drawing: it is new, drawn heavy with plus signs. */
    ADDED(", added"),
    /** In a difference drawing: it is no more, drawn as a crossed ghost. */
    REMOVED(", removed");

    private final String remark;

    Presence(String remark) {
        this.remark = remark;
    }

    /** {@return what is said behind the name of a thing; nothing when it is as it ought to be} */
    public String remark() {
        return remark;
    }

    /** {@return whether it is drawn as a ghost, because it is not there} */
    public boolean ghost() {
        return this == MISSING || this == REMOVED;
    }
}
