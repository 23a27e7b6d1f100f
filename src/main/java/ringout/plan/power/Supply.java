package ringout.plan.power;

import java.util.OptionalDouble;

/**
 * What feeds a stage.
 *
 * @param kind what it is
 * @param volts what a bench supply is set to in V; of packs, their sum at rest; empty when not known
 * @param limitA current limit a bench supply is set to; empty for packs, and when the current cannot be told
 * @param where what it is joined to
 */
public record Supply(Kind kind, OptionalDouble volts, OptionalDouble limitA, String where) {
    /** What feeds. */
    public enum Kind {
        /** Nothing. */
        NONE,
        /** A bench supply with a current limit. */
        BENCH,
        /** The packs. */
        PACKS
    }

    /** Nothing feeds. */
    public static final Supply NOTHING = new Supply(Kind.NONE, OptionalDouble.empty(), OptionalDouble.empty(), "");
}
