package ringout.graph.order;

/**
 * One end of a row of the list.
 *
 * @param row number of the row
 * @param from whether it is the from end
 * @param unit number of the unit or joint it ends on
 * @param plug number of the plug there
 */
public record LeadEnd(int row, boolean from, int unit, int plug) {}
