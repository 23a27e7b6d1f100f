package ringout.model;

import java.util.List;

/** A value from a closed list, with the trade word it is written as and other words accepted for it. */
public interface Word {
    /** All words, the one to write first; case does not matter when reading. */
    List<String> words();

    /** The word to write. */
    default String word() {
        return words().get(0);
    }
}
