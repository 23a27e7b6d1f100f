package ringout.model;

import java.util.List;

/** How a contact drives its net. */
public enum Drive implements Word {
    /** push-pull. */
    PUSH_PULL("push-pull"),
    /** open-drain. */
    OPEN_DRAIN("open-drain", "open drain", "open collector"),
    /** transceiver. */
    TRANSCEIVER("transceiver"),
    /** half-duplex. */
    HALF_DUPLEX("half-duplex", "half duplex");

    @SuppressWarnings("ImmutableEnumChecker") // List.of is immutable
    private final List<String> words;

    Drive(String... words) {
        this.words = List.of(words);
    }

    @Override
    public List<String> words() {
        return words;
    }
}
