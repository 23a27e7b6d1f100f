package ringout.model;

import java.util.List;

/** How a load's current follows its voltage. */
public enum LoadLaw implements Word {
    /** constant current. */
    CURRENT("constant current", "current"),
    /** constant power. */
    POWER("constant power", "power"),
    /** resistance. */
    RESISTANCE("resistance", "resistive");

    @SuppressWarnings("ImmutableEnumChecker") // List.of is immutable
    private final List<String> words;

    LoadLaw(String... words) {
        this.words = List.of(words);
    }

    @Override
    public List<String> words() {
        return words;
    }
}
