package ringout.model.edit;

import java.util.List;
import ringout.model.Aircraft;
import ringout.text.Problem;

/**
 * An aircraft after some edits.
 *
 * @param aircraft with every edit that could be made
 * @param problems the edits that could not be made, and why
 */
public record Edited(Aircraft aircraft, List<Problem> problems) {}
