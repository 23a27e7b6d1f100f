package ringout.model;

import java.util.List;

/** Kind of a two-terminal part. */
public enum PartKind implements Word {
    /** link. */
    LINK("link", "series"),
    /** source. */
    SOURCE("source", "pack", "cells"),
    /** diode. */
    DIODE("diode"),
    /** ideal diode. */
    IDEAL_DIODE("ideal diode"),
    /** fuse. */
    FUSE("fuse"),
    /** switch. */
    SWITCH("switch", "relay", "contactor", "isolator"),
    /** sense resistor. */
    SENSE_RESISTOR("sense resistor", "shunt"),
    /** regulator. */
    REGULATOR("regulator", "switching regulator"),
    /** linear regulator. */
    LINEAR_REGULATOR("linear regulator"),
    /** isolated converter. */
    ISOLATED_CONVERTER("isolated converter"),
    /** resistor. */
    RESISTOR("resistor");

    @SuppressWarnings("ImmutableEnumChecker") // List.of is immutable
    private final List<String> words;

    PartKind(String... words) {
        this.words = List.of(words);
    }

    @Override
    public List<String> words() {
        return words;
    }
}
