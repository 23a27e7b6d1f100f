package ringout.graph;

import ringout.model.Lead;

/**
 * An end, or a pin of a pin map, that points to nothing aboard.
 *
 * @param lead the row
 * @param from whether it is the from end
 * @param why what does not exist
 * @param hint nearest match or what there is
 */
public record LooseEnd(Lead lead, boolean from, String why, String hint) {}
