package ringout.read;

import java.util.List;
import java.util.Set;
import ringout.model.Aircraft;
import ringout.text.Problem;

/**
 * What came of reading an aircraft.
 *
 * @param aircraft the aircraft with everything that could be read; to be trusted only when there is no problem
 * @param problems all problems of all files, in the order of the files
 * @param libraryTypes names of the unit types that come from a library and not from the aircraft's own files
 */
public record ReadResult(Aircraft aircraft, List<Problem> problems, Set<String> libraryTypes) {
    /** Whether everything was read as meant. */
    public boolean ok() {
        return problems.isEmpty();
    }
}
