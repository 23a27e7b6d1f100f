package ringout.draw.verify;

import java.util.List;

/**
 * What the verifier found.
 *
 * @param flaws what is wrong; a sheet with flaws is not written
 * @param wires number of wires
 * @param crossings number of places where two wires cross
 * @param bends number of turns of all wires
 * @param longestUnlabelled longest piece of a wire between two of its labels, mm
 */
public record Verdict(List<Flaw> flaws, int wires, int crossings, int bends, double longestUnlabelled) {
    /** Keeps an unmodifiable copy of the flaws. */
    public Verdict {
        flaws = List.copyOf(flaws);
    }

    /** {@return whether the sheet may be written} */
    public boolean passed() {
        return flaws.isEmpty();
    }
}
