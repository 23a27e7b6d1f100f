package ringout.solve.meter;

import java.util.List;
import ringout.graph.Trail;
import ringout.model.Lead;

/**
 * One of the ways the meter's current takes.
 *
 * @param share its part of the current, 0 to 1
 * @param trail pins, leads and parts in order
 * @param rows the rows of the list it runs along, in order
 */
public record Route(double share, Trail trail, List<Lead> rows) {}
