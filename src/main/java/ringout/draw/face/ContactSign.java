package ringout.draw.face;

/** What contacts of a plug are drawn as. */
public enum ContactSign {
    /** Pins: filled. */
    PIN("pin contact"),
    /** Sockets: hollow. */
    SOCKET("socket contact"),
    /** Neither, or not told: a dash. */
    OTHER("contact, pin or socket not told");

    private final String words;

    ContactSign(String words) {
        this.words = words;
    }

    /** {@return what the legend says} */
    public String words() {
        return words;
    }
}
