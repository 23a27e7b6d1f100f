package ringout.sheet.document;

import java.util.List;

/**
 * Where a document is signed. It offers no line as long as something is open that forbids to power or to fly.
 *
 * @param roles who signs, in order: made, inspected, released
 * @param open codes and titles of the findings that stand in the way
 */
public record SignOff(List<String> roles, List<String> open) implements Block {
    /** Keeps its own copies. */
    public SignOff {
        roles = List.copyOf(roles);
        open = List.copyOf(open);
    }

    /** {@return whether it may be signed} */
    public boolean offered() {
        return open.isEmpty();
    }
}
