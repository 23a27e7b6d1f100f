package ringout.draw.face;

/** Where a plug is looked at from. */
public enum View {
    /** From where its wires go in, as one holds it to put contacts in. */
    WIRE_SIDE("wire side"),
    /** From where its counterpart comes. */
    MATING_FACE("mating face");

    private final String words;

    View(String words) {
        this.words = words;
    }

    /** {@return what is written beside the icon} */
    public String words() {
        return words;
    }
}
