package ringout.read;

import java.util.List;
import java.util.Set;
import ringout.model.Aircraft;
import ringout.read.cells.SheetCells;
import ringout.read.intake.Assumption;
import ringout.read.intake.Question;
import ringout.text.Problem;

/**
 * What came of reading an aircraft.
 *
 * @param aircraft the aircraft with everything that could be read; to be trusted only when there is no problem
 * @param problems all problems of all files, in the order of the files
 * @param libraryTypes names of the unit types that come from a library and not from the aircraft's own files
 * @param questions what only the owner of the list can tell, the problems among them, in the order of the list
 * @param assumptions what was taken as usual, in the order of the list
 * @param sheets the cells of the owner's list when it is one workbook or one text file; none else
 */
public record ReadResult(
        Aircraft aircraft,
        List<Problem> problems,
        Set<String> libraryTypes,
        List<Question> questions,
        List<Assumption> assumptions,
        List<SheetCells> sheets) {
    /** Whether everything was read as meant. */
    public boolean ok() {
        return problems.isEmpty();
    }
}
