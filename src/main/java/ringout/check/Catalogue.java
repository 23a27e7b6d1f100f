package ringout.check;

import java.util.List;
import ringout.check.address.DuplicateAddress;
import ringout.check.form.Check;
import ringout.check.topology.TerminatorCount;
import ringout.check.topology.TerminatorNotAtEnd;

/** Every check, in the order of its code. */
public final class Catalogue {
    private static final List<Check> ALL =
            List.of(new TerminatorCount(), new TerminatorNotAtEnd(), new DuplicateAddress());

    private Catalogue() {}

    /** All checks. */
    public static List<Check> all() {
        return ALL;
    }
}
