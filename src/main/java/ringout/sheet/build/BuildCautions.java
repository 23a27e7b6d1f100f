package ringout.sheet.build;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import ringout.plan.power.PowerStage;
import ringout.sheet.Cautions;

/** The usual cautions, with what a build needs besides. Common practice, no source. */
final class BuildCautions {
    /** Before anything is fitted, plugged or tested without power. */
    static final List<String> COLD =
            with("no pack plugged and no propeller on a motor while this sheet is worked through", Cautions.OHMS);

    /** Before a stage with power. */
    static final List<String> POWER = with(
            "supply off and rails below 5 V before any plug is made or pulled; then the limit is set first, the voltage next",
            Cautions.VOLTS);

    /** Before packs are plugged. */
    static final List<String> PACKS = Cautions.PACKS;

    private BuildCautions() {}

    private static List<String> with(String first, List<String> others) {
        return Stream.concat(Stream.of(first), others.stream()).toList();
    }

    /** Cautions a stage of the power-up adds to those at the head of its sheet. */
    static Optional<List<String>> before(PowerStage.Kind kind) {
        return switch (kind) {
            case OHMS -> Optional.of(Cautions.OHMS);
            case BENCH -> Optional.empty();
            case PACKS -> Optional.of(PACKS);
            case MOTORS, HOVER -> Optional.of(kind == PowerStage.Kind.MOTORS ? Cautions.MOTORS : PACKS);
        };
    }
}
